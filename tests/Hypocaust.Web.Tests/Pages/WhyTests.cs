using Bunit;
using Hypocaust.Web.Floor;
using Hypocaust.Web.Plant;
using Hypocaust.Web.Space;
using Hypocaust.Why;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Tests.Pages;

public class WhyTests : PageTest
{
    [Fact]
    public void Every_number_of_Space_has_its_derivation() => EveryNumberOf<SpacePage>(10);

    [Fact]
    public void Every_number_of_Floor_has_its_derivation() => EveryNumberOf<FloorPage>(25);

    [Fact]
    public void Every_number_of_Plant_has_its_derivation() => EveryNumberOf<PlantPage>(80);

    [Fact]
    public void A_number_opens_formula_inputs_and_source_and_Escape_closes_them()
    {
        var desk = Desk<SpacePage>();
        desk.FindAll(".why").ShouldBeEmpty();
        var path = desk.Find(".verdict .figure").GetAttribute("data-why")!;

        desk.Find(".verdict .figure").Click();

        var why = WhyBook.Explain(Session.View.Present.Answer, path)!;
        var card = desk.Find(".why");
        card.TextContent.ShouldContain(why.Formula);
        card.TextContent.ShouldContain(why.Source);
        foreach (var input in why.Inputs)
        {
            card.TextContent.ShouldContain(input.Meaning);
        }

        desk.Find(".verdict .figure").GetAttribute("aria-expanded").ShouldBe("true");
        card.KeyDown("Escape");
        desk.FindAll(".why").ShouldBeEmpty();
        desk.Find(".verdict .figure").GetAttribute("aria-expanded").ShouldBe("false");
    }

    [Fact]
    public void Another_number_takes_the_place_of_the_open_one()
    {
        var desk = Desk<SpacePage>();
        desk.FindAll(".answers .figure")[0].Click();

        desk.FindAll(".answers .figure")[1].Click();

        desk.FindAll(".why").ShouldHaveSingleItem();
        desk.FindAll("[aria-expanded=true]").ShouldHaveSingleItem();
    }

    [Fact]
    public void An_open_derivation_follows_an_edit()
    {
        var desk = Desk<SpacePage>();
        desk.Find(".verdict .figure").Click();
        var before = desk.Find(".why").TextContent;

        Labelled(desk, "Coldest day").Change("-25 °C");

        desk.Find(".why").TextContent.ShouldNotBe(before);
    }

    private void EveryNumberOf<TPage>(int atLeast)
        where TPage : IComponent
    {
        var answer = Session.View.Present.Answer;
        var desk = Desk<TPage>();
        for (var fold = 0; fold < desk.FindAll("details.more > summary").Count; fold++)
        {
            desk.FindAll("details.more > summary")[fold].Click();
        }

        var paths = desk.FindAll("[data-why]")
            .Select(button => button.GetAttribute("data-why")!)
            .ToList();

        paths.Count.ShouldBeGreaterThanOrEqualTo(atLeast);
        paths.Where(path => AnswerPath.Read(answer, path) is null).ShouldBeEmpty();
        paths.Where(path => WhyBook.Explain(answer, path) is null).ShouldBeEmpty();
    }
}
