using System.Globalization;
using Microsoft.Playwright;

namespace Hypocaust.Web.Tests.Browser;

/// <summary>Measures how long an edit takes until the new drawing is painted. A measurement, not a check: run it with <c>-explicit only</c>.</summary>
public class EditToRedraw(Chromium chromium) : BrowserTest(chromium)
{
    private const int Edits = 40;

    [Theory(Explicit = true)]
    [InlineData("space", "Coldest day outside", "-11 °C", "-13 °C")]
    [InlineData("floor", "Set point, heater", "39 °C", "41 °C")]
    [InlineData("plant", "Set point, heater", "39 °C", "41 °C")]
    public async Task An_edit_is_painted_after(
        string question,
        string label,
        string one,
        string other
    )
    {
        var page = await OpenAsync();
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, question);
        var input = page.GetByLabel(label);
        var times = new List<double>();
        for (var edit = 0; edit < Edits; edit++)
        {
            times.Add(await input.EvaluateAsync<double>(Measurement, edit % 2 == 0 ? one : other));
        }

        var warm = times.Skip(Edits / 4).Order().ToList();
        TestContext.Current.SendDiagnosticMessage(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{question}: first {times[0]:F0} ms, then median {warm[warm.Count / 2]:F0} ms, slowest {warm[^1]:F0} ms"
            )
        );
        warm.ShouldNotBeEmpty();
    }

    private const string Measurement = """
        (input, text) => new Promise(done => {
          const start = performance.now();
          const drawing = document.querySelector('.drawing .wide');
          new MutationObserver((_, watch) => {
            watch.disconnect();
            requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
          }).observe(drawing, { childList: true, subtree: true, characterData: true, attributes: true });
          input.value = text;
          input.dispatchEvent(new Event('change', { bubbles: true }));
        })
        """;
}
