using Hypocaust.Cli.Terminal;
using Hypocaust.Web;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.Open;

/// <summary><c>hypocaust open [FILE]</c>: the live web app.</summary>
internal sealed class OpenCommand : AsyncCommand<OpenSettings>
{
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
        ProblemPrinter.Print(Console.Error, options.File ?? options.DemoFile, null, problems);
        return problems.IsEmpty ? ExitCode.Clean : ExitCode.CannotRead;
    }
}
