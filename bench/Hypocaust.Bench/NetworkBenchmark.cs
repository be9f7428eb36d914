using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Hypocaust.Hydraulics;

namespace Hypocaust.Bench;

/// <summary>P1: one cold solve of a whole plant, beside the same in C (and SciPy, where its row is handed over) in the same run.</summary>
internal static class NetworkBenchmark
{
    private const int Batches = 61;
    private const int SolvesPerBatch = 500;

    private sealed record Row(string What, double MinUs, double MedianUs, string Note);

    public static int Run(string reference, ReadOnlySpan<string> rivals)
    {
        var problem = NetworkProblem.Read(Path.Combine(reference, "problems", "p1.json"));
        var rows = new List<Row>
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
            rows.AddRange(Rival(rival));
        }

        // once more, so that a busy moment of the machine cannot favour either side
        rows[0] = Better(rows[0], Ours(rows[0].What, problem, NetworkSolverOptions.Default));
        Print(rows);
        return 0;
    }

    private static Row Better(Row first, Row second) =>
        first.MinUs <= second.MinUs ? first : second;

    private static Row Ours(
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
        return new Row(
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

    /// <summary>Runs a program that prints JSON: either one result with min and median in µs, or a table of such results.</summary>
    private static List<Row> Rival(string command)
    {
        var parts = command.Split('=', 2);
        var words = parts[1].Split(' ');
        var start = new ProcessStartInfo(words[0], words.Skip(1))
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        using var process = Process.Start(start)!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        using var document = JsonDocument.Parse(text);
        var root = document.RootElement;
        return root.TryGetProperty("min", out _)
            ? [One(parts[0], root)]
            : [.. root.EnumerateObject().Select(entry => One(entry.Name, entry.Value))];
    }

    private static Row One(string what, JsonElement result) =>
        new(
            what,
            result.GetProperty("min").GetDouble(),
            result.GetProperty("median").GetDouble(),
            ""
        );

    private static void Print(List<Row> rows)
    {
        var ours = rows[0].MinUs;
        Console.WriteLine("| P1, one cold solve | min µs | median µs | min ÷ ours | |");
        Console.WriteLine("|---|---:|---:|---:|---|");
        foreach (var row in rows)
        {
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {row.What} | {row.MinUs:0.00} | {row.MedianUs:0.00} | {row.MinUs / ours:0.00} | {row.Note} |"
                )
            );
        }
    }
}
