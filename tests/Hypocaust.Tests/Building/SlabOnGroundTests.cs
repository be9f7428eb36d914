using FsCheck.Xunit;
using Hypocaust.Building;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Building;

public sealed class SlabOnGroundTests
{
    [Theory]
    [InlineData("ground-1")]
    [InlineData("ground-2")]
    [InlineData("ground-3")]
    [InlineData("ground-4-horizontal-edge")]
    [InlineData("ground-5-vertical-edge")]
    [InlineData("ground-6-well-insulated")]
    public void Create_WorkedCase_AgreesWithIso13370(string name)
    {
        var given = ReferenceLayers.Case(name);
        var slab = SlabOnGround.Create(Input(given)).Value;
        given.ShouldGive("B", slab.CharacteristicDimensionM);
        given.ShouldGive("d_t", slab.EquivalentThicknessM);
        given.ShouldGive("U", slab.CentreUWPerM2K);
        given.ShouldGive("H_ground", slab.HeatLossCoefficientWPerK);
        slab.UWPerM2K.ShouldBe(slab.HeatLossCoefficientWPerK / given.Input("area"), 1e-12);
        slab.IsWellInsulated.ShouldBe(given.Expected["d_t"].Number >= given.Expected["B"].Number);
        if (given.Expected.ContainsKey("psi_edge"))
        {
            given.ShouldGive("psi_edge", slab.EdgeTransmittanceWPerMK);
        }

        if (given.Expected.ContainsKey("U_2d_strip_numeric"))
        {
            // independent: finite volumes over an endless strip; tolerance of the file covers the standard's simplification
            given.ShouldGive("U_2d_strip_numeric", slab.CentreUWPerM2K);
        }
    }

    [Property(Replay = "(5,11)", MaxTest = 200)]
    public void More_insulation_under_or_around_never_loses_more(byte floor, byte more, byte edge)
    {
        SlabOnGround Slab(double floorResistance, double edgeResistance, bool vertical) =>
            SlabOnGround
                .Create(
                    new(60, 32, 0.3, 2, floorResistance)
                    {
                        Edge = new(vertical, 0.8, edgeResistance, 0.05),
                    }
                )
                .Value;
        var (resistance, added) = (floor / 50.0, more / 50.0);
        var edgeResistance = 0.1 + edge / 50.0;
        foreach (var vertical in new[] { false, true })
        {
            var least = Slab(resistance, edgeResistance, vertical);
            Slab(resistance + added, edgeResistance, vertical)
                .HeatLossCoefficientWPerK.ShouldBeLessThanOrEqualTo(
                    least.HeatLossCoefficientWPerK * (1 + WellInsulatedStep)
                );
            Slab(resistance, edgeResistance + added, vertical)
                .HeatLossCoefficientWPerK.ShouldBeLessThanOrEqualTo(least.HeatLossCoefficientWPerK);
            least.EdgeTransmittanceWPerMK.ShouldBeLessThan(0);
        }
    }

    /// <summary>At d_t = B′ the standard's two formulas differ: ln(π+1)·2/(π+1) = 0.6862 against 1/1.457 = 0.6863.</summary>
    private static double WellInsulatedStep =>
        1 / 1.457 / (2 * Math.Log(Math.PI + 1) / (Math.PI + 1)) - 1;

    [Fact]
    public void Create_BadInput_ReportsEveryProblem()
    {
        SlabOnGround.Create(new(0, -1, 0.3, 2, 0)).Problems.Length.ShouldBe(2);
        SlabOnGround
            .Create(new(60, 32, 0.3, 2, 0) { Edge = new(true, 0.6, 0.02, 0.05) })
            .Problems.Single()
            .Code.ShouldBe("building-edge-insulation-useless");
    }

    private static SlabOnGroundInput Input(ReferenceCsv.Case given) =>
        new(
            given.Input("area"),
            given.Input("exposed_perimeter"),
            given.Input("wall_thickness"),
            given.Input("ground_conductivity"),
            given.Input("floor_resistance")
        )
        {
            InsideSurfaceM2KPerW = given.Input("R_si"),
            OutsideSurfaceM2KPerW = given.Input("R_se"),
            Edge = given.Inputs.TryGetValue("edge_insulation", out var kind)
                ? new(
                    kind == "vertical",
                    given.Input("edge_width_or_depth"),
                    given.Input("edge_R"),
                    given.Input("edge_thickness")
                )
                : null,
        };
}
