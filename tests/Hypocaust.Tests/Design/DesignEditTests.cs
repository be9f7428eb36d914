using Hypocaust.Design;

namespace Hypocaust.Tests.Design;

/// <summary>An edit changes the one value and keeps every other byte.</summary>
public sealed class DesignEditTests
{
    // path, new text, what stands in the file, what stands there afterwards
    public static TheoryData<string, string?, string, string> Edits =>
        new()
        {
            { "$.floor.loops[2].spacing", "8 in", "\"9 in\"", "\"8 in\"" },
            { "$.plant.items.pump2.speed", "3", "\"speed\": 2", "\"speed\": 3" },
            {
                "$.floor.loops[2].shut",
                "false",
                "\"shut\": true }\n    ]",
                "\"shut\": false }\n    ]"
            },
            { "$.name", "Say \"boat\"\\", "\"Boat workshop\"", "\"Say \\\"boat\\\"\\\\\"" },
            { "$.plant.items.pump2.note", null, ", \"note\": \"slowest that still purges\"", "" },
            { "$.site.altitude", null, ", \"altitude\": \"650 ft\"", "" },
            {
                "$.parts['my tube'].oxygenBarrier",
                "true",
                "\"oxygenBarrier\": false",
                "\"oxygenBarrier\": true"
            },
            {
                "$.plant.runs[3].insulation",
                "1 in",
                "\"insulation\": \"1/2 in\"",
                "\"insulation\": \"1 in\""
            },
            { "$.floor.loops[0].manifold", null, "\"manifold\": \"bars\", ", "" },
            {
                "$.plant.items.pump1.off",
                "true",
                "{ \"part\": \"used pump\" }",
                "{ \"part\": \"used pump\", \"off\": true }"
            },
            { "$.site.designOutdoor", "−5 °F", "\"-4 °F\"", "\"−5 °F\"" },
            {
                "$.plant.fillTemperature",
                "50 °F",
                "\"tees.secondaryIn\"] }\n    ]",
                "\"tees.secondaryIn\"] }\n    ],\n    \"fillTemperature\": \"50 °F\""
            },
        };

    [Theory]
    [MemberData(nameof(Edits))]
    public void Only_the_edited_value_changes(string path, string? newText, string old, string now)
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        var edited = document.Edit(path, newText);
        edited.Problems.ShouldBeEmpty();
        edited.Value.Text.ShouldBe(TestDesigns.With(old, now));
        edited.Value.Written(path).ShouldBe(newText);
    }

    [Fact]
    public void Line_ends_and_byte_order_mark_of_the_file_stay()
    {
        var text = "\ufeff" + TestDesigns.Workshop.Replace("\n", "\r\n", StringComparison.Ordinal);
        var edited = TestDesigns.Read(text).Edit("$.plant.surroundings", "10 °C").Value.Text;
        edited.ShouldBe(
            text.Replace(
                "\"tees.secondaryIn\"] }\r\n    ]",
                "\"tees.secondaryIn\"] }\r\n    ],\r\n    \"surroundings\": \"10 °C\"",
                StringComparison.Ordinal
            )
        );
    }

    [Fact]
    public void Taking_a_value_back_gives_the_old_text()
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        var there = document.Edit("$.plant.items.pump1.height", "3 ft").Value;
        there.Edit("$.plant.items.pump1.height", null).Value.Text.ShouldBe(document.Text);
        document
            .Edit("$.floor.loops[2].spacing", "8 in")
            .Value.Edit("$.floor.loops[2].spacing", "9 in")
            .Value.Text.ShouldBe(document.Text);
    }

    [Fact]
    public void A_whole_entry_can_be_taken_out()
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        var fewer = document.Edit("$.floor.loops[1]", null).Value;
        fewer.Design.Floor!.Loops.Select(loop => loop.Name).ShouldBe(["door side", "desk"]);
        fewer
            .Edit("$.floor.loops[1]", null)
            .Value.Edit("$.floor.loops[0]", null)
            .Value.Design.Floor!.Loops.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("$.floor.loops[2].spacing", "9", "no-unit", "$.floor.loops[2].spacing")]
    [InlineData("$.floor.loops[2].spacing", "9 kW", "wrong-dimension", "$.floor.loops[2].spacing")]
    [InlineData("$.plant.items.pump2.speed", "fast", "wrong-type", "$.plant.items.pump2.speed")]
    [InlineData("$.plant.items.pump2.speed", "9", "out-of-bounds", "$.plant.items.pump2.speed")]
    [InlineData("$.plant.items.pump2.colour", "red", "unknown-key", "$.plant.items.pump2.colour")]
    [InlineData("$.plant.items.pump9.speed", "2", "no-such-place", "$.plant.items.pump9.speed")]
    [InlineData("$.floor.loops[7]", "2", "no-such-place", "$.floor.loops[7]")]
    [InlineData("$.floor.loops", "2", "not-a-leaf", "$.floor.loops")]
    [InlineData("$.name", null, "missing", "$.name")]
    [InlineData("floor", "2", "no-such-place", "floor")]
    [InlineData("$", "2", "no-such-place", "$")]
    [InlineData("$.floor..loops", "2", "no-such-place", "$.floor..loops")]
    public void An_edit_that_makes_a_problem_is_refused_with_its_path(
        string path,
        string? newText,
        string code,
        string place
    )
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        var problem = document.Edit(path, newText).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe(code);
        problem.Place.ShouldBe(place);
        document.Text.ShouldBe(TestDesigns.Workshop);
    }

    [Fact]
    public void Every_written_value_can_be_edited_to_itself()
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        foreach (var path in document.Places.Keys.Where(path => document.Written(path) is not null))
        {
            if (!path.StartsWith("$.board", StringComparison.Ordinal))
            {
                document
                    .Edit(path, document.Written(path))
                    .Value.Text.ShouldBe(document.Text, path);
            }
        }
    }
}
