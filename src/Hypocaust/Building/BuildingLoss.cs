using System.Collections.Immutable;

namespace Hypocaust.Building;

/// <summary>The design heat loss of a building, with all that it was made from.</summary>
/// <param name="Input">What was asked.</param>
/// <param name="Zones">One for each zone, in order.</param>
public sealed record BuildingLoss(HeatLossInput Input, ImmutableArray<ZoneLoss> Zones)
{
    /// <summary>Conventional design loss of the building, W: all zones, without what they pass to one another.</summary>
    public double TotalW => Zones.Sum(zone => zone.TotalW - zone.ToOtherZonesW);

    /// <summary>What the rooms need while the heated floors keep themselves warm, W; likewise without exchange between zones.</summary>
    public double WithoutHeatedFloorsW =>
        Zones.Sum(zone =>
            zone.WithoutHeatedFloorW - zone.ToOtherZonesW + zone.HeatedFloorToOtherZonesW
        );

    /// <summary>Through elements to outdoors and unheated spaces, thermal bridges included, W.</summary>
    public double EnvelopeW => Zones.Sum(zone => zone.EnvelopeW);

    /// <summary>To the ground, W.</summary>
    public double GroundW => Zones.Sum(zone => zone.GroundW);

    /// <summary>To heat outdoor air, W.</summary>
    public double VentilationW => Zones.Sum(zone => zone.Ventilation.HeatLossW);
}

/// <summary>The design heat loss of one zone.</summary>
/// <param name="Zone">What was asked.</param>
/// <param name="Elements">One for each element, in order.</param>
/// <param name="Ventilation">To heat outdoor air.</param>
public sealed record ZoneLoss(
    Zone Zone,
    ImmutableArray<ElementLoss> Elements,
    VentilationLoss Ventilation
)
{
    /// <summary>Conventional design loss, W: all elements and the air.</summary>
    public double TotalW => Elements.Sum(element => element.HeatLossW) + Ventilation.HeatLossW;

    /// <summary>What the elements marked as heated floor would lose if the room's air warmed them, W.</summary>
    public double HeatedFloorOwnLossW =>
        Elements.Where(part => part.Element.IsHeatedFloor).Sum(part => part.HeatLossW);

    /// <summary>What the heated floor must give to the room from its surface, W: the total without the floor's own loss downwards, which the floor's computation adds from its warmer tubes.</summary>
    public double WithoutHeatedFloorW => TotalW - HeatedFloorOwnLossW;

    /// <summary>The same per floor area, W/m²: the heat flux to ask of the floor if it is heated all over.</summary>
    public double WithoutHeatedFloorWPerM2 => WithoutHeatedFloorW / Zone.FloorAreaM2;

    /// <summary>To outdoors and unheated spaces, thermal bridges included, W.</summary>
    public double EnvelopeW =>
        Sum(boundary => boundary is not (Boundary.Ground or Boundary.OtherZone));

    /// <summary>To the ground, W.</summary>
    public double GroundW => Sum(boundary => boundary is Boundary.Ground);

    /// <summary>To other zones, W; negative when they warm this one.</summary>
    public double ToOtherZonesW => Sum(boundary => boundary is Boundary.OtherZone);

    /// <summary>The part of <see cref="ToOtherZonesW"/> through elements marked as heated floor, W.</summary>
    public double HeatedFloorToOtherZonesW =>
        Elements
            .Where(part => part.Element is { IsHeatedFloor: true, Boundary: Boundary.OtherZone })
            .Sum(part => part.HeatLossW);

    private double Sum(Func<Boundary, bool> counts) =>
        Elements.Where(part => counts(part.Element.Boundary)).Sum(part => part.HeatLossW);
}

/// <summary>The loss through one element.</summary>
/// <param name="Element">What was asked.</param>
/// <param name="TemperatureDifferenceK">Across the element on the design day, K (ground: to the annual mean outdoors).</param>
/// <param name="ThermalBridgeSupplementWPerM2K">Added to U for corners and joints, W/(m²·K).</param>
/// <param name="Factor">Multiplies the loss: f_g1·G_w for the ground, otherwise 1.</param>
public sealed record ElementLoss(
    EnvelopeElement Element,
    double TemperatureDifferenceK,
    double ThermalBridgeSupplementWPerM2K,
    double Factor
)
{
    /// <summary>Area × U × temperature difference × factor, W, without thermal bridges.</summary>
    public double PlaneLossW => Element.AreaM2 * Element.UWPerM2K * TemperatureDifferenceK * Factor;

    /// <summary>Through thermal bridges, W.</summary>
    public double ThermalBridgeW =>
        Element.AreaM2 * ThermalBridgeSupplementWPerM2K * TemperatureDifferenceK * Factor;

    /// <summary>Both, W.</summary>
    public double HeatLossW => PlaneLossW + ThermalBridgeW;
}

/// <summary>The loss by outdoor air.</summary>
/// <param name="AirFlowM3PerH">Outdoor air to heat, m³/h.</param>
/// <param name="AirHeatCapacityWhPerM3K">Heat capacity of the air per volume, Wh/(m³·K).</param>
/// <param name="TemperatureDifferenceK">Indoor to outdoor, K.</param>
public sealed record VentilationLoss(
    double AirFlowM3PerH,
    double AirHeatCapacityWhPerM3K,
    double TemperatureDifferenceK
)
{
    /// <summary>Heat loss coefficient, W/K.</summary>
    public double CoefficientWPerK => AirFlowM3PerH * AirHeatCapacityWhPerM3K;

    /// <summary>Heat loss, W.</summary>
    public double HeatLossW => CoefficientWPerK * TemperatureDifferenceK;
}
