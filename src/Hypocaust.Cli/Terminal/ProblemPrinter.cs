using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Cli.Terminal;

/// <summary>Shows problems on the terminal: <c>FILE:LINE:COL: what is wrong; what would do</c>, with the line and a mark under the place.</summary>
internal static class ProblemPrinter
{
    private const int LongestLine = 72;

    public static void Print(
        TextWriter error,
        string file,
        string? text,
        IEnumerable<Problem> problems
    )
    {
        var lines = text?.Split('\n');
        foreach (var problem in problems)
        {
            error.WriteLine(Head(file, problem));
            if (problem.Position is { } at && lines is not null && at.Line <= lines.Length)
            {
                Picture(error, lines[at.Line - 1].TrimEnd('\r').Replace('\t', ' '), at);
            }
        }
    }

    private static string Head(string file, Problem problem) =>
        problem.Position is { } at
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{file}:{at.Line}:{at.Column}: {problem}"
            )
            : $"{file}: {problem}";

    private static void Picture(TextWriter error, string line, TextPosition at)
    {
        var start = Math.Max(0, Math.Min(at.Column - 1, line.Length) - (LongestLine / 2));
        var part = line[start..Math.Min(line.Length, start + LongestLine)];
        error.WriteLine("    " + part);
        error.WriteLine("    " + new string(' ', Math.Max(0, at.Column - 1 - start)) + "^");
    }
}
