using System.ComponentModel;
using Hypocaust.Answers;
using Hypocaust.Cli.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.Solve;

/// <summary>What <c>solve</c> takes.</summary>
internal sealed class SolveSettings : DesignSettings
{
    /// <summary>Path of a number to explain.</summary>
    [CommandOption("--why <PATH>")]
    [Description("Explain one number of the answer, such as \"floor.loops[[0]].running.heatUpW\".")]
    public string? Why { get; init; }
}

/// <summary><c>hypocaust solve FILE</c>: the answer to a design as tables or JSON. Exit 0 answered, 1 in part, 2 cannot read.</summary>
internal sealed class SolveCommand : Command<SolveSettings>
{
    /// <inheritdoc/>
    public override int Execute(
        CommandContext context,
        SolveSettings settings,
        CancellationToken cancellationToken
    )
    {
        if (settings.Open() is not { } document)
        {
            return ExitCode.CannotRead;
        }

        var units = settings.UnitsFor(document.Design);
        var answer = Study.Solve(document.Design with { Units = units });
        if (settings.Why is { } path)
        {
            return WhyPrinter.Print(AnsiConsole.Console, document, answer, path, units)
                ? ExitCode.Clean
                : ExitCode.Usage;
        }

        if (settings.Json)
        {
            Console.Out.WriteLine(AnswerJson.Write(answer));
        }
        else
        {
            new AnswerPrinter(AnsiConsole.Console, answer, units).Print();
            settings.Report(document, answer.Problems);
        }

        return answer.Problems.IsEmpty ? ExitCode.Clean : ExitCode.Findings;
    }
}
