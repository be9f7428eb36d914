using Hypocaust.Design;
using Hypocaust.Fluids;

namespace Hypocaust.Tests.Design;

public sealed class DesignFileTests
{
    [Fact]
    public void New_gives_a_design_that_reads_without_problems()
    {
        var document = TestDesigns.Read(DesignFile.New("Test \"house\" №1"));
        document.Design.Name.ShouldBe("Test \"house\" №1");
    }

    [Fact]
    public void A_design_with_every_section_reads()
    {
        var design = TestDesigns.Read(TestDesigns.Workshop).Design;
        design.Building.Zones.Names.ShouldBe(["shop", "office"]);
        design.Floor!.Loops.Length.ShouldBe(3);
        design.Plant!.Fluid.Kind.ShouldBe(FluidKind.PropyleneGlycol);
        design
            .Parts["used pump"]
            .ShouldBeOfType<CirculatorPart>()
            .Speeds[0]
            .Curve.Length.ShouldBe(3);
        design.Board!["odd"]!.AsArray().Count.ShouldBe(4);
    }

    [Fact]
    public void Values_are_in_si_by_exact_definitions_of_the_units()
    {
        var design = TestDesigns.Read(TestDesigns.Workshop).Design;
        // international foot and inch, degree Fahrenheit: by definition
        design.Site.DesignOutdoor.Si.ShouldBe(-20, 1e-12);
        design.Floor!.Loops[0].Spacing.Si.ShouldBe(0.3048, 1e-15);
        design
            .Building.Constructions["stud wall"]
            .Layers[1]
            .Thickness!.Value.Si.ShouldBe(0.1397, 1e-15);
    }

    [Fact]
    public void A_value_left_out_is_its_default_and_marked_as_assumed()
    {
        var design = TestDesigns.Read(TestDesigns.Workshop).Design;
        design.Plant!.FillTemperature.ShouldSatisfyAllConditions(
            value => value.Si.ShouldBe(10),
            value => value.IsAssumed.ShouldBeTrue()
        );
        design.Plant.ColdFill.IsAssumed.ShouldBeFalse();
        design.Floor!.Sections["slab"].BelowTemperature.ShouldBeNull();
        design.Building.Zones["office"].Elements.Count.ShouldBe(0);
    }

    [Fact]
    public void A_range_keeps_its_ends()
    {
        var conductivity = TestDesigns
            .Read(TestDesigns.Workshop)
            .Design.Floor!.Sections["slab"]
            .SlabConductivity;
        conductivity.Range!.Value.LowSi.ShouldBe(1.2);
        conductivity.Range!.Value.HighSi.ShouldBe(1.6);
        conductivity.Si.ShouldBe(1.4, 1e-12);
    }

    [Fact]
    public void Round_trip_keeps_the_text_to_the_byte()
    {
        var text = "\ufeff" + TestDesigns.Workshop.Replace("\n", "\r\n", StringComparison.Ordinal);
        var document = TestDesigns.Read(text);
        document.Text.ShouldBe(text);
        document.Bytes.ToArray().ShouldBe(System.Text.Encoding.UTF8.GetBytes(text));
    }

    [Fact]
    public void Places_give_line_and_column_of_values()
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        document
            .Places["$.floor.loops[2].spacing"]
            .ShouldBe(TestDesigns.PositionOf(TestDesigns.Workshop, "\"9 in\""));
        document
            .Places["$.parts['my tube'].inner"]
            .ShouldBe(TestDesigns.PositionOf(TestDesigns.Workshop, "\"0.475 in\""));
        document.Written("$.plant.items.pump2.speed").ShouldBe("2");
        document.Written("$.plant.items.pump2.shut").ShouldBeNull();
    }

    [Fact]
    public void A_part_on_the_shelf_comes_before_the_built_in_one_of_the_same_name()
    {
        var design = TestDesigns
            .Read(
                TestDesigns.With(
                    "\"my tube\": { \"kind\"",
                    "\"tee\": { \"kind\": \"tee\", \"maxPressure\": \"7 bar\" }, \"my tube\": { \"kind\""
                )
            )
            .Design;
        new PartLookup(design).OfItem("branch")!.MaxPressure!.Value.Si.ShouldBe(700_000, 1e-6);
    }
}
