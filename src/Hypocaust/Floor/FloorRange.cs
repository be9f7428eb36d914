namespace Hypocaust.Floor;

internal static class FloorRange
{
    /// <summary>Whether a figure lies between two bounds, both included; false for NaN.</summary>
    public static bool IsWithin(this double value, double low, double high) =>
        value >= low && value <= high;

    /// <summary>Whether a figure is above 0 and finite; false for NaN.</summary>
    public static bool IsPositive(this double value) => value > 0 && double.IsFinite(value);
}
