namespace Hypocaust.Floor;

/// <summary>Use of a floor area, which decides how warm its surface may get.</summary>
public enum SurfaceZone
{
    /// <summary>Where people stay: at most 29 °C.</summary>
    Occupied,

    /// <summary>Bathrooms and the like: at most 9 K above the room (33 °C at 24 °C).</summary>
    Bathroom,

    /// <summary>A strip of at most 1 m along outer walls: at most 35 °C.</summary>
    Edge,
}

/// <summary>The warmest surface that each zone allows.</summary>
public static class SurfaceZones
{
    /// <summary>Highest surface temperature in an occupied zone in °C.</summary>
    public const double OccupiedMaximumC = 29;

    /// <summary>Highest surface temperature over the room in a bathroom in K.</summary>
    public const double BathroomMaximumOverRoomK = 9;

    /// <summary>Highest surface temperature in an edge zone in °C.</summary>
    public const double EdgeMaximumC = 35;

    /// <summary>Where the limits come from.</summary>
    public const string Source = "EN 1264-2 (seen in a planning guide that quotes it)";

    /// <summary>Highest surface temperature in °C of a zone in a room at a temperature in °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The zone is none of the three.</exception>
    public static double MaximumSurfaceC(this SurfaceZone zone, double roomC) =>
        zone switch
        {
            SurfaceZone.Occupied => OccupiedMaximumC,
            SurfaceZone.Bathroom => roomC + BathroomMaximumOverRoomK,
            SurfaceZone.Edge => EdgeMaximumC,
            _ => throw new ArgumentOutOfRangeException(nameof(zone), zone, "Unknown zone."),
        };
}
