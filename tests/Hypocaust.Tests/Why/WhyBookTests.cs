using Hypocaust.Answers;
using Hypocaust.Quantities;
using Hypocaust.Why;

namespace Hypocaust.Tests.Why;

public sealed class WhyBookTests
{
    public static TheoryData<string> ExampleNames => [.. Examples.Names];

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void Every_number_of_an_answer_has_an_explanation(string example)
    {
        var answer = Examples.Answer(example);
        Explained(answer)
            .Where(number => WhyBook.Explain(answer, number.Path) is null)
            .Select(number => AnswerPath.Split(number.Path).Pattern)
            .Distinct()
            .ShouldBeEmpty();
    }

    // The words and the number are held together: the formula as code, fed with the inputs shown, gives the number shown.
    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void The_formula_shown_gives_the_number_shown(string example)
    {
        var answer = Examples.Answer(example);
        var checkedNumbers = 0;
        foreach (var (path, value) in Explained(answer))
        {
            var derivation = WhyBook.Derive(answer, path)!;
            if (derivation.Compute is { } compute)
            {
                var computed = compute([.. derivation.Inputs.Select(input => input.Value)]);
                computed.ShouldBe(value, 1e-6 * Math.Max(1e-3, Math.Abs(value)), path);
                checkedNumbers++;
            }
        }

        checkedNumbers.ShouldBeGreaterThan(40);
    }

    [Theory]
    [InlineData("floor.loops[99].lengthM")]
    [InlineData("floor.nothing")]
    [InlineData("")]
    [InlineData("plant.items[0].kind")]
    [InlineData("space.zones[-1].designLossW")]
    [InlineData("space.zones[99999999999].designLossW")]
    public void A_path_that_leads_to_no_number_has_none(string path) =>
        WhyBook.Explain(Examples.Answer("new"), path).ShouldBeNull();

    [Fact]
    public void Explanations_read_in_both_systems_of_units()
    {
        var answer = Examples.Answer("pottery-studio");
        var why = WhyBook.Explain(answer, "floor.loops[0].running.heatUpW")!;
        why.Shown.Format(1000, UnitSystem.Si).ShouldBe("1000 W");
        why.Shown.Format(1000, UnitSystem.Us).ShouldBe("3412 BTU/h");
        why.Inputs.ShouldContain(input => input.Symbol == "K_H");
        why.Source.ShouldContain("EN 1264-2");
    }

    [Fact]
    public void More_set_point_gives_more_heat_and_is_named_as_such()
    {
        var document = Examples.Document("new");
        var found = SensitivityRanking.Rank(document, "floor.outputW", 5);
        found.Length.ShouldBe(5);
        found.Select(one => Math.Abs(one.Change)).ShouldBeInOrder(SortDirection.Descending);
        found.ShouldContain(one =>
            one.DesignPath == "$.plant.items.heater.setPoint" && one.Change > 0
        );
        found.ShouldContain(one =>
            one.DesignPath == "$.building.zones.room.indoor" && one.Change < 0
        );
    }

    [Fact]
    public void A_given_number_follows_itself_alone()
    {
        var found = SensitivityRanking.Rank(Examples.Document("new"), "plant.heater.capacityW", 3);
        // the capacity comes from the built-in part, which is no value of this design
        found.ShouldBeEmpty();
    }

    // problems carry positions in a file, which are no results
    private static IEnumerable<(string Path, double Value)> Explained(Answer answer) =>
        AnswerPath
            .Numbers(answer)
            .Where(number =>
                !number.Path.StartsWith("problems", StringComparison.Ordinal)
                && !number.Path.StartsWith("review", StringComparison.Ordinal)
            );
}
