using System.Globalization;

namespace Hypocaust.Papers.Drawing;

/// <summary>Colours of temperatures: the published map <c>batlow</c>, dark blue for cold to pale rose for hot, uniform to the eye, never white, and safe for colour-blind readers.</summary>
/// <remarks>Stops: F. Crameri, Scientific colour maps 8.0.1, map "batlow" (every eighth of it), MIT licence, doi:10.5281/zenodo.1243862.</remarks>
public sealed class TemperatureScale
{
    private static readonly (int R, int G, int B)[] Stops =
    [
        (0x01, 0x19, 0x59),
        (0x11, 0x43, 0x60),
        (0x22, 0x60, 0x61),
        (0x4D, 0x73, 0x4D),
        (0x82, 0x82, 0x31),
        (0xC0, 0x90, 0x36),
        (0xF1, 0x9D, 0x6B),
        (0xFD, 0xB4, 0xB4),
        (0xFA, 0xCC, 0xFA),
    ];

    /// <summary>A scale from its coldest to its hottest temperature.</summary>
    public TemperatureScale(double coldestC, double hottestC) =>
        (ColdestC, HottestC) = (coldestC, Math.Max(hottestC, coldestC + 1));

    /// <summary>Lower end, °C.</summary>
    public double ColdestC { get; }

    /// <summary>Upper end, °C.</summary>
    public double HottestC { get; }

    /// <summary>A scale on round fives around temperatures, at least 10 K wide.</summary>
    public static TemperatureScale Around(IEnumerable<double> temperaturesC)
    {
        double[] all = [.. temperaturesC.Where(double.IsFinite)];
        if (all.Length == 0)
        {
            return new(20, 40);
        }

        var low = Math.Floor(all.Min() / 5) * 5;
        return new(low, Math.Max(low + 10, Math.Ceiling(all.Max() / 5) * 5));
    }

    /// <summary>The colour of a temperature as <c>#rrggbb</c>; beyond the ends, that of the end.</summary>
    public string Colour(double temperatureC)
    {
        var share = Math.Clamp((temperatureC - ColdestC) / (HottestC - ColdestC), 0, 1);
        var place = share * (Stops.Length - 1);
        var i = Math.Min((int)place, Stops.Length - 2);
        var (a, b, f) = (Stops[i], Stops[i + 1], place - i);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"#{Mix(a.R, b.R, f):x2}{Mix(a.G, b.G, f):x2}{Mix(a.B, b.B, f):x2}"
        );
    }

    private static int Mix(int a, int b, double f) =>
        (int)Math.Round(a + ((b - a) * f), MidpointRounding.AwayFromZero);
}
