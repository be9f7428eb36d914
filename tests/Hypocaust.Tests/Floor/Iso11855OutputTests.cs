using Hypocaust.Floor;
using Hypocaust.Floor.Section;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor;

public sealed class Iso11855OutputTests
{
    private static readonly SectionBuildUp Thick = new()
    {
        SpacingM = 0.15,
        Tube = new EmbeddedTube(0.02, 0.002, 0.35),
        Layers = [new SectionLayer(0.2, 2.1)],
        TubeDepthM = 0.1,
        BelowM2KPerW = 0.17,
    };

    // floor_resistance.csv gives R_x of the same form and R_wall
    [Fact]
    public void Resistance_to_the_tube_plane_equals_the_reference_file()
    {
        var cases = ReferenceCsv
            .Cases("floor_resistance.csv")
            .Where(one => one.Expected.ContainsKey("R_wall"))
            .ToList();
        cases.Count.ShouldBeGreaterThan(1);
        foreach (var one in cases)
        {
            var spacing = one.Input("spacing");
            var output = Iso11855Output.Of(
                new SectionBuildUp
                {
                    SpacingM = spacing,
                    Tube = new EmbeddedTube(
                        one.Input("tube_outer_diameter"),
                        one.Input("tube_wall"),
                        one.Input("tube_conductivity")
                    ),
                    // deep enough to be valid, which changes neither R_x nor R_wall
                    Layers = [new SectionLayer(2, one.Input("slab_conductivity"))],
                    TubeDepthM = 1,
                    BelowM2KPerW = 1,
                }
            );
            var expected = one.Expected["R_x_asymptotic"].Number + one.Expected["R_wall"].Number;
            output.ShouldNotBeNull().TubeToPlaneM2KPerW.ShouldBe(expected, 2e-6 * expected);
        }
    }

    // the method says of itself that it is good inside its range; the solution in two dimensions agrees
    [Fact]
    public void Within_its_range_it_is_close_to_the_section()
    {
        var method = Iso11855Output.Of(Thick).ShouldNotBeNull();
        var section = FloorSection2D.Solve(Thick).Value.Response;
        method.UpWPerM2K.ShouldBe(section.UpWPerM2K, 0.01 * section.UpWPerM2K);
        method.DownWPerM2K.ShouldBe(section.DownWPerM2K, 0.01 * section.DownWPerM2K);
    }

    [Fact]
    public void Outside_its_range_it_is_not_given()
    {
        Iso11855Output.Of(Thick with { TubeDepthM = 0.05 }).ShouldBeNull();
        Iso11855Output.Of(Thick with { TubeDepthM = 0.15 }).ShouldBeNull();
        Iso11855Output.Of(Thick with { SpacingM = 0.09 }).ShouldBeNull();
        Iso11855Output.Of(Thick with { BelowM2KPerW = double.PositiveInfinity }).ShouldBeNull();
        Iso11855Output.Of(SectionBuildUp.Of(Floors.Ordinary)).ShouldBeNull();
    }
}
