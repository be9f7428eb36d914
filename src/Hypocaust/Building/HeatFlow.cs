namespace Hypocaust.Building;

/// <summary>Which way heat leaves the room through an element.</summary>
public enum HeatFlow
{
    /// <summary>Through a wall, door or window (and anything within 30° of upright).</summary>
    Horizontal,

    /// <summary>Through a ceiling or roof.</summary>
    Upward,

    /// <summary>Through a floor.</summary>
    Downward,
}

/// <summary>Conventional surface resistances.</summary>
/// <source>ISO 6946:2017 table 7; the assignment to directions from memory</source>
public static class SurfaceResistance
{
    /// <summary>Outside surface resistance in the open, m²·K/W.</summary>
    public const double OutsideM2KPerW = 0.04;

    /// <summary>Inside surface resistance for a direction of heat flow, m²·K/W. Use it on the far side too when an unheated space lies there.</summary>
    public static double InsideM2KPerW(HeatFlow direction) =>
        direction switch
        {
            HeatFlow.Horizontal => 0.13,
            HeatFlow.Upward => 0.10,
            HeatFlow.Downward => 0.17,
            _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "unknown"),
        };
}
