using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Hypocaust.Web.Tests.Browser;

/// <summary>What a person does, start to end, in a real browser.</summary>
public partial class JourneyTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task Editing_the_set_point_changes_verdict_and_change_line_and_keys_undo_and_redo_it()
    {
        var page = await OpenAsync();
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");
        var verdict = await page.Locator(".verdict").InnerTextAsync();

        await SetPoint(page).FillAsync("35 °C");
        await SetPoint(page).PressAsync("Enter");

        await Expect(page.Locator(".changed"))
            .ToContainTextAsync("Set point, heater 40 °C → 35 °C: ");
        await Expect(page.Locator(".verdict")).Not.ToHaveTextAsync(verdict);
        await page.Locator("h1").FocusAsync();
        await page.Keyboard.PressAsync("Control+z");
        await Expect(SetPoint(page)).ToHaveValueAsync("40 °C");
        await Expect(page.Locator(".verdict")).ToHaveTextAsync(verdict);
        await page.Keyboard.PressAsync("Control+Shift+Z");
        await Expect(SetPoint(page)).ToHaveValueAsync("35 °C");
    }

    [Fact]
    public async Task Undo_keys_inside_a_text_field_belong_to_the_field()
    {
        var page = await OpenAsync();
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");
        await SetPoint(page).FillAsync("35 °C");
        await SetPoint(page).PressAsync("Enter");
        await Expect(page.Locator(".changed")).ToContainTextAsync("35 °C");

        await SetPoint(page).PressAsync("Control+z");

        await Expect(page.Locator(".changed")).Not.ToContainTextAsync("undone");
    }

    [Fact]
    public async Task A_bad_entry_stays_with_its_problem_and_the_answer_stays_too()
    {
        var page = await OpenAsync(390);
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");
        var verdict = await page.Locator(".verdict").InnerTextAsync();

        await SetPoint(page).FillAsync("38");
        await SetPoint(page).PressAsync("Enter");

        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("a number without a unit");
        await Expect(SetPoint(page)).ToHaveValueAsync("38");
        await Expect(SetPoint(page)).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator(".verdict")).ToHaveTextAsync(verdict);
        await SetPoint(page).FillAsync("38 °C");
        await SetPoint(page).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task One_tap_switches_the_units()
    {
        var page = await OpenAsync(390);
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");

        await page.GetByRole(AriaRole.Button, new() { Name = "Show °F, gpm" }).ClickAsync();

        await Expect(page.Locator(".verdict")).ToContainTextAsync("gpm");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Show °C, L/min" }))
            .ToBeVisibleAsync();
    }

    [Fact]
    public async Task Why_opens_by_keyboard_and_Escape_gives_the_focus_back()
    {
        var page = await OpenAsync();
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");
        var number = page.Locator(".verdict .figure").First;

        await number.FocusAsync();
        await page.Keyboard.PressAsync("Enter");

        var why = page.GetByRole(AriaRole.Dialog);
        await Expect(why).ToBeFocusedAsync();
        await Expect(why).ToContainTextAsync("Source: ");
        await page.Keyboard.PressAsync("Escape");
        await Expect(why).ToHaveCountAsync(0);
        await Expect(number).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Opening_a_broken_file_lists_every_problem_and_keeps_the_design()
    {
        var page = await OpenAsync();
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");
        var broken = Path.Combine(Path.GetDirectoryName(app.File)!, "broken.json");
        await File.WriteAllTextAsync(
            broken,
            Designs
                .Small.Text.Replace("\"40 °C\"", "\"40\"", StringComparison.Ordinal)
                .Replace("\"-12 °C\"", "\"12 bar\"", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );

        await page.Locator("input[type=file]").SetInputFilesAsync(broken);

        var list = page.Locator(".problems li");
        await Expect(list).ToHaveCountAsync(2);
        await Expect(list.First).ToContainTextAsync("line 6, column ");
        await Expect(page.Locator("h1")).ToHaveTextAsync("What flows where?");
        await page.GetByRole(AriaRole.Button, new() { Name = "Close the list" }).ClickAsync();
        await Expect(list).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_saved_copy_holds_the_very_text_and_Save_writes_the_file()
    {
        var page = await OpenAsync();
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");
        await SetPoint(page).FillAsync("35 °C");
        await SetPoint(page).PressAsync("Enter");
        await Expect(page.Locator(".changed")).ToContainTextAsync("35 °C");
        var expected = (
            await File.ReadAllTextAsync(app.File, TestContext.Current.CancellationToken)
        ).Replace("\"40 °C\"", "\"35 °C\"", StringComparison.Ordinal);

        await page.Locator(".file summary").ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.Locator(".file").GetByText("Save a copy").ClickAsync()
        );

        (
            await File.ReadAllTextAsync(
                await download.PathAsync(),
                TestContext.Current.CancellationToken
            )
        ).ShouldBe(expected);
        download.SuggestedFilename.ShouldBe("shed.hypocaust.json");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        // "not saved yet" holds the word too: the time tells that it is done
        await Expect(page.Locator(".file .state")).ToHaveTextAsync(SavedAt());
        (await File.ReadAllTextAsync(app.File, TestContext.Current.CancellationToken)).ShouldBe(
            expected
        );
    }

    [Fact]
    public async Task A_killed_program_offers_the_unsaved_edits_again()
    {
        var page = await OpenAsync();
        var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "plant");
        await SetPoint(page).FillAsync("35 °C");
        await SetPoint(page).PressAsync("Enter");
        await Expect(page.Locator(".changed")).ToContainTextAsync("35 °C");

        await using var again = await app.KillAndStartAgainAsync();
        await again.GoAsync(page, "plant");

        await Expect(page.Locator(".message")).ToContainTextAsync("are restored");
        await Expect(SetPoint(page)).ToHaveValueAsync("35 °C");
        await page.GetByRole(AriaRole.Button, new() { Name = "Discard them" }).ClickAsync();
        await Expect(SetPoint(page)).ToHaveValueAsync("40 °C");
    }

    [Fact]
    public async Task The_list_of_questions_folds_out_on_a_phone_and_leads_on()
    {
        var page = await OpenAsync(390);
        await using var app = await RunningApp.StartAsync();
        await app.GoAsync(page, "space");

        await page.GetByText("Space, question 1 of 4: all questions").ClickAsync();
        await page.Locator(".folded").GetByText("What flows where?").ClickAsync();

        await Expect(page.Locator("h1")).ToHaveTextAsync("What flows where?");
        await Expect(page.GetByText("Plant, question 3 of 4: all questions")).ToBeVisibleAsync();
        await Expect(page.Locator(".folded .questions")).Not.ToBeVisibleAsync();
    }

    private static ILocator SetPoint(IPage page) => page.GetByLabel("Set point, heater");

    [GeneratedRegex(@"^\s*saved \d\d:\d\d\s*$", RegexOptions.None, 1000)]
    private static partial Regex SavedAt();
}
