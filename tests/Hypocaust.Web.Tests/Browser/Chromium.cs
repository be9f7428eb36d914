using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Hypocaust.Web.Tests.Browser.Chromium))]

namespace Hypocaust.Web.Tests.Browser;

/// <summary>One browser for all journeys; where none is installed the journeys are skipped with that reason.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string? Executable = new[]
    {
        Environment.GetEnvironmentVariable("CHROMIUM"),
        "/usr/bin/chromium",
        "/usr/bin/chromium-browser",
        "/usr/bin/google-chrome",
    }.FirstOrDefault(File.Exists);

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        if (Executable is not null)
        {
            // a machine that is busy with other tests answers late, not wrongly
            Assertions.SetDefaultExpectTimeout(60_000);
            playwright = await Playwright.CreateAsync();
            browser = await playwright.Chromium.LaunchAsync(
                new() { ExecutablePath = Executable, Args = ["--no-sandbox", "--disable-gpu"] }
            );
        }
    }

    /// <summary>A profile of its own, or the test is skipped.</summary>
    public async Task<IBrowserContext> OpenAsync(int width, ColorScheme scheme)
    {
        Assert.SkipWhen(
            browser is null,
            "No Chromium on this machine: install it (Debian: apt-get install chromium) or name it in CHROMIUM."
        );
        return await browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = width < 600 ? 844 : 1000 },
                ColorScheme = scheme,
                AcceptDownloads = true,
                // moving pipes cost a machine without a graphics card more than all the rest
                ReducedMotion = ReducedMotion.Reduce,
            }
        );
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }
}
