using Hypocaust.Answers;
using Hypocaust.Cli.Terminal;
using Hypocaust.Verdicts;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.Review;

/// <summary><c>hypocaust review FILE</c>: what is unsafe, unsuitable or missing. Exit 0 clean, 1 findings above a note, 2 cannot read.</summary>
internal sealed class ReviewCommand : Command<DesignSettings>
{
    /// <inheritdoc/>
    public override int Execute(
        CommandContext context,
        DesignSettings settings,
        CancellationToken cancellationToken
    )
    {
        if (settings.Open() is not { } document)
        {
            return ExitCode.CannotRead;
        }

        var answer = Study.Solve(
            document.Design with
            {
                Units = settings.UnitsFor(document.Design),
            }
        );
        if (settings.Json)
        {
            Console.Out.WriteLine(AnswerJson.Write(answer.Review));
        }
        else
        {
            Print(AnsiConsole.Console, answer, settings.UnitsFor(document.Design));
            settings.Report(document, answer.Problems);
        }

        return IsClean(answer) ? ExitCode.Clean : ExitCode.Findings;
    }

    private static bool IsClean(Answer answer) =>
        answer.Problems.IsEmpty
        && answer.Review.Findings.All(finding => finding.Severity == Severity.Note);

    private static void Print(IAnsiConsole console, Answer answer, Quantities.UnitSystem units)
    {
        console.MarkupLineInterpolated($"[bold]{answer.Name}[/]: what is unsafe or missing?");
        console.WriteLine(VerdictBook.Review(answer, units).Text);
        foreach (var finding in answer.Review.Findings)
        {
            console.WriteLine();
            console.MarkupLineInterpolated(
                $"{SeverityWords.Mark(finding.Severity)} [bold]{finding.Title}[/]"
            );
            Line(console, "", finding.What);
            Line(console, "Why: ", finding.Why);
            Line(console, "Do: ", finding.Remedy);
            Line(console, "", $"{finding.Place} · {finding.Source}");
        }
    }

    private static void Line(IAnsiConsole console, string head, string text) =>
        console.Write(new Padder(new Text(head + text), new Padding(4, 0, 0, 0)));
}
