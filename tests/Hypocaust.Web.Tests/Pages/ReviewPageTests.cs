using System.Collections.Immutable;
using Bunit;
using Hypocaust.Answers;
using Hypocaust.Web.Review;
using Hypocaust.Web.Session;
using Hypocaust.Web.Shell;

namespace Hypocaust.Web.Tests.Pages;

public class ReviewPageTests : PageTest
{
    private static readonly Finding Relief = new(
        "relief-valve-missing",
        "Every heater has a relief valve",
        Severity.Danger,
        "$.plant.items.heater.setPoint",
        "No relief valve is piped to heater",
        "A closed circuit can burst",
        "Put one on a tee at the heater",
        "EN 12828:2012",
        "plant"
    );

    private static readonly Finding Cover = Relief with
    {
        Title = "The screed is thick enough",
        Severity = Severity.Note,
        Place = "$.floor.sections.slab.cover",
        Page = "floor",
    };

    [Fact]
    public void Findings_stand_in_groups_the_gravest_first_with_word_and_shape()
    {
        var page = RenderWith<ReviewPage>([Relief, Cover]);

        page.FindAll(".findings h2")
            .Select(head => head.TextContent)
            .ShouldBe(["▲ Someone can be hurt or something destroyed", "○ Worth knowing"]);
        var first = page.FindAll(".finding")[0].TextContent;
        first.ShouldContain("danger");
        foreach (
            var part in new[]
            {
                Relief.Title,
                Relief.What,
                Relief.Why,
                Relief.Remedy,
                Relief.Source,
            }
        )
        {
            first.ShouldContain(part);
        }
    }

    [Fact]
    public void A_finding_leads_to_the_value_that_it_concerns()
    {
        var page = RenderWith<ReviewPage>([Relief, Cover]);

        page.FindAll(".finding a.go")
            .Select(link => link.GetAttribute("href"))
            .ShouldBe([
                "/plant?field=%24.plant.items.heater.setPoint",
                "/floor?field=%24.floor.sections.slab.cover",
            ]);
    }

    [Fact]
    public void The_list_of_questions_is_marked_with_count_word_and_shape()
    {
        var list = RenderWith<QuestionList>([Relief, Relief, Cover]);

        list.FindAll("li")
            .Select(item =>
                string.Join(", ", item.QuerySelectorAll(".mark").Select(mark => mark.TextContent))
            )
            .ShouldBe(["", "1 note ○", "2 danger ▲", "2 danger ▲, 1 note ○"]);
    }

    private IRenderedComponent<TComponent> RenderWith<TComponent>(ImmutableArray<Finding> findings)
        where TComponent : Microsoft.AspNetCore.Components.IComponent
    {
        var present = Session.View.Present;
        var moment = new Moment(
            present.Document,
            present.Answer with
            {
                Review = new ReviewAnswer(findings, 15, []),
            },
            ""
        );
        return Render<TComponent>(component =>
            component.AddCascadingValue(moment).AddCascadingValue(Session.View)
        );
    }
}
