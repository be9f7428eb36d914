using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Hypocaust.Web.Tests.Browser;

/// <summary>What holds for every page at a desk and on a phone.</summary>
public class PageTests(Chromium chromium, QuietApp quiet)
    : BrowserTest(chromium),
        IClassFixture<QuietApp>
{
    private const int MostUnfolded = 12;

    public static MatrixTheoryData<string, int> Pages { get; } =
        new(["space", "floor", "plant", "review"], [1400, 390]);

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_fits_its_window_and_the_browser_has_nothing_to_complain(
        string question,
        int width
    )
    {
        var page = await OpenAsync(width);
        var complaints = new List<string>();
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                complaints.Add(message.Text);
            }
        };
        page.PageError += (_, error) => complaints.Add(error);
        page.RequestFailed += (_, request) => complaints.Add(request.Url);

        await quiet.App.GoAsync(page, question);

        var overhang = await page.EvaluateAsync<int>(
            "document.documentElement.scrollWidth - window.innerWidth"
        );
        overhang.ShouldBeLessThanOrEqualTo(0);
        (await page.Locator("h1").CountAsync()).ShouldBe(1);
        (await page.Locator(".verdict").InnerTextAsync()).Length.ShouldBeGreaterThan(20);
        complaints.ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Axe_finds_nothing_serious_by_day_or_by_night(string question, int width)
    {
        var day = await OpenAsync(width);
        var night = await OpenAsync(width, ColorScheme.Dark);

        foreach (var page in new[] { day, night })
        {
            await quiet.App.GoAsync(page, question);
            await UnfoldEverythingAsync(page);
            var found = await page.RunAxe();
            found
                .Violations.Where(violation => violation.Impact is "serious" or "critical")
                .Select(violation =>
                    $"{violation.Id}: {string.Join(" | ", violation.Nodes.Take(3).Select(node => node.Html))}"
                )
                .ShouldBeEmpty();
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_target_on_a_phone_is_big_enough_for_a_thumb(string question, int width)
    {
        Assert.SkipWhen(width > 600, "A phone's question.");
        var page = await OpenAsync(width);
        await quiet.App.GoAsync(page, question);
        await UnfoldEverythingAsync(page);

        // numbers within a sentence are text and follow the line (WCAG 2.2, 2.5.8: inline targets)
        var small = await page.EvaluateAsync<string[]>(
            """
            [...document.querySelectorAll('button, .button, summary, select, input[type=text], nav a')]
              .filter(e => e.offsetParent && !e.closest('.verdict, dd'))
              .filter(e => e.getBoundingClientRect().height < 43.5)
              .map(e => e.outerHTML.slice(0, 100))
            """
        );

        small.ShouldBeEmpty();
    }

    private static async Task UnfoldEverythingAsync(IPage page)
    {
        var folded = page.Locator("main details:not([open]) > summary");
        for (var unfolded = 0; unfolded < MostUnfolded; unfolded++)
        {
            if (await folded.CountAsync() == 0)
            {
                return;
            }

            await folded.First.ClickAsync();
            await Expect(page.Locator("main details[open]")).ToHaveCountAsync(unfolded + 1);
        }
    }
}
