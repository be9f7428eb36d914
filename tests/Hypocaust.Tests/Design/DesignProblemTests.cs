using Hypocaust.Problems;

namespace Hypocaust.Tests.Design;

/// <summary>Each fault of a design file gives its problem at its path, line and column, and nothing else.</summary>
public sealed class DesignProblemTests
{
    // what stands there, what is put in its place, the part of that which is at fault, code, path, words of the remedy
    public static TheoryData<string, string, string, string, string, string> Faults =>
        new()
        {
            {
                "\"spacing\": \"9 in\"",
                "\"spacng\": \"9 in\"",
                "\"spacng\"",
                "unknown-key",
                "$.floor.loops[2].spacng",
                "\"spacing\""
            },
            { "\"9 in\"", "9", "9, \"area\"", "no-unit", "$.floor.loops[2].spacing", "\"9 ft\"" },
            { "\"9 in\"", "\"9\"", "\"9\",", "no-unit", "$.floor.loops[2].spacing", "mm" },
            {
                "\"9 in\"",
                "\"9 kW\"",
                "\"9 kW\"",
                "wrong-dimension",
                "$.floor.loops[2].spacing",
                "in"
            },
            {
                "\"9 in\"",
                "\"9 parsec\"",
                "\"9 parsec\"",
                "unknown-unit",
                "$.floor.loops[2].spacing",
                "mm"
            },
            {
                "\"9 in\"",
                "\"-9 in\"",
                "\"-9 in\"",
                "out-of-bounds",
                "$.floor.loops[2].spacing",
                "between 0.7875 in and 39.37 in"
            },
            {
                "\"9 in\"",
                "\"1..2000 mm\"",
                "\"1..2000 mm\"",
                "out-of-bounds",
                "$.floor.loops[2].spacing",
                "between 20 mm and 1000 mm"
            },
            {
                "\"9 in\"",
                "\"2,5 in\"",
                "\"2,5 in\"",
                "comma-in-number",
                "$.floor.loops[2].spacing",
                "point"
            },
            {
                "\"9 in\"",
                "\"NaN in\"",
                "\"NaN in\"",
                "not-a-quantity",
                "$.floor.loops[2].spacing",
                "12 ft 6 in"
            },
            { "\"9 in\"", "[9]", "[9]", "wrong-type", "$.floor.loops[2].spacing", "12 ft 6 in" },
            {
                "\"9 in\"",
                "null",
                "null, \"area\"",
                "null-value",
                "$.floor.loops[2].spacing",
                "write a length"
            },
            {
                "\"spacing\": \"9 in\", ",
                "",
                "{ \"name\": \"desk\"",
                "missing",
                "$.floor.loops[2].spacing",
                "\"spacing\": \"12 ft 6 in\""
            },
            {
                "\"shut\": true }\n    ]",
                "\"shut\": \"yes\" }\n    ]",
                "\"yes\"",
                "wrong-type",
                "$.floor.loops[2].shut",
                "true"
            },
            {
                "\"speed\": 2",
                "\"speed\": 2.5",
                "2.5, \"note\"",
                "wrong-type",
                "$.plant.items.pump2.speed",
                "3"
            },
            {
                "\"speed\": 2",
                "\"speed\": 0",
                "0, \"note\"",
                "out-of-bounds",
                "$.plant.items.pump2.speed",
                "between 1 and 10"
            },
            {
                "\"version\": 1",
                "\"version\": 2",
                "2,\n  \"name\"",
                "out-of-bounds",
                "$.version",
                "must be 1"
            },
            {
                "\"propyleneGlycol\"",
                "\"propylenGlycol\"",
                "\"propylenGlycol\"",
                "bad-choice",
                "$.plant.fluid.kind",
                "\"propyleneGlycol\""
            },
            {
                "\"kind\": \"circulator\"",
                "\"kind\": \"circlator\"",
                "\"circlator\"",
                "unknown-kind",
                "$.parts['used pump'].kind",
                "\"circulator\""
            },
            {
                "\"kind\": \"circulator\",",
                "",
                "{\n      \n",
                "missing",
                "$.parts['used pump']",
                "circulator"
            },
            {
                "\"units\": \"us\"",
                "\"units\": \"us\", \"units\": \"si\"",
                "\"units\": \"si\"",
                "duplicate-key",
                "$.units",
                "line 5"
            },
            {
                "\"width\": \"4 ft\"",
                "\"width\": 1, \"width\": 2",
                "\"width\": 2",
                "duplicate-key",
                "$.board.width",
                "line"
            },
            {
                "\"note\": \"Read",
                "\"Note\": \"Read",
                "\"Note\"",
                "unknown-key",
                "$.Note",
                "\"note\""
            },
            {
                "\"used pump\": {",
                "\"2nd pump\": {",
                "\"2nd pump\"",
                "bad-name",
                "$.parts['2nd pump']",
                "letter"
            },
        };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_is_told_with_its_place_and_remedy(
        string old,
        string fault,
        string at,
        string code,
        string path,
        string remedy
    )
    {
        var text = TestDesigns.With(old, fault);
        var problem = TestDesigns.ProblemsOf(text)[0];
        problem.ShouldSatisfyAllConditions(
            one => one.Code.ShouldBe(code),
            one => one.Place.ShouldBe(path),
            one => one.Position.ShouldBe(TestDesigns.PositionOf(text, at)),
            one => one.Remedy.ShouldContain(remedy),
            one => $"{one.What}{one.Remedy}".ShouldNotEndWith(".")
        );
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_makes_one_problem_only(
        string old,
        string fault,
        string at,
        string code,
        string path,
        string remedy
    )
    {
        _ = (at, code, path, remedy);
        var problems = TestDesigns.ProblemsOf(TestDesigns.With(old, fault));
        // renaming a thing also breaks what refers to it
        var expected = fault.StartsWith("\"2nd", StringComparison.Ordinal) ? 2 : 1;
        problems
            .Select(problem => problem.ToString())
            .Count()
            .ShouldBe(expected, string.Join("\n", problems));
    }

    [Fact]
    public void All_problems_are_told_at_once_in_the_order_of_the_file()
    {
        var text = TestDesigns
            .Workshop.Replace("\"62 °F\"", "62", StringComparison.Ordinal)
            .Replace("\"thermalBridges\"", "\"thermalBrigdes\"", StringComparison.Ordinal)
            .Replace(
                "\"zone\": \"office\", \"section\"",
                "\"zone\": \"offices\", \"section\"",
                StringComparison.Ordinal
            )
            .Replace("\"9 in\"", "\"-9 in\"", StringComparison.Ordinal)
            .Replace("\"35 %\"", "\"35 kW\"", StringComparison.Ordinal)
            .Replace("\"bars.return\"", "\"tees.secondaryOut\"", StringComparison.Ordinal)
            .Replace("\"6 in\", ", "\"-6 in\", ", StringComparison.Ordinal);
        TestDesigns
            .ProblemsOf(text)
            .Select(problem => problem.Code)
            .ShouldBe([
                "unknown-key",
                "no-unit",
                "unknown-reference",
                "out-of-bounds",
                "wrong-dimension",
                "out-of-bounds",
                "port-twice",
            ]);
    }

    [Fact]
    public void A_hopeless_file_lists_two_hundred_problems_and_counts_the_rest()
    {
        var junk = string.Join(",", Enumerable.Range(0, 500).Select(i => $"\"junk{i}\":{i}"));
        var problems = TestDesigns.ProblemsOf(
            TestDesigns.With("\"version\": 1,", junk + ",\"version\": 1,")
        );
        problems.Count.ShouldBe(201);
        problems[^1].What.ShouldBe("300 more problems are not listed");
    }

    [Fact]
    public void Choices_and_kinds_do_not_mind_capitals_and_hyphens()
    {
        TestDesigns.Read(TestDesigns.With("\"propyleneGlycol\"", "\"Propylene-Glycol\""));
        TestDesigns.Read(TestDesigns.With("\"kind\": \"circulator\"", "\"kind\": \"Circulator\""));
    }

    [Fact]
    public void A_column_counts_characters_not_bytes()
    {
        var problem = TestDesigns
            .ProblemsOf(TestDesigns.With("\"annualMean\": \"48 °F\"", "\"annualMean\": 48"))
            .ShouldHaveSingleItem();
        // the line before the fault holds a degree sign, two bytes in UTF-8
        problem.Position.ShouldBe(
            new TextPosition(
                6,
                "  \"site\": { \"designOutdoor\": \"-4 °F\", \"annualMean\": ".Length + 1
            )
        );
    }
}
