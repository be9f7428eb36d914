using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;
using Hypocaust.Why;
using Spectre.Console;

namespace Hypocaust.Cli.Solve;

/// <summary>Prints the derivation of one number.</summary>
internal static class WhyPrinter
{
    private const int MostSensitive = 2;

    public static bool Print(
        IAnsiConsole console,
        DesignDocument document,
        Answer answer,
        string path,
        UnitSystem units
    )
    {
        if (WhyBook.Explain(answer, path) is not { } why)
        {
            Console.Error.WriteLine(
                $"The answer has no number at \"{path}\"; \"hypocaust solve FILE --json\" shows the names."
            );
            return false;
        }

        console.MarkupLineInterpolated(
            $"[bold]{why.Title}[/]: {why.Shown.Format(why.Value, units)}"
        );
        console.WriteLine($"  {why.Formula}");
        foreach (var input in why.Inputs)
        {
            console.WriteLine(
                $"  {input.Symbol} = {input.Shown.Format(input.Value, units)}, {input.Meaning}"
            );
        }

        console.WriteLine($"  Source: {why.Source}");
        if (why.Remark.Length > 0)
        {
            console.WriteLine($"  {why.Remark}");
        }

        foreach (var follows in SensitivityRanking.Rank(document, path, MostSensitive))
        {
            console.WriteLine(
                $"  Most sensitive to {follows.DesignPath} ({follows.Written}): {follows.Step} changes it by {why.Shown.FormatDifference(follows.Change, units)}."
            );
        }

        return true;
    }
}
