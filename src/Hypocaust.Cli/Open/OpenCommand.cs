using System.Globalization;
using Hypocaust.Problems;
using Hypocaust.Web;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.Open;

/// <summary><c>hypocaust open [FILE]</c>: the live web app.</summary>
internal sealed class OpenCommand : AsyncCommand<OpenSettings>
{
    private const int CannotRead = 2;

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(
        CommandContext context,
        OpenSettings settings,
        CancellationToken cancellationToken
    )
    {
        var options = new WebOptions
        {
            File = settings.File,
            DemoFile = Path.Combine(
                AppContext.BaseDirectory,
                "examples",
                "pottery-studio.hypocaust.json"
            ),
            Port = settings.Port,
            OpensBrowser = !settings.NoBrowser,
        };
        if (settings.DataFolder is { } folder)
        {
            options = options with { DataFolder = folder };
        }

        var problems = await HypocaustWeb.Start(options, Console.Out, cancellationToken);
        foreach (var problem in problems)
        {
            await Console.Error.WriteLineAsync(Line(options.File ?? options.DemoFile, problem));
        }

        return problems.IsEmpty ? 0 : CannotRead;
    }

    private static string Line(string file, Problem problem) =>
        problem.Position is { } at
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{file}:{at.Line}:{at.Column}: {problem}"
            )
            : problem.ToString();
}
