using System.Globalization;
using Hypocaust.Cli.Open;
using Spectre.Console.Cli;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

var app = new CommandApp<OpenCommand>();
app.Configure(config =>
{
    config.SetApplicationName("hypocaust");
    config.UseStrictParsing();
    config.PropagateExceptions();
    config
        .AddCommand<OpenCommand>("open")
        .WithDescription("Open a design in the browser; without a file, the demo.");
});
try
{
    return await app.RunAsync(args);
}
catch (CommandAppException wrong)
{
    await Console.Error.WriteLineAsync(wrong.Message);
    return 64;
}
