using System.Diagnostics;
using System.Globalization;
using Hypocaust.Hydraulics;

namespace Hypocaust.Bench;

/// <summary>P1: one cold solve of a whole plant, beside the same in C (and SciPy, where its row is handed over) in the same run.</summary>
internal static class NetworkBenchmark
{
    private const int Batches = 61;
    private const int SolvesPerBatch = 500;

    public static int Run(string reference, ReadOnlySpan<string> rivals)
    {
        var problem = NetworkProblem.Read(Path.Combine(reference, "problems", "p1.json"));
        var rows = new List<BenchRow>
        {
            Ours("Hypocaust, wide registers", problem, NetworkSolverOptions.Default),
            Ours(
                "Hypocaust, the same, a new fluid before each solve",
                problem,
                NetworkSolverOptions.Default,
                newFluid: true
            ),
            Ours(
                "Hypocaust, one branch at a time",
                problem,
                NetworkSolverOptions.Default with
                {
                    Vectorised = false,
                }
            ),
        };
        foreach (var rival in rivals)
        {
            rows.AddRange(BenchRow.OfRival(rival, 1));
        }

        // once more, so that a busy moment of the machine cannot favour either side
        rows[0] = BenchRow.Better(
            rows[0],
            Ours(rows[0].What, problem, NetworkSolverOptions.Default)
        );
        BenchRow.Print("P1, one cold solve", "µs", rows);
        return 0;
    }

    private static BenchRow Ours(
        string what,
        NetworkProblem problem,
        NetworkSolverOptions options,
        bool newFluid = false
    )
    {
        var solver = new NetworkSolver(problem.Network, options);
        var conditions = new NetworkConditions(
            problem.Network,
            problem.DensityKgPerM3,
            problem.ViscosityPaS
        );
        var report = default(SolveReport);
        var times = new double[Batches];
        for (var batch = -20; batch < Batches; batch++)
        {
            var begin = Stopwatch.GetTimestamp();
            for (var solve = 0; solve < SolvesPerBatch; solve++)
            {
                if (newFluid)
                {
                    conditions.SetFluid(problem.DensityKgPerM3, problem.ViscosityPaS);
                }

                report = solver.SolveInPlace(conditions, warm: false);
            }

            if (batch >= 0)
            {
                times[batch] = Stopwatch.GetElapsedTime(begin).TotalMicroseconds / SolvesPerBatch;
            }
        }

        Array.Sort(times);
        return new BenchRow(
            what,
            times[0],
            times[Batches / 2],
            string.Create(
                CultureInfo.InvariantCulture,
                $"{report.Status}, {report.Iterations} iterations; {Difference(problem, solver.Snapshot(conditions, report))}"
            )
        );
    }

    private static string Difference(NetworkProblem problem, NetworkSolution solution)
    {
        var flow = problem.FlowsM3PerS.Max(known =>
            Math.Abs((solution.FlowKgPerS(known.Key) / problem.DensityKgPerM3 / known.Value) - 1)
        );
        var pressure = problem.PressuresPa.Max(known =>
            Math.Abs(solution.PressurePa(known.Key)!.Value - known.Value)
        );
        return string.Create(
            CultureInfo.InvariantCulture,
            $"against the known solution: flows {flow:0.0e0} relative, pressures {pressure:0.0e0} Pa"
        );
    }
}
