using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Answers;

/// <summary>What the heated floor gives with the water that the plant sends.</summary>
[Meaning("What the heated floor gives with the water that the plant sends.")]
public sealed record FloorAnswer(
    [property: Meaning("Heat that the heated zones need from the floor, W.")] double NeededW,
    [property: Meaning("Heat that the floor gives upwards, W; null without a plant.")]
        double? OutputW,
    [property: Meaning("Heat that it loses downwards, W; null without a plant.")] double? DownW,
    [property: Meaning(
        "Water sent to the loops, mean of the loops by flow, °C; null without a plant or flow."
    )]
        double? SupplyC,
    [property: Meaning("Water back from the loops, mean by flow, °C.")] double? ReturnC,
    [property: Meaning(
        "Lowest supply temperature with which every zone gets what it needs, °C; at the plant's flows, or without a plant at a fall of 8 K."
    )]
        double? RequiredSupplyC,
    [property: Meaning("Whether every zone gets what it needs; null without a plant.")] bool? Holds,
    [property: Meaning("Heated zones.")] ImmutableArray<FloorZoneAnswer> Zones,
    [property: Meaning("Loops in the order of the design.")] ImmutableArray<LoopAnswer> Loops
);

/// <summary>What the floor gives to one zone.</summary>
[Meaning("What the floor gives to one zone.")]
public sealed record FloorZoneAnswer(
    [property: Meaning("Name of the zone.")] string Name,
    [property: Meaning("Room temperature, °C.")] double IndoorC,
    [property: Meaning("Area with tube, m².")] double HeatedAreaM2,
    [property: Meaning("Heat that the zone needs from the floor, W.")] double NeededW,
    [property: Meaning("Heat that it gets, W.")] double? OutputW,
    [property: Meaning(
        "Lowest supply temperature that is enough, °C; null where no temperature is."
    )]
        double? RequiredSupplyC
);

/// <summary>One loop of tube, as built and as it runs.</summary>
[Meaning("One loop of tube, as built and as it runs.")]
public sealed record LoopAnswer(
    [property: Meaning("Name of the loop.")] string Name,
    [property: Meaning("Zone that it heats.")] string Zone,
    [property: Meaning("Room temperature of that zone, °C.")] double IndoorC,
    [property: Meaning("Area, m².")] double AreaM2,
    [property: Meaning("Tube spacing, m.")] double SpacingM,
    [property: Meaning("Tube between the manifold and its area, m.")] double LeaderM,
    [property: Meaning(
        "Whether its length was measured; else it is area over spacing and the leader."
    )]
        bool LengthIsMeasured,
    [property: Meaning("Tube length, leader included, m.")] double LengthM,
    [property: Meaning("Inner diameter of the tube, m.")] double InnerM,
    [property: Meaning(
        "Heat to the room for a kelvin of the water over the room, K_H of EN 1264-2, in turbulent flow, W/m²K."
    )]
        double TransmissionWPerM2K,
    [property: Meaning("The factors of K_H; null where the tables do not reach.")]
        TransmissionFactors? Factors,
    [property: Meaning("Temperature under the floor, °C.")] double BelowC,
    [property: Meaning(
        "Limit of the mean heat flux by the surface temperature, W/m²; null where the room is no colder than the limit."
    )]
        double? LimitFluxWPerM2,
    [property: Meaning("Warmest permitted surface, °C.")] double SurfaceLimitC,
    [property: Meaning("The table method against 2-D conduction, in words.")] string Accuracy,
    [property: Meaning("The loop in running; null without a plant.")] LoopRunning? Running,
    [property: Meaning(
        "Where the heat comes from: \"EN 1264-2 table\", or \"2-D section\" where the tables do not reach."
    )]
        string Method = LoopAnswer.ByTable,
    [property: Meaning("Where the limit of the heat flux comes from: one of the same two.")]
        string LimitMethod = LoopAnswer.ByTable,
    [property: Meaning(
        "The same floor solved in two dimensions, to compare with; null where it was not."
    )]
        SectionAnswer? Section = null
)
{
    /// <summary>Name of the table method.</summary>
    public const string ByTable = "EN 1264-2 table";

    /// <summary>Name of the solution in two dimensions.</summary>
    public const string BySection = "2-D section";
}

/// <summary>The section of a loop's floor, solved in two dimensions; heat is linear in water, room and below.</summary>
[Meaning("The section of a loop's floor, solved in two dimensions.")]
public sealed record SectionAnswer(
    [property: Meaning(
        "Heat from the water to the room for a kelvin between them, the bore at the water's temperature, W/m²K."
    )]
        double TransmissionWPerM2K,
    [property: Meaning(
        "Heat from the water downwards for a kelvin between water and below, W/m²K."
    )]
        double DownWPerM2K,
    [property: Meaning("Heat from the room downwards past the tubes for a kelvin, W/m²K.")]
        double ThroughWPerM2K,
    [property: Meaning(
        "How far the table's K_H lies above this one, in per cent of it; null where the tables do not reach."
    )]
        double? TableDifferencePercent,
    [property: Meaning("Estimated error of the solution, per cent.")] double ErrorPercent,
    [property: Meaning("Surface above a tube over the room, as a multiple of the mean.")]
        double WarmestShare,
    [property: Meaning("Surface midway between tubes over the room, as a multiple of the mean.")]
        double ColdestShare,
    [property: Meaning(
        "Mean heat flux at which the surface above a tube reaches its limit, W/m²; null where the room is no colder than the limit."
    )]
        double? LimitFluxWPerM2,
    [property: Meaning("Resistance below the slab, the ground included, m²K/W.")]
        double BelowM2KPerW,
    [property: Meaning("Cells of the finer of its two grids.")] int Cells,
    [property: Meaning("Iterations on it.")] int Iterations,
    [property: Meaning(
        "The same heat by the resistance method of ISO 11855-2, W/m²K; null where that is not valid."
    )]
        double? ResistanceMethodWPerM2K = null
);

/// <summary>How a loop runs.</summary>
[Meaning("How a loop runs.")]
public sealed record LoopRunning(
    [property: Meaning("Mass flow, kg/s.")] double FlowKgPerS,
    [property: Meaning("Volume flow, m³/s.")] double FlowM3PerS,
    [property: Meaning("Velocity in the tube, m/s.")] double VelocityMPerS,
    [property: Meaning("Reynolds number in the tube.")] double Reynolds,
    [property: Meaning(
        "Resistance of the water film beyond what the table method counts, mK/W; 0 in turbulent flow."
    )]
        double FilmResistanceMKPerW,
    [property: Meaning("Transmission K_H with that film, W/m²K.")] double TransmissionWPerM2K,
    [property: Meaning("Density of the fluid in the loop, kg/m³.")] double DensityKgPerM3,
    [property: Meaning("Viscosity of the fluid in the loop, Pa s.")] double ViscosityPaS,
    [property: Meaning("Pressure drop of tube and valve, Pa.")] double DropPa,
    [property: Meaning("Water in, °C; null where it stands still.")] double? SupplyC,
    [property: Meaning("Water out, °C.")] double? ReturnC,
    [property: Meaning(
        "Mean temperature of the water along the loop, °C; null where it stands still."
    )]
        double? MeanWaterC,
    [property: Meaning("Heat to the room, W.")] double HeatUpW,
    [property: Meaning("Heat downwards, W.")] double HeatDownW,
    [property: Meaning("Heat flux to the room, W/m².")] double FluxWPerM2,
    [property: Meaning("Mean surface temperature, °C.")] double SurfaceMeanC,
    [property: Meaning("Warmest spot of the surface, above the tube where the water enters, °C.")]
        double SurfaceWarmestC,
    [property: Meaning(
        "Heat flux to the room while the water has room temperature, W/m²: what passes the tubes from below, negative if it is colder there; 0 by the tables."
    )]
        double AtRoomTemperatureWPerM2 = 0
);

/// <summary>The factors of K_H after EN 1264-2, type A: K_H = B·a_B·a_T^m_T·a_U^m_U·a_D^m_D.</summary>
[Meaning("The factors of K_H after EN 1264-2, type A.")]
public sealed record TransmissionFactors(
    [property: Meaning("System coefficient B of this tube, W/m²K.")] double SystemWPerM2K,
    [property: Meaning("Covering factor a_B.")] double Covering,
    [property: Meaning("Spacing factor a_T.")] double Spacing,
    [property: Meaning("Exponent of the spacing m_T.")] double SpacingExponent,
    [property: Meaning("Cover factor a_U.")] double Cover,
    [property: Meaning("Exponent of the cover m_U.")] double CoverExponent,
    [property: Meaning("Diameter factor a_D.")] double Diameter,
    [property: Meaning("Exponent of the diameter m_D.")] double DiameterExponent,
    [property: Meaning("0.375 m over the spacing where the tubes are farther apart, else 1.")]
        double WideSpacingRatio,
    [property: Meaning("Resistance of cover beyond what the tables hold, m²K/W.")]
        double ExtraCoverM2KPerW
);
