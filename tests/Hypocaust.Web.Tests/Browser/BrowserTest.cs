using Microsoft.Playwright;

namespace Hypocaust.Web.Tests.Browser;

/// <summary>Opens windows and closes them after the test.</summary>
[Collection("browser")]
public abstract class BrowserTest(Chromium chromium) : IAsyncLifetime
{
    private readonly List<IBrowserContext> opened = [];

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    /// <summary>A window of its own, or the test is skipped.</summary>
    protected async Task<IPage> OpenAsync(int width = 1400, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await chromium.OpenAsync(width, scheme);
        opened.Add(context);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var context in opened)
        {
            await context.DisposeAsync();
        }

        GC.SuppressFinalize(this);
    }
}
