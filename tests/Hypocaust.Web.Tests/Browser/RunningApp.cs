using System.Diagnostics;
using System.Reflection;
using Hypocaust.Design;
using Microsoft.Playwright;

namespace Hypocaust.Web.Tests.Browser;

/// <summary>The built program in a process of its own on a free port, with a design in a folder of its own.</summary>
internal sealed class RunningApp : IAsyncDisposable
{
    private static readonly string Program = Assembly
        .GetExecutingAssembly()
        .GetCustomAttributes<AssemblyMetadataAttribute>()
        .Single(metadata => metadata.Key == "App")
        .Value!;

    private readonly Process process;
    private readonly Folder folder;

    private RunningApp(Process process, Folder folder, string address)
    {
        this.process = process;
        this.folder = folder;
        Address = address;
    }

    public string Address { get; }

    public string File => folder.File("shed.hypocaust.json");

    /// <summary>Starts with the small design.</summary>
    public static Task<RunningApp> StartAsync()
    {
        var home = new Folder();
        System.IO.File.WriteAllText(home.File("shed.hypocaust.json"), DesignFile.New("Shed"));
        return StartAsync(home);
    }

    /// <summary>Kills the program and starts it again on the same file.</summary>
    public async Task<RunningApp> KillAndStartAgainAsync()
    {
        await StopAsync();
        return await StartAsync(folder);
    }

    /// <summary>Opens a page and waits until it answers to touch and has led the focus to its question, which it does once.</summary>
    public async Task GoAsync(IPage page, string question)
    {
        await page.GotoAsync($"{Address}/{question}");
        await page.WaitForSelectorAsync("main[data-interactive=true]");
        await Assertions.Expect(page.Locator("h1")).ToBeFocusedAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        folder.Dispose();
    }

    private static async Task<RunningApp> StartAsync(Folder home)
    {
        var started = Process.Start(
            new ProcessStartInfo("dotnet")
            {
                ArgumentList =
                {
                    Program,
                    "open",
                    home.File("shed.hypocaust.json"),
                    "--no-browser",
                },
                WorkingDirectory = Path.GetTempPath(),
                RedirectStandardOutput = true,
                UseShellExecute = false,
            }
        )!;
        while (await started.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.Split(" at ") is ["Hypocaust is open", var address])
            {
                return new(started, home, address);
            }
        }

        started.Dispose();
        throw new InvalidOperationException("The program ended before it listened.");
    }

    private async Task StopAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }
}
