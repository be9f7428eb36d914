using System.Collections.Immutable;
using FsCheck.Xunit;
using Hypocaust.Building;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Building;

public sealed class LayeredElementTests
{
    [Theory]
    [InlineData("wall-1")]
    [InlineData("roof-1")]
    [InlineData("floor-over-crawl-1")]
    public void Create_UniformLayers_AgreesWithTheWorkedCase(string name)
    {
        var given = ReferenceLayers.Case(name);
        var element = LayeredElement
            .Create(
                name,
                ReferenceLayers.Of(given.Inputs["layers"]),
                given.Input("R_si"),
                given.Input("R_se")
            )
            .Value;
        given.ShouldGive("R_total", element.ResistanceM2KPerW);
        given.ShouldGive("U", element.UWPerM2K);
        element.RatioOfBounds.ShouldBe(1, 1e-12);
    }

    [Theory]
    [InlineData("studs-1", false)]
    [InlineData("rafters-1", false)]
    [InlineData("steel-studs-warning", true)]
    public void Create_BridgedLayer_AgreesWithTheCombinedMethod(string name, bool outOfScope)
    {
        var given = ReferenceLayers.Case(name);
        var mixed = Layer.Bridged(
            "mixed",
            given.Input("mixed_thickness"),
            given.Input("main_conductivity"),
            given.Input("bridge_conductivity"),
            given.Input("bridge_fraction")
        );
        var layers = ReferenceLayers.Of(given.Inputs["continuous_layers"]).Insert(1, mixed);
        var element = LayeredElement
            .Create(name, layers, given.Input("R_si"), given.Input("R_se"))
            .Value;
        given.ShouldGive("R_upper", element.UpperBoundM2KPerW);
        given.ShouldGive("R_lower", element.LowerBoundM2KPerW);
        given.ShouldGive("R_total", element.ResistanceM2KPerW);
        given.ShouldGive("U", element.UWPerM2K);
        (element.Caution is not null).ShouldBe(outOfScope);
    }

    [Fact]
    public void InsideM2KPerW_EachDirection_IsThatOfIso6946()
    {
        foreach (var row in ReferenceCsv.Table("surface_resistances.csv"))
        {
            var direction = Enum.Parse<HeatFlow>(row["heat_flow"], ignoreCase: true);
            SurfaceResistance.InsideM2KPerW(direction).ShouldBe(row.Number("R_si"));
            SurfaceResistance.OutsideM2KPerW.ShouldBe(row.Number("R_se"));
            LayeredElement
                .Create("any", direction, [Layer.Of("a", 0.1, 0.1)])
                .Value.ResistanceM2KPerW.ShouldBe(
                    row.Number("R_si") + 1 + row.Number("R_se"),
                    1e-12
                );
        }
    }

    // US R-value 1 h·ft²·°F/Btu in m²·K/W from heat_loss.csv; the design's units are the edge's business, the U of it ours
    [Theory]
    [InlineData("US-R-13")]
    [InlineData("US-R-21")]
    [InlineData("US-R-30")]
    [InlineData("US-R-49")]
    public void Create_LayerGivenByResistance_HasItsReciprocalAsU(string name)
    {
        var given = ReferenceLayers.Case(name);
        var layer = new Layer("batt", given.Expected["R_SI"].Number);
        given.ShouldGive(
            "U_of_that_alone",
            LayeredElement.Create(name, [layer], 0, 0).Value.UWPerM2K
        );
    }

    [Property(Replay = "(31,7)", MaxTest = 200)]
    public void More_insulation_never_loses_more(byte thickness, byte more, byte fraction)
    {
        LayeredElement Wall(double thicknessM) =>
            LayeredElement
                .Create(
                    "wall",
                    HeatFlow.Horizontal,
                    [
                        Layer.Of("board", 0.0125, 0.25),
                        Layer.Bridged("studs", thicknessM, 0.037, 0.13, fraction / 255.0),
                    ]
                )
                .Value;
        var thin = Wall(0.01 + thickness * 0.001);
        var thick = Wall(0.01 + (thickness + more) * 0.001);
        thick.UWPerM2K.ShouldBeLessThanOrEqualTo(thin.UWPerM2K);
        thin.UpperBoundM2KPerW.ShouldBeGreaterThanOrEqualTo(thin.LowerBoundM2KPerW * (1 - 1e-12));
    }

    [Fact]
    public void Two_crossing_bridges_count_every_way_through()
    {
        // by hand: four ways with areas 0.72, 0.18, 0.08, 0.02 and resistances 1+4, 1+1, 0.5+4, 0.5+1
        var element = LayeredElement
            .Create(
                "crossed",
                [
                    new Layer("a", 1) { Bridge = new(0.1, 0.5) },
                    new Layer("b", 4) { Bridge = new(0.2, 1) },
                ],
                0,
                0
            )
            .Value;
        var conductance = 0.72 / 5 + 0.18 / 2 + 0.08 / 4.5 + 0.02 / 1.5;
        element.UpperBoundM2KPerW.ShouldBe(1 / conductance, 1e-12);
        element.LowerBoundM2KPerW.ShouldBe(
            1 / (0.9 / 1 + 0.1 / 0.5) + 1 / (0.8 / 4 + 0.2 / 1),
            1e-12
        );
    }

    [Fact]
    public void Create_BadLayers_ReportsEveryProblem()
    {
        ImmutableArray<Layer> layers =
        [
            Layer.Of("nothing", 0, 0.1),
            Layer.Bridged("odd", 0.1, 0.04, double.NaN, 1.5),
        ];
        LayeredElement
            .Create("wall", layers, -1, 0.04)
            .Problems.Select(problem => problem.Place)
            .ShouldBe(["wall.insideSurface", "wall.nothing", "wall.odd.bridge", "wall.odd.bridge"]);
        LayeredElement.Create("wall", HeatFlow.Upward, []).Succeeded.ShouldBeFalse();
    }
}
