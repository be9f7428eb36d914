using System.Xml.Linq;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Papers.Floor;
using Hypocaust.Papers.Pressure;
using Hypocaust.Papers.Pumps;
using Hypocaust.Papers.Space;
using Hypocaust.Papers.Tests.Plants;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Tests;

public sealed class DiagramTests
{
    public static TheoryData<SheetShape, UnitSystem> Sheets() =>
        [
            .. Enum.GetValues<SheetShape>()
                .SelectMany(shape => Enum.GetValues<UnitSystem>().Select(units => (shape, units))),
        ];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Words_of_the_diagrams_keep_clear_of_one_another(SheetShape shape, UnitSystem units)
    {
        var design = SamplePlants.Of("primary and secondary");
        foreach (var sheet in All(design, SampleAnswers.Of(design), units, shape))
        {
            Colliding(sheet).ShouldBeEmpty(sheet.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void An_unanswered_design_gives_readable_sheets_without_figures(
        SheetShape shape,
        UnitSystem units
    )
    {
        foreach (var name in SamplePlants.Names)
        {
            var design = SamplePlants.Of(name);
            foreach (var sheet in All(design, SampleAnswers.None(design), units, shape))
            {
                XDocument
                    .Parse(sheet.ToSvg(SvgForm.StandAlone))
                    .Root!.Name.LocalName.ShouldBe("svg");
                Colliding(sheet).ShouldBeEmpty(sheet.Name);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_new_design_as_solved_is_drawn_clear(SheetShape shape, UnitSystem units)
    {
        var design = DesignFile.Read(DesignFile.New("fresh")).Value.Design;
        foreach (var sheet in All(design, Study.Solve(design), units, shape))
        {
            Colliding(sheet).ShouldBeEmpty(sheet.Name);
        }
    }

    [Theory]
    [InlineData(SheetShape.Wide)]
    [InlineData(SheetShape.Narrow)]
    public void The_examples_as_solved_are_drawn_clear(SheetShape shape)
    {
        foreach (var design in Examples.All)
        {
            foreach (var sheet in All(design, Study.Solve(design), design.Units, shape))
            {
                Colliding(sheet).ShouldBeEmpty($"{design.Name}, {sheet.Name}");
            }
        }
    }

    [Fact]
    public void Arrow_groups_of_the_section_add_up_to_the_loss_of_the_building()
    {
        // by hand: 1250 + 800 walls, 1180 roof, 760 windows, 170 door, 900 ground, 1040 air, of 6100 W
        var design = SamplePlants.Of("direct");
        var losses = GroupLoss.Of(SampleAnswers.Of(design).Space!);
        losses.Single(one => one.Group == LossGroup.Walls).LossW.ShouldBe(2050);
        losses.Sum(one => one.LossW).ShouldBe(6100);
    }

    [Fact]
    public void Arrow_width_is_proportional_to_the_loss()
    {
        var design = SamplePlants.Of("direct");
        var sheet = SpaceSection.Draw(design, SampleAnswers.Of(design), UnitSystem.Si);
        double Thick(string id) =>
            Overlaps
                .Groups(sheet.Marks)
                .Single(group => group.Id == id)
                .Marks.OfType<Stroke>()
                .Single()
                .Points
                is var points
                ? Math.Max(Math.Abs(points[0].X - points[6].X), Math.Abs(points[0].Y - points[6].Y))
                : 0;
        (Thick("loss-walls") / Thick("loss-ground")).ShouldBe(2050.0 / 900, 1e-9);
        (Thick("loss-roof") / Thick("loss-doors")).ShouldBe(1180.0 / 170, 1e-9);
    }

    [Theory]
    // Newton's law of cooling along a tube: the excess over the room halves in equal lengths (20 → 10 K over the whole, so 14.142 K half way)
    [InlineData(38, 28, 18, 0.5, 32.142135623730951)]
    [InlineData(38, 28, 18, 0, 38)]
    [InlineData(38, 28, 18, 1, 28)]
    // no excess over the room: a straight line
    [InlineData(16, 17, 18, 0.5, 16.5)]
    public void Water_cools_exponentially_along_a_loop(
        double supply,
        double back,
        double room,
        double share,
        double expected
    ) => LoopBars.AlongC(supply, back, room, share).ShouldBe(expected, 1e-9);

    [Fact]
    public void Pump_curve_takes_its_flow_in_cubic_metres_per_hour() =>
        // 4 − 0.3·2 − 0.5·2² = 1.4 m at 2 m³/h
        PumpCurve.HeadM([4, -0.3, -0.5], 2.0 / 3600).ShouldBe(1.4, 1e-12);

    [Fact]
    public void Pump_that_stands_still_is_said_to()
    {
        var design = SamplePlants.Of("direct");
        var answer = SampleAnswers.Of(design);
        var plant = answer.Plant!;
        var off = answer with
        {
            Plant = plant with { Circulators = [plant.Circulators[0] with { Running = false }] },
        };
        var sheet = PumpCurve.DrawAll(design, off, UnitSystem.Si).ShouldHaveSingleItem();
        Overlaps.Labels(sheet.Marks).ShouldContain(label => label.Words.Contains("switched off"));
    }

    [Fact]
    public void Pressure_line_follows_the_flow_and_marks_the_vessel_once()
    {
        var design = SamplePlants.Of("primary and secondary");
        var sheet = PressureLine.Draw(design, SampleAnswers.Of(design), UnitSystem.Si);
        var words = Overlaps.Labels(sheet.Marks).Select(label => label.Words).ToList();
        words.IndexOf("boiler").ShouldBeLessThan(words.IndexOf("circulator A"));
        words.IndexOf("circulator A").ShouldBeLessThan(words.IndexOf("strainer"));
        words.ShouldContain("kiln side");
        sheet.Marks.OfType<Ellipse>().Count(mark => mark.Style == "heat").ShouldBe(2);
    }

    [Fact]
    public void A_file_of_its_own_needs_no_custom_properties()
    {
        var design = SamplePlants.Of("direct");
        foreach (var sheet in All(design, SampleAnswers.Of(design), UnitSystem.Si, SheetShape.Wide))
        {
            sheet.ToSvg(SvgForm.StandAlone).ShouldNotContain("var(");
            sheet.ToSvg().ShouldNotContain("<style");
        }
    }

    [Fact]
    public void Temperature_colours_are_the_published_stops()
    {
        // F. Crameri, Scientific colour maps, batlow as decimal fractions: its start, eighths and end
        (double Share, double R, double G, double B)[] published =
        [
            (0, 0.005193, 0.098238, 0.349842),
            (0.125, 0.066899, 0.263188, 0.377594),
            (0.25, 0.133298, 0.375282, 0.379395),
            (0.375, 0.302379, 0.450282, 0.300122),
            (0.5, 0.511253, 0.510898, 0.193296),
            (0.625, 0.754268, 0.565033, 0.211761),
            (0.75, 0.946612, 0.614218, 0.419767),
            (0.875, 0.992900, 0.704852, 0.704114),
            (1, 0.981354, 0.800406, 0.981267),
        ];
        foreach (var (share, r, g, b) in published)
        {
            new TemperatureScale(0, 80)
                .Colour(80 * share)
                .ShouldBe(
                    $"#{(int)Math.Round(r * 255):x2}{(int)Math.Round(g * 255):x2}{(int)Math.Round(b * 255):x2}"
                );
        }
    }

    private static IEnumerable<Sheet> All(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        SheetShape shape
    ) =>
        [
            PressureLine.Draw(design, answer, units, shape, "25 Nov"),
            .. PumpCurve.DrawAll(design, answer, units, shape, "25 Nov"),
            SpaceSection.Draw(design, answer, units, shape, "25 Nov"),
            FloorSection.Draw(design, answer, units, null, shape, "25 Nov"),
            LoopBars.Draw(design, answer, units, shape, "25 Nov"),
        ];

    // Words of a diagram all have the same owner, so they are compared one by one
    private static IEnumerable<string> Colliding(Sheet sheet)
    {
        var labels = Overlaps.Labels(sheet.Marks).Where(label => label.Words.Length > 0).ToList();
        for (var i = 0; i < labels.Count; i++)
        {
            var room = labels[i].Bounds.Grown(-0.5);
            if (
                room.Left < 0
                || room.Right > sheet.Width
                || room.Bottom > sheet.Height
                || room.Top < 0
            )
            {
                yield return $"'{labels[i].Words}' leaves the sheet";
            }

            foreach (
                var other in labels
                    .Skip(i + 1)
                    .Where(other => other.Bounds.Grown(-0.5).Overlaps(room))
            )
            {
                yield return $"'{labels[i].Words}' meets '{other.Words}'";
            }
        }
    }
}
