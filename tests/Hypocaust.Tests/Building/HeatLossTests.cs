using System.Collections.Immutable;
using FsCheck.Xunit;
using Hypocaust.Building;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Building;

public sealed class HeatLossTests
{
    [Fact]
    public void Calculate_WorkedBuilding_AgreesInEveryPart()
    {
        var given = ReferenceLayers.Case("building-1");
        var loss = HeatLoss.Calculate(Input(given)).Value;
        var difference = given.Input("inside") - given.Input("outside");
        var parts = loss.Zones.Single().Elements;
        given.ShouldGive("H_envelope", Outside(parts).Sum(part => part.PlaneLossW) / difference);
        given.ShouldGive("H_bridges", Outside(parts).Sum(part => part.ThermalBridgeW) / difference);
        given.ShouldGive("H_ground", loss.GroundW / difference);
        given.ShouldGive("H_ventilation", loss.VentilationW / difference);
        given.ShouldGive("design_loss", loss.TotalW);
    }

    [Theory]
    [InlineData("air-1")]
    [InlineData("air-2")]
    [InlineData("air-3")]
    public void Calculate_AirChange_AgreesWithTheUsualFigures(string name)
    {
        var given = ReferenceLayers.Case(name);
        foreach (var (fixedWh, expected) in new[] { (0.34, "H_with_0.34"), (0.33, "H_with_0.33") })
        {
            var zone = Room() with
            {
                VolumeM3 = given.Input("volume"),
                AirChangesPerHour = given.Input("air_change"),
            };
            var loss = HeatLoss
                .Calculate(Of(zone) with { FixedAirHeatCapacityWhPerM3K = fixedWh })
                .Value;
            given.ShouldGive(expected, loss.Zones[0].Ventilation.CoefficientWPerK);
        }
    }

    // ASHRAE standard atmosphere, heat_loss.csv: 0.27738 Wh/(m³·K) at 1600 m and 20 °C against 0.33649 at sea level
    [Fact]
    public void Calculate_HighSite_LosesLessByAir()
    {
        var high = HeatLoss.Calculate(Of(Room()) with { AltitudeM = 1600 }).Value;
        high.Zones[0].Ventilation.AirHeatCapacityWhPerM3K.ShouldBe(0.2773758324, 1e-6);
        var low = HeatLoss.Calculate(Of(Room())).Value;
        low.Zones[0].Ventilation.AirHeatCapacityWhPerM3K.ShouldBe(0.3364935519, 1e-6);
    }

    [Fact]
    public void Calculate_HeatedFloor_LeavesItsOwnLossToTheFloor()
    {
        var floor = new EnvelopeElement("slab", 50, 0.3, new Boundary.Ground())
        {
            IsHeatedFloor = true,
        };
        var wall = new EnvelopeElement("wall", 40, 0.25, new Boundary.Outside());
        var zone = HeatLoss.Calculate(Of(Room(floor, wall))).Value.Zones[0];
        // by hand: 50 m² × 0.3 × (20 − 8) K × 1.45
        zone.HeatedFloorOwnLossW.ShouldBe(261, 1e-9);
        zone.WithoutHeatedFloorW.ShouldBe(zone.TotalW - 261, 1e-9);
        zone.WithoutHeatedFloorWPerM2.ShouldBe(zone.WithoutHeatedFloorW / 50, 1e-12);
    }

    [Fact]
    public void Calculate_HeatedFloorOverAnotherZone_IsNotTakenOffTwice()
    {
        var floor = new EnvelopeElement("floor", 50, 0.4, new Boundary.OtherZone("store"))
        {
            IsHeatedFloor = true,
        };
        var wall = new EnvelopeElement("wall", 40, 0.25, new Boundary.Outside());
        var store = Room() with { Name = "store", IndoorTemperatureC = 10 };
        var loss = HeatLoss.Calculate(Of(Room(floor, wall), store)).Value;
        // by hand: wall 40 × (0.25 + 0.05) × 40 K; the air of both rooms beside it
        loss.TotalW.ShouldBe(480 + loss.VentilationW, 1e-9);
        loss.WithoutHeatedFloorsW.ShouldBe(480 + loss.VentilationW, 1e-9);
        loss.Zones[0].WithoutHeatedFloorW.ShouldBe(480 + loss.Zones[0].Ventilation.HeatLossW, 1e-9);
    }

    [Fact]
    public void Calculate_Neighbours_CancelInTheBuilding()
    {
        var warm = Room(new EnvelopeElement("door side", 12, 2, new Boundary.OtherZone("store")));
        var cool = Room(
            new EnvelopeElement("door side", 12, 2, new Boundary.OtherZone("room"))
        ) with
        {
            Name = "store",
            IndoorTemperatureC = 10,
        };
        var loss = HeatLoss.Calculate(Of(warm, cool)).Value;
        loss.Zones[0].ToOtherZonesW.ShouldBe(240, 1e-9);
        loss.Zones[1].ToOtherZonesW.ShouldBe(-240, 1e-9);
        loss.TotalW.ShouldBe(loss.VentilationW, 1e-9);
    }

    [Fact]
    public void Calculate_UnheatedSpace_GivenEitherWay_IsTheSame()
    {
        // b_u = 0.5 of 20 − (−20) K is a space at 0 °C
        var known = new EnvelopeElement("to cellar", 30, 0.5, new Boundary.UnheatedAt(0));
        var guessed = known with { Boundary = new Boundary.UnheatedByFactor(0.5) };
        var loss = HeatLoss.Calculate(Of(Room(known, guessed))).Value.Zones[0].Elements;
        loss[0].HeatLossW.ShouldBe(30 * (0.5 + 0.05) * 20, 1e-9);
        loss[1].HeatLossW.ShouldBe(loss[0].HeatLossW, 1e-9);
    }

    [Fact]
    public void Calculate_HeatRecovery_CountsOnlyWhatIsNotRecovered()
    {
        var zone = Room() with
        {
            AirChangesPerHour = 0.2,
            SupplyAirM3PerH = 100,
            HeatRecoveryFraction = 0.75,
        };
        HeatLoss
            .Calculate(Of(zone))
            .Value.Zones[0]
            .Ventilation.AirFlowM3PerH.ShouldBe(0.2 * 125 + 25, 1e-12);
    }

    [Property(Replay = "(19,3)", MaxTest = 200)]
    public void Loss_is_linear_in_temperature_difference_and_in_area(byte area, byte difference)
    {
        var (areaM2, kelvin) = (1.0 + area, 1.0 + difference % 35);
        double Loss(double m2, double deltaK) =>
            HeatLoss
                .Calculate(
                    Of(Room(new EnvelopeElement("wall", m2, 0.3, new Boundary.Outside()))) with
                    {
                        OutdoorDesignC = 20 - deltaK,
                    }
                )
                .Value.EnvelopeW;
        Loss(3 * areaM2, kelvin).ShouldBe(3 * Loss(areaM2, kelvin), 1e-9);
        Loss(areaM2, 2 * kelvin).ShouldBe(2 * Loss(areaM2, kelvin), 1e-9);
    }

    [Property(Replay = "(23,29)", MaxTest = 200)]
    public void The_parts_add_up(byte walls, byte ground, byte air)
    {
        var input = Of(
            Room(
                new EnvelopeElement("wall", 1 + walls, 0.31, new Boundary.Outside()),
                new EnvelopeElement("cellar", 3.3, 0.7, new Boundary.UnheatedByFactor(0.43)),
                new EnvelopeElement("slab", 1 + ground, 0.27, new Boundary.Ground())
            ) with
            {
                AirChangesPerHour = air / 100.0,
            }
        );
        var loss = HeatLoss.Calculate(input).Value;
        (loss.EnvelopeW + loss.GroundW + loss.VentilationW).ShouldBe(
            loss.TotalW,
            1e-12 * loss.TotalW
        );
    }

    [Fact]
    public void Calculate_BadBuilding_ReportsEveryProblem()
    {
        var zone = Room(
            new EnvelopeElement("wall", 0, double.NaN, new Boundary.Outside()),
            new EnvelopeElement("door", 2, 1, new Boundary.OtherZone("nowhere")),
            new EnvelopeElement("itself", 2, 1, new Boundary.OtherZone("room"))
        );
        var problems = HeatLoss
            .Calculate(Of(zone, zone) with { OutdoorDesignC = -90, AltitudeM = double.NaN })
            .Problems;
        problems
            .Select(problem => problem.Place)
            .ShouldBe([
                "outdoorDesign",
                "altitude",
                "room",
                .. Twice("room.wall.area", "room.wall.u", "room.door", "room.itself"),
            ]);
        problems[0]
            .ToString()
            .ShouldBe(
                "outdoorDesign: the value -90 °C is outside what this method covers; give a figure from -60 to 25 °C"
            );
        HeatLoss.Calculate(Of()).Problems.Single().Code.ShouldBe("building-no-zones");
    }

    private static IEnumerable<string> Twice(params string[] places) => [.. places, .. places];

    private static IEnumerable<ElementLoss> Outside(ImmutableArray<ElementLoss> parts) =>
        parts.Where(part => part.Element.Boundary is Boundary.Outside);

    private static Zone Room(params ImmutableArray<EnvelopeElement> elements) =>
        new("room", 20, 50, 125, 0.5, elements);

    private static HeatLossInput Of(params ImmutableArray<Zone> zones) => new(zones, -20, 8);

    private static HeatLossInput Input(ReferenceCsv.Case given)
    {
        var elements = given
            .Inputs["elements"]
            .Split(';')
            .Select(part => part.Split(':'))
            .Select(part => new EnvelopeElement(
                part[0],
                ReferenceLayers.Number(part[1]),
                ReferenceLayers.Number(part[2]),
                new Boundary.Outside()
            ));
        var ground = new EnvelopeElement(
            "ground",
            given.Input("ground_area"),
            given.Input("ground_U"),
            new Boundary.Ground()
        );
        var zone = new Zone(
            "house",
            given.Input("inside"),
            given.Input("ground_area"),
            given.Input("volume"),
            given.Input("air_change"),
            [.. elements, ground]
        );
        return new([zone], given.Input("outside"), given.Input("annual_mean_outside"))
        {
            ThermalBridgeSupplementWPerM2K = given.Input("thermal_bridge_supplement"),
            GroundSwingFactor = given.Input("f_g1"),
            FixedAirHeatCapacityWhPerM3K = given.Input("rho_cp"),
        };
    }
}
