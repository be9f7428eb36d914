using System.Globalization;

namespace Hypocaust.Papers.Drawing;

/// <summary>Colours of temperatures: the published map <c>vik</c>, cold blue to hot red, uniform to the eye and safe for colour-blind readers.</summary>
/// <remarks>Stops: F. Crameri, Scientific colour maps 8.0.1, map "vik" (10 stops), MIT licence, doi:10.5281/zenodo.1243862.</remarks>
public sealed class TemperatureScale
{
    private static readonly (int R, int G, int B)[] Stops =
    [
        (0x00, 0x12, 0x61),
        (0x03, 0x3E, 0x7D),
        (0x1E, 0x6F, 0x9D),
        (0x71, 0xA8, 0xC4),
        (0xC9, 0xDD, 0xE7),
        (0xEA, 0xCE, 0xBD),
        (0xD3, 0x97, 0x74),
        (0xBE, 0x65, 0x33),
        (0x8B, 0x27, 0x06),
        (0x59, 0x00, 0x08),
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
