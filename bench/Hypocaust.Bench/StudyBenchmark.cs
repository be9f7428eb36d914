using System.Diagnostics;
using System.Globalization;
using Hypocaust.Design;

namespace Hypocaust.Bench;

/// <summary>A whole study of each example: reading the file, an edit of one value, and the answer, warm.</summary>
internal static class StudyBenchmark
{
    private const int Repeats = 200;
    private const int WarmUps = 50;

    public static int Run(IReadOnlyList<string> files)
    {
        Console.Out.WriteLine(
            "| example | read, ms | edit, ms | study, ms: min | median | allocated, kB |"
        );
        Console.Out.WriteLine("|---|---:|---:|---:|---:|---:|");
        foreach (var file in files)
        {
            var text = File.ReadAllText(file);
            var document = DesignFile.Read(text).Value;
            var read = Time(() => DesignFile.Read(text));
            var edit = Time(() => document.Edit("$.site.designOutdoor", "-15.5 °C"));
            var study = Time(() => Study.Solve(document.Design));
            var before = GC.GetAllocatedBytesForCurrentThread();
            Study.Solve(document.Design);
            var allocated = (GC.GetAllocatedBytesForCurrentThread() - before) / 1024;
            Console.Out.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {Path.GetFileName(file)} | {read.Min:F2} | {edit.Min:F2} | {study.Min:F2} | {study.Median:F2} | {allocated} |"
                )
            );
        }

        return 0;
    }

    private static (double Min, double Median) Time(Action work)
    {
        for (var i = 0; i < WarmUps; i++)
        {
            work();
        }

        var times = new double[Repeats];
        for (var i = 0; i < Repeats; i++)
        {
            var start = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[0], times[Repeats / 2]);
    }
}
