using Hypocaust.Quantities;

namespace Hypocaust.Papers.Drawing;

/// <summary>A scale along an axis, in the reader's units, from SI values to sheet units.</summary>
internal sealed class Axis
{
    private readonly Unit unit;

    private Axis(Unit unit, double lowSi, double highSi, double step, double start, double end)
    {
        this.unit = unit;
        (LowSi, HighSi, Step, Start, End) = (lowSi, highSi, step, start, end);
    }

    /// <summary>SI value at the start.</summary>
    public double LowSi { get; }

    /// <summary>SI value at the end.</summary>
    public double HighSi { get; }

    /// <summary>Distance of ticks in the reader's unit.</summary>
    public double Step { get; }

    /// <summary>Where it starts on the sheet.</summary>
    public double Start { get; }

    /// <summary>Where it ends on the sheet.</summary>
    public double End { get; }

    /// <summary>An axis over a range, grown to whole ticks.</summary>
    public static Axis Over(
        double lowSi,
        double highSi,
        Unit unit,
        double start,
        double end,
        double tickDistance = 56
    )
    {
        var (low, high) = (unit.FromSi(lowSi), unit.FromSi(Math.Max(highSi, lowSi + 1e-12)));
        var count = Math.Max(2, Math.Abs(end - start) / tickDistance);
        var step = NiceStep((high - low) / count);
        low = Math.Floor((low / step) + 1e-9) * step;
        high = Math.Ceiling((high / step) - 1e-9) * step;
        return new(unit, unit.ToSi(low), unit.ToSi(high), step, start, end);
    }

    /// <summary>Where a value lies on the sheet.</summary>
    public double At(double si) => Start + ((si - LowSi) / (HighSi - LowSi) * (End - Start));

    /// <summary>Ticks: place on the sheet and words.</summary>
    public IEnumerable<(double At, string Words)> Ticks()
    {
        var low = unit.FromSi(LowSi);
        var count = (int)Math.Round((unit.FromSi(HighSi) - low) / Step);
        var decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(Step) - 1e-9), 0, 6);
        var shown = new Shown(unit, decimals, unit, decimals);
        for (var i = 0; i <= count; i++)
        {
            var si = unit.ToSi(low + (i * Step));
            yield return (At(si), shown.Figure(si, UnitSystem.Si));
        }
    }

    private static double NiceStep(double least)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(least, 1e-12))));
        return power
            * (
                least <= power ? 1
                : least <= 2 * power ? 2
                : least <= 5 * power ? 5
                : 10
            );
    }
}
