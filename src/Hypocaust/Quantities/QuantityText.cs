using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Quantities;

/// <summary>Reads numbers with units as people write them: <c>9 kW</c>, <c>12 ft 6 1/2 in</c>, <c>R-20</c>, <c>Kv 1.6</c>, <c>8..12 W/mK</c>.</summary>
public static class QuantityText
{
    private const int LongestText = 64;
    private static readonly string[] FootMarks = ["ft", "feet", "foot", "'", "′"];

    /// <summary>Low end (or the value) and, for a range, high end, in SI.</summary>
    internal sealed record Reading(double Low, double? High);

    /// <summary>Writes a value so that reading gives the same double.</summary>
    public static string Exact(double si, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit.FromSi(si).ToString("R", CultureInfo.InvariantCulture)
            + (unit.Symbol == "1" ? " of 1" : " " + unit.Symbol);
    }

    /// <summary>The unit in which a text is written (of feet and inches: feet), or the SI unit where it shows none.</summary>
    internal static Unit UnitWritten(string text, QuantityKind kind)
    {
        var trimmed = Ascii(text.Trim());
        var body = trimmed[
            (
                trimmed.LastIndexOf("..", StringComparison.Ordinal) is > 0 and var dots
                    ? dots + 2
                    : 0
            )..
        ];
        if (PrefixForm(body.Trim(), kind, out var unitName, out _))
        {
            return kind.Find(unitName)!;
        }

        var rest = UnitOf(body.Trim());
        return kind.Find(rest)
            ?? (FeetAndInches(0, rest, kind) is null ? kind.Si : kind.Find("ft")!);
    }

    internal static Result<Reading> Read(string text, QuantityKind kind)
    {
        if (string.IsNullOrWhiteSpace(text) || text.Length > LongestText)
        {
            return QuantityProblems.NotAQuantity(text, kind);
        }

        var trimmed = Ascii(text.Trim());
        if (CommaInNumber(trimmed))
        {
            return QuantityProblems.CommaInNumber(text, kind);
        }

        var scanned = trimmed.IndexOf("..", StringComparison.Ordinal) is > 0 and var dots
            ? ReadRange(trimmed[..dots], trimmed[(dots + 2)..], text, kind)
            : ReadSingle(trimmed, text, kind).Then<Reading>(value => new Reading(value, null));
        return scanned.Then<Reading>(reading =>
            AllFinite(reading) ? reading : QuantityProblems.NotFinite(text, kind)
        );
    }

    private static bool AllFinite(Reading reading) =>
        double.IsFinite(reading.Low) && double.IsFinite(reading.High ?? 0);

    private static Result<Reading> ReadRange(
        string low,
        string high,
        string text,
        QuantityKind kind
    )
    {
        var highValue = ReadSingle(high.Trim(), text, kind);
        if (!highValue.TryGet(out var top))
        {
            return Result<Reading>.Failed(highValue.Problems);
        }

        // "8..12 W/mK": the unit is written once; "8 mm..1 cm" is also understood
        var unit = UnitOf(high.Trim());
        var lowValue = ReadSingle(
            UnitOf(low.Trim()).Length == 0 ? low.Trim() + " " + unit : low.Trim(),
            text,
            kind
        );
        if (!lowValue.TryGet(out var bottom))
        {
            return Result<Reading>.Failed(lowValue.Problems);
        }

        return bottom <= top
            ? new Reading(bottom, top)
            : QuantityProblems.RangeUpsideDown(text, kind);
    }

    private static string UnitOf(string text) =>
        NumberScan.TryTake(text, out _, out var rest) ? rest.Trim() : "";

    private static Result<double> ReadSingle(string body, string text, QuantityKind kind)
    {
        if (PrefixForm(body, kind, out var unitName, out var number))
        {
            return kind.Find(unitName)!.ToSi(number);
        }

        if (!NumberScan.TryTake(body, out var first, out var rest))
        {
            return QuantityProblems.NotAQuantity(text, kind);
        }

        rest = rest.Trim();
        if (rest.Length == 0)
        {
            return QuantityProblems.NoUnit(text, kind);
        }

        if (kind.Find(rest) is { } unit)
        {
            return unit.ToSi(first);
        }

        return FeetAndInches(first, rest, kind) is { } metres
            ? metres
            : QuantityProblems.UnknownUnit(text, rest, kind);
    }

    // "12 ft 6 in", "12' 6 1/2\"", "12ft6in"; the sign of the feet holds for the inches
    private static double? FeetAndInches(double feet, string rest, QuantityKind kind)
    {
        if (!ReferenceEquals(kind, LengthKind.Kind))
        {
            return null;
        }

        var mark = FootMarks.FirstOrDefault(spelling =>
            rest.StartsWith(spelling, StringComparison.OrdinalIgnoreCase)
        );
        if (
            mark is null
            || !NumberScan.TryTake(
                rest[mark.Length..].TrimStart(),
                out var inches,
                out var inchMark
            )
        )
        {
            return null;
        }

        var isInch = kind.Find(inchMark.Trim())?.Symbol == "in";
        return isInch && inches is >= 0 and < 12
            ? (feet * 0.3048) + (double.IsNegative(feet) ? -1 : 1) * inches * 0.0254
            : null;
    }

    private static bool PrefixForm(
        string body,
        QuantityKind kind,
        out string unit,
        out double number
    )
    {
        unit = "";
        number = 0;
        var isResistance = ReferenceEquals(kind, ThermalResistanceKind.Kind);
        if (isResistance && body.Length > 1 && body[0] is 'R' or 'r')
        {
            unit = kind.Units[1].Symbol;
            return NumberScan.IsWhole(body[1..].TrimStart(' ', '-'), out number);
        }

        if (ReferenceEquals(kind, FlowCoefficientKind.Kind) && body.Length > 2)
        {
            unit = body[..2];
            return kind.Find(unit) is not null && NumberScan.IsWhole(body[2..].Trim(), out number);
        }

        return false;
    }

    private static bool CommaInNumber(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        return comma > 0 && char.IsAsciiDigit(text[comma - 1]);
    }

    private static string Ascii(string text) =>
        text.Replace('−', '-')
            .Replace('\u00a0', ' ')
            .Replace('\u202f', ' ')
            .Replace("…", "..", StringComparison.Ordinal);
}
