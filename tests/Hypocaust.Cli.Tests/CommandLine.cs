using System.Diagnostics;

namespace Hypocaust.Cli.Tests;

/// <summary>Starts the built command line as a person does, in a folder of its own.</summary>
public sealed class CommandLine : IDisposable
{
    private static readonly string Root = FindRoot();

    /// <summary>What a command did.</summary>
    public sealed record Run(int ExitCode, string Output, string Error);

    public string Folder { get; } = Directory.CreateTempSubdirectory("hypocaust-cli").FullName;

    public static string Example(string name) =>
        Path.Combine(Root, "examples", name + ".hypocaust.json");

    public string Write(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    public async Task<Run> Execute(params string[] arguments)
    {
#if DEBUG
        const string configuration = "Debug";
#else
        const string configuration = "Release";
#endif
        var program = Path.Combine(
            Root,
            "src",
            "Hypocaust.Cli",
            "bin",
            configuration,
            "net10.0",
            "hypocaust.dll"
        );
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = Folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var argument in arguments.Prepend(program))
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var stop = TestContext.Current.CancellationToken;
        var output = process.StandardOutput.ReadToEndAsync(stop);
        var error = process.StandardError.ReadToEndAsync(stop);
        await process.WaitForExitAsync(stop);
        return new Run(process.ExitCode, await output, await error);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private static string FindRoot()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at!.FullName, "Hypocaust.slnx")))
        {
            at = at.Parent;
        }

        return at.FullName;
    }
}
