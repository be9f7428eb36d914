using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

namespace Hypocaust.Bench;

/// <summary>One line of a table of times.</summary>
internal sealed record BenchRow(string What, double Min, double Median, string Note)
{
    public static BenchRow Better(BenchRow first, BenchRow second) =>
        first.Min <= second.Min ? first : second;

    /// <summary>Runs a program that prints JSON: either one result with min and median, or a table of such results.</summary>
    /// <param name="command">What to call it, an equals sign, and the command.</param>
    /// <param name="factor">Takes the program's unit to that of the table.</param>
    public static List<BenchRow> OfRival(string command, double factor)
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
            ? [One(parts[0], root, factor)]
            : [.. root.EnumerateObject().Select(entry => One(entry.Name, entry.Value, factor))];
    }

    private static BenchRow One(string what, JsonElement result, double factor) =>
        new(
            what,
            factor * result.GetProperty("min").GetDouble(),
            factor * result.GetProperty("median").GetDouble(),
            ""
        );

    public static void Print(string title, string unit, IReadOnlyList<BenchRow> rows)
    {
        var ours = rows[0].Min;
        Console.WriteLine($"| {title} | min {unit} | median {unit} | min ÷ ours | |");
        Console.WriteLine("|---|---:|---:|---:|---|");
        foreach (var row in rows)
        {
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {row.What} | {row.Min:0.00} | {row.Median:0.00} | {row.Min / ours:0.00} | {row.Note} |"
                )
            );
        }
    }
}
