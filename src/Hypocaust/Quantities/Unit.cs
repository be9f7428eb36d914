using System.Collections.Immutable;

namespace Hypocaust.Quantities;

/// <summary>A unit in which a quantity may be written: value in SI = (number + offset) × factor.</summary>
/// <param name="Symbol">How we write it, for example <c>L/min</c>.</param>
/// <param name="Factor">SI units in one of this unit, written from exact constituents.</param>
/// <param name="Offset">Added before the factor; only temperatures have one.</param>
/// <param name="Spellings">Other ways in which people write it.</param>
public sealed record Unit(
    string Symbol,
    double Factor,
    double Offset,
    ImmutableArray<string> Spellings
)
{
    /// <summary>Declares a unit without offset.</summary>
    public static Unit Of(string symbol, double factor, params string[] spellings) =>
        new(symbol, factor, 0, [.. spellings]);

    /// <summary>Converts a number in this unit to SI.</summary>
    public double ToSi(double number) => (number + Offset) * Factor;

    /// <summary>Converts an SI value to a number in this unit.</summary>
    public double FromSi(double si) => (si / Factor) - Offset;
}
