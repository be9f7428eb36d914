using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Building;

/// <summary>A building on its coldest day.</summary>
/// <param name="Zones">At least one.</param>
/// <param name="OutdoorDesignC">Outdoor design temperature, °C; −60 to 25.</param>
/// <param name="AnnualMeanOutdoorC">Mean outdoor temperature of the year, °C, for losses to the ground; −30 to 35.</param>
public sealed record HeatLossInput(
    ImmutableArray<Zone> Zones,
    double OutdoorDesignC,
    double AnnualMeanOutdoorC
)
{
    /// <summary>Altitude of the site, m; −500 to 5000. Thin air carries less heat away.</summary>
    public double AltitudeM { get; init; }

    /// <summary>Added to the U of every element towards outdoors and unheated spaces for corners and joints, W/(m²·K); by default 0.05 (careful detailing), 0.10 is usual without proof.</summary>
    public double ThermalBridgeSupplementWPerM2K { get; init; } = 0.05;

    /// <summary>f_g1, for the yearly swing of the ground's temperature; by default 1.45.</summary>
    public double GroundSwingFactor { get; init; } = 1.45;

    /// <summary>G_w, 1 by default; 1.15 where ground water stands less than 1 m under the slab.</summary>
    public double GroundWaterFactor { get; init; } = 1;

    /// <summary>A fixed heat capacity of air instead of that of the altitude and indoor temperature, Wh/(m³·K); EN 12831 uses 0.34.</summary>
    public double? FixedAirHeatCapacityWhPerM3K { get; init; }

    /// <summary>Every problem in this building.</summary>
    internal IEnumerable<Problem> Check()
    {
        if (Zones.IsDefaultOrEmpty)
        {
            return [BuildingProblems.NoZones()];
        }

        Problem?[] found =
        [
            BuildingProblems.Between("outdoorDesign", OutdoorDesignC, -60, 25, "°C"),
            BuildingProblems.Between("annualMeanOutdoor", AnnualMeanOutdoorC, -30, 35, "°C"),
            BuildingProblems.Between("altitude", AltitudeM, -500, 5000, "m"),
            BuildingProblems.NotNegative(
                "thermalBridgeSupplement",
                ThermalBridgeSupplementWPerM2K,
                "W/m²K"
            ),
            BuildingProblems.AboveZero("groundSwingFactor", GroundSwingFactor, ""),
            BuildingProblems.AboveZero("groundWaterFactor", GroundWaterFactor, ""),
            FixedAirHeatCapacityWhPerM3K is { } given
                ? BuildingProblems.AboveZero("airHeatCapacity", given, "Wh/m³K")
                : null,
            .. Zones
                .GroupBy(zone => zone.Name)
                .Where(group => group.Count() > 1)
                .Select(group => BuildingProblems.SameName(group.Key)),
            .. Zones.SelectMany(Check),
        ];
        return found.OfType<Problem>();
    }

    private IEnumerable<Problem?> Check(Zone zone)
    {
        var place = zone.Name;
        yield return BuildingProblems.Between(place, zone.IndoorTemperatureC, -30, 45, "°C");
        yield return BuildingProblems.AboveZero($"{place}.floorArea", zone.FloorAreaM2, "m²");
        yield return BuildingProblems.AboveZero($"{place}.volume", zone.VolumeM3, "m³");
        yield return BuildingProblems.NotNegative(
            $"{place}.airChanges",
            zone.AirChangesPerHour,
            "1/h"
        );
        yield return BuildingProblems.NotNegative(
            $"{place}.supplyAir",
            zone.SupplyAirM3PerH,
            "m³/h"
        );
        yield return BuildingProblems.Fraction($"{place}.heatRecovery", zone.HeatRecoveryFraction);
        foreach (var element in zone.Elements)
        {
            var part = $"{place}.{element.Name}";
            yield return BuildingProblems.AboveZero($"{part}.area", element.AreaM2, "m²");
            yield return BuildingProblems.AboveZero($"{part}.u", element.UWPerM2K, "W/m²K");
            yield return element.Boundary switch
            {
                Boundary.UnheatedAt unheated => BuildingProblems.Between(
                    part,
                    unheated.TemperatureC,
                    -60,
                    45,
                    "°C"
                ),
                Boundary.UnheatedByFactor unheated => BuildingProblems.Fraction(
                    part,
                    unheated.ReductionFactor
                ),
                Boundary.OtherZone other when !HasOther(zone, other.ZoneName) =>
                    BuildingProblems.UnknownZone(part, other.ZoneName),
                _ => null,
            };
        }
    }

    private bool HasOther(Zone zone, string name) =>
        name != zone.Name && Zones.Any(candidate => candidate.Name == name);
}
