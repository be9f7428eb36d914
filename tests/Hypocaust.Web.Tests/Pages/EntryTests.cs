using Bunit;
using Hypocaust.Web.Plant;
using Hypocaust.Web.Space;

namespace Hypocaust.Web.Tests.Pages;

public class EntryTests : PageTest
{
    [Fact]
    public void An_entry_that_cannot_be_used_stays_as_typed_with_problem_and_remedy()
    {
        var desk = Desk<PlantPage>();
        var verdict = desk.Find(".verdict").TextContent;

        Labelled(desk, "Set point").Change("38");

        var input = Labelled(desk, "Set point");
        input.GetAttribute("value").ShouldBe("38");
        input.GetAttribute("aria-invalid").ShouldBe("true");
        var problem = Designs.Small.Edit(Designs.SetPoint, "38").Problems.ShouldHaveSingleItem();
        desk.Find(".entry .problem").TextContent.ShouldContain($"{problem.What}; {problem.Remedy}");
        desk.Find(".verdict").TextContent.ShouldBe(verdict);
    }

    [Fact]
    public void A_good_entry_changes_verdict_and_says_what_changed()
    {
        var desk = Desk<PlantPage>();
        var verdict = desk.Find(".verdict").TextContent;

        Labelled(desk, "Set point").Change("35 °C");

        desk.Find(".verdict").TextContent.ShouldNotBe(verdict);
        desk.Find(".changed").TextContent.ShouldStartWith("Set point, heater 40 °C → 35 °C: ");
    }

    [Fact]
    public void Undo_brings_value_and_verdict_back()
    {
        var desk = Desk<PlantPage>();
        var verdict = desk.Find(".verdict").TextContent;
        Labelled(desk, "Set point").Change("35 °C");

        desk.Find("[data-do=undo]").Click();

        Labelled(desk, "Set point").GetAttribute("value").ShouldBe("40 °C");
        desk.Find(".verdict").TextContent.ShouldBe(verdict);
        desk.Find(".changed").TextContent.ShouldStartWith("undone: ");
        desk.Find("[data-do=undo]").HasAttribute("disabled").ShouldBeTrue();
        desk.Find("[data-do=redo]").HasAttribute("disabled").ShouldBeFalse();
    }

    [Fact]
    public void An_assumed_value_says_so_in_words_and_with_a_dashed_border()
    {
        var desk = Desk<PlantPage>();

        Labelled(desk, "Antifreeze").ClassList.ShouldContain("default");
        desk.Markup.ShouldContain("assumed");

        Labelled(desk, "Antifreeze").Change("0 %");

        Labelled(desk, "Antifreeze").ClassList.ShouldNotContain("default");
    }

    [Fact]
    public void One_tap_switches_the_units_of_the_whole_page()
    {
        var desk = Desk<SpacePage>();
        desk.Find(".verdict").TextContent.ShouldContain("kW");

        desk.Find("[data-do=units]").Click();

        desk.Find(".verdict").TextContent.ShouldContain("BTU/h");
        desk.Find(".verdict").TextContent.ShouldNotContain("kW");
        desk.FindAll("th").ShouldContain(head => head.TextContent.Contains("ft²"));
    }

    [Fact]
    public void Two_windows_show_the_same_design()
    {
        var one = Desk<PlantPage>();
        var other = Desk<PlantPage>();

        Labelled(one, "Set point").Change("35 °C");

        other.WaitForAssertion(() =>
            Labelled(other, "Set point").GetAttribute("value").ShouldBe("35 °C")
        );
    }

    [Fact]
    public void A_link_to_a_value_unfolds_the_way_to_it()
    {
        var desk = Desk<PlantPage>("/plant?field=%24.plant.items.pump.speed");

        desk.FindAll("#allplantitemspumpspeed, [id^='all'][id$='pump-speed']")
            .ShouldHaveSingleItem();
        desk.FindAll("details.group[open]").Count.ShouldBe(3);
    }
}
