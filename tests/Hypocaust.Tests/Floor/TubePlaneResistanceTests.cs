using Hypocaust.Floor;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor;

/// <summary>Line-source series against floor_resistance.csv (same series computed elsewhere, and finite elements) and section2d.csv.</summary>
public sealed class TubePlaneResistanceTests
{
    public static TheoryData<string> SeriesCases =>
        [
            .. ReferenceCsv
                .Cases("floor_resistance.csv")
                .Select(found => found.Name)
                .Where(name => name.StartsWith("rx", StringComparison.Ordinal)),
        ];

    [Theory]
    [MemberData(nameof(SeriesCases))]
    public void Resistance_and_heat_agree_with_series_and_finite_elements(string name)
    {
        var found = ReferenceCsv.Cases("floor_resistance.csv").Single(item => item.Name == name);
        var slab = new TubeRowSlab(
            found.Input("spacing"),
            found.Input("slab_conductivity"),
            found.Input("tube_outer_diameter"),
            found.Input("tube_depth"),
            found.Input("slab_thickness"),
            found.Input("alpha_top"),
            found.Input("alpha_bottom")
        );
        var tube = new EmbeddedTube(
            slab.TubeOuterDiameterM,
            found.Input("tube_wall"),
            found.Input("tube_conductivity")
        );
        var plane = TubePlaneResistance.Of(slab).Value;
        var wall = slab.SpacingM * tube.WallResistanceMKPerW;
        var heat = found.Input("fluid_minus_room") * Conductance(slab, wall, plane).Total;
        var ours = new Dictionary<string, double>
        {
            ["R_x_series"] = plane.ResistanceM2KPerW,
            ["R_x_asymptotic"] = plane.DeepTubeM2KPerW,
            ["R_wall"] = wall,
            ["q_total_series"] = heat,
            ["q_total_finite_element"] = heat,
        };
        foreach (var (quantity, expected) in found.Expected)
        {
            ours[quantity].ShouldBe(expected.Number, expected.Absolute, $"{name} {quantity}");
        }
    }

    [Theory]
    [InlineData("slab-bare-150")]
    [InlineData("slab-bare-300")]
    [InlineData("slab-deep-225")]
    [InlineData("slab-shallow-200")]
    [InlineData("copper-tube-slab-200")]
    [InlineData("film-slab-200")]
    public void Heat_up_and_down_agree_with_the_section_in_two_dimensions(string name)
    {
        // section2d.csv, converged to 1e-4. The slab is one material; insulation below acts as a plain resistance.
        // 0.5 % on the heat up is the file's own tolerance for a two-dimensional solver.
        var row = ReferenceCsv.Table("section2d.csv").Single(item => item["case"] == name);
        var section = Section2D.Read(row);
        var slab = section.Slab();
        var plane = TubePlaneResistance.Of(slab).Value;
        var (up, down, node) = Conductances(slab, section.TubeResistance(), plane);
        var (water, room, below) = (
            row.Number("fluid_C"),
            row.Number("room_C"),
            row.Number("below_C")
        );
        var planeC = (node * water + up * room + down * below) / (node + up + down);
        (up * (planeC - room)).ShouldBe(row.Number("q_up_W_m2"), 0.005 * row.Number("q_up_W_m2"));
        (down * (planeC - below)).ShouldBe(
            row.Number("q_down_W_m2"),
            0.005 * row.Number("q_up_W_m2")
        );
    }

    [Fact]
    public void Of_a_tube_outside_the_slab_gives_a_problem()
    {
        var slab = new TubeRowSlab(0.15, 1.8, 0.016, 0.007, 0.1, 10.8, 0);
        TubePlaneResistance.Of(slab).Problems.Single().Code.ShouldBe("floor-tube-not-inside");
        TubePlaneResistance.Of(slab with { TubeDepthM = double.NaN }).Succeeded.ShouldBeFalse();
        TubePlaneResistance
            .Of(slab with { TubeDepthM = 1e-6, TubeOuterDiameterM = 1e-6 })
            .Problems.Single()
            .Code.ShouldBe("floor-tube-too-close");
    }

    private static (double Total, double Up) Conductance(
        TubeRowSlab slab,
        double wall,
        TubePlaneResistance plane
    )
    {
        var (up, down, node) = Conductances(slab, wall, plane);
        var total = 1 / (1 / node + 1 / (up + down));
        return (total, total * up / (up + down));
    }

    private static (double Up, double Down, double Node) Conductances(
        TubeRowSlab slab,
        double tubeResistance,
        TubePlaneResistance plane
    )
    {
        var below = slab.ThicknessM - slab.TubeDepthM;
        return (
            1 / (slab.TubeDepthM / slab.ConductivityWPerMK + 1 / slab.TopCoefficientWPerM2K),
            1 / (below / slab.ConductivityWPerMK + 1 / slab.BottomCoefficientWPerM2K),
            1 / (tubeResistance + plane.ResistanceM2KPerW)
        );
    }
}
