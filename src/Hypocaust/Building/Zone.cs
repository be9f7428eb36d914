using System.Collections.Immutable;

namespace Hypocaust.Building;

/// <summary>A room, or several kept at one temperature.</summary>
/// <remarks>Plain data; <see cref="HeatLoss.Calculate"/> checks it.</remarks>
/// <param name="Name">Unique in the building.</param>
/// <param name="IndoorTemperatureC">Design indoor (operative) temperature, °C; −30 to 45.</param>
/// <param name="FloorAreaM2">Floor area, m²; above 0.</param>
/// <param name="VolumeM3">Air volume, m³; above 0.</param>
/// <param name="AirChangesPerHour">Air from outdoors through leaks and windows, volumes per hour; 0 or more.</param>
/// <param name="Elements">Everything that encloses the zone and has another temperature beyond it.</param>
public sealed record Zone(
    string Name,
    double IndoorTemperatureC,
    double FloorAreaM2,
    double VolumeM3,
    double AirChangesPerHour,
    ImmutableArray<EnvelopeElement> Elements
)
{
    /// <summary>Outdoor air blown in by a fan, m³/h; 0 or more.</summary>
    public double SupplyAirM3PerH { get; init; }

    /// <summary>Part of the supply air's heat that is recovered from the exhaust, 0 to 1.</summary>
    public double HeatRecoveryFraction { get; init; }

    /// <summary>Outdoor air that the room must heat: leaks, and the supply air less what is recovered, m³/h.</summary>
    public double EffectiveAirFlowM3PerH =>
        AirChangesPerHour * VolumeM3 + SupplyAirM3PerH * (1 - HeatRecoveryFraction);
}

/// <summary>A part of a zone's envelope.</summary>
/// <param name="Name">For people, for example <c>north wall</c>.</param>
/// <param name="AreaM2">Outside dimensions are usual, m²; above 0.</param>
/// <param name="UWPerM2K">Thermal transmittance, W/(m²·K); above 0.</param>
/// <param name="Boundary">What lies beyond.</param>
public sealed record EnvelopeElement(string Name, double AreaM2, double UWPerM2K, Boundary Boundary)
{
    /// <summary>Whether this is the heated floor itself: then its loss downwards belongs to the floor's own computation, with warm tubes above the insulation, and not to what the room needs.</summary>
    public bool IsHeatedFloor { get; init; }
}
