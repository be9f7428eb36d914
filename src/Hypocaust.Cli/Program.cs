using System.Globalization;
using Hypocaust.Cli.New;
using Hypocaust.Cli.Open;
using Hypocaust.Cli.Review;
using Hypocaust.Cli.Schema;
using Hypocaust.Cli.Solve;
using Hypocaust.Cli.Terminal;
using Spectre.Console.Cli;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

var app = new CommandApp();
app.Configure(config =>
{
    config.SetApplicationName("hypocaust");
    config.UseStrictParsing();
    config.PropagateExceptions();
    config
        .AddCommand<OpenCommand>("open")
        .WithDescription("Open a design in the browser; without a file, the demo.");
    config
        .AddCommand<NewCommand>("new")
        .WithDescription("Write a small complete design to start from.");
    config
        .AddCommand<SolveCommand>("solve")
        .WithDescription("Answer a design: heat, floor, flows, findings.");
    config
        .AddCommand<ReviewCommand>("review")
        .WithDescription("Say what is unsafe, unsuitable or missing.");
    config
        .AddCommand<SchemaCommand>("schema")
        .WithDescription("Print the JSON Schema of the design, or of the answer.");
});
try
{
    return await app.RunAsync(Meant(args));
}
catch (CommandAppException wrong)
{
    await Console.Error.WriteLineAsync(wrong.Message);
    return ExitCode.Usage;
}

// nothing, a design file or options alone mean: open
static string[] Meant(string[] args) =>
    args switch
    {
        [] => ["open"],
        ["--help" or "-h" or "--version" or "-v", ..] => args,
        [['-', ..], ..] => ["open", .. args],
        [var file, ..] when file.EndsWith(".json", StringComparison.OrdinalIgnoreCase) =>
        [
            "open",
            .. args,
        ],
        _ => args,
    };
