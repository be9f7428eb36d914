using Hypocaust.Problems;

namespace Hypocaust.Building;

/// <summary>Design heat loss in the form of EN 12831: what keeps each zone at its temperature on the coldest day, without sun, people or appliances.</summary>
/// <source>EN 12831:2003, clauses 7 and 8 (form and default factors, from memory; national annexes may differ)</source>
public static class HeatLoss
{
    private const double SecondsPerHour = 3600;

    /// <summary>Computes the losses of all zones.</summary>
    /// <returns>The losses with what made them, or every problem in the input.</returns>
    public static Result<BuildingLoss> Calculate(HeatLossInput input)
    {
        var problems = input.Check().ToList();
        return problems.Count > 0
            ? Result<BuildingLoss>.Failed(problems)
            : new BuildingLoss(input, [.. input.Zones.Select(zone => Of(zone, input))]);
    }

    private static ZoneLoss Of(Zone zone, HeatLossInput input) =>
        new(
            zone,
            [.. zone.Elements.Select(element => Of(element, zone, input))],
            new(
                zone.EffectiveAirFlowM3PerH,
                input.FixedAirHeatCapacityWhPerM3K
                    ?? DryAir.At(input.AltitudeM, zone.IndoorTemperatureC).Value.HeatCapacityJPerM3K
                        / SecondsPerHour,
                zone.IndoorTemperatureC - input.OutdoorDesignC
            )
        );

    private static ElementLoss Of(EnvelopeElement element, Zone zone, HeatLossInput input)
    {
        var indoorC = zone.IndoorTemperatureC;
        var bridgeWPerM2K = input.ThermalBridgeSupplementWPerM2K;
        return element.Boundary switch
        {
            Boundary.Outside => new(element, indoorC - input.OutdoorDesignC, bridgeWPerM2K, 1),
            Boundary.UnheatedAt unheated => new(
                element,
                indoorC - unheated.TemperatureC,
                bridgeWPerM2K,
                1
            ),
            Boundary.UnheatedByFactor unheated => new(
                element,
                unheated.ReductionFactor * (indoorC - input.OutdoorDesignC),
                bridgeWPerM2K,
                1
            ),
            Boundary.Ground => new(
                element,
                indoorC - input.AnnualMeanOutdoorC,
                0,
                input.GroundSwingFactor * input.GroundWaterFactor
            ),
            Boundary.OtherZone other => new(
                element,
                indoorC - input.Zones.Single(z => z.Name == other.ZoneName).IndoorTemperatureC,
                0,
                1
            ),
            _ => throw new InvalidOperationException($"Unknown boundary {element.Boundary}."),
        };
    }
}
