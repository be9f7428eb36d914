using Hypocaust.Bench;

return args switch
{
    ["p1", var reference, ..] => NetworkBenchmark.Run(reference, args.AsSpan(2)),
    ["p5", var reference, ..] => SectionBenchmark.Run(reference, args.AsSpan(2)),
    ["study", .. var files] when files.Length > 0 => StudyBenchmark.Run(files),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine(
        "usage: Hypocaust.Bench p1|p5 REFERENCE-FOLDER [BUILT-C-PROGRAM...] | study DESIGN-FILE...   (bench/run does all of it)"
    );
    return 2;
}
