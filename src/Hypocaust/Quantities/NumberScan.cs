using System.Globalization;

namespace Hypocaust.Quantities;

/// <summary>Takes a number from the head of a text: <c>12</c>, <c>-0.5</c>, <c>1e3</c>, <c>3/4</c>, <c>6 1/2</c>, <c>6½</c>.</summary>
internal static class NumberScan
{
    private const string Fractions = "½¼¾⅓⅔⅛⅜⅝⅞";
    private static readonly double[] FractionValues =
    [
        0.5,
        0.25,
        0.75,
        1.0 / 3,
        2.0 / 3,
        0.125,
        0.375,
        0.625,
        0.875,
    ];

    public static bool IsWhole(string text, out double number) =>
        TryTake(text, out number, out var rest) && rest.Trim().Length == 0;

    public static bool TryTake(string text, out double number, out string rest)
    {
        var sign = text.StartsWith('-') ? -1 : 1;
        var at = text.Length > 0 && text[0] is '-' or '+' ? 1 : 0;
        if (TakeFraction(text, at, out number, out var end))
        {
            rest = text[end..];
            number *= sign;
            return true;
        }

        if (!TakeDecimal(text, at, out number, out end))
        {
            rest = text;
            return false;
        }

        // a whole number may be followed by a fraction: "6 1/2", "6-1/2", "6½"
        if (
            number == Math.Floor(number)
            && TakeFraction(text, SkipGap(text, end), out var part, out var fractionEnd)
        )
        {
            number += part;
            end = fractionEnd;
        }

        number *= sign;
        rest = text[end..];
        return true;
    }

    private static int SkipGap(string text, int at)
    {
        while (at < text.Length && text[at] is ' ' or '-')
        {
            at++;
        }

        return at;
    }

    private static bool TakeFraction(string text, int at, out double number, out int end)
    {
        number = 0;
        end = at;
        if (
            at < text.Length
            && Fractions.IndexOf(text[at], StringComparison.Ordinal) is >= 0 and var glyph
        )
        {
            number = FractionValues[glyph];
            end = at + 1;
            return true;
        }

        var slash = Digits(text, at);
        if (slash == at || slash >= text.Length || text[slash] != '/')
        {
            return false;
        }

        end = Digits(text, slash + 1);
        if (end == slash + 1 || slash - at > 4 || end - slash > 5)
        {
            return false;
        }

        var below = int.Parse(
            text.AsSpan(slash + 1, end - slash - 1),
            CultureInfo.InvariantCulture
        );
        number =
            int.Parse(text.AsSpan(at, slash - at), CultureInfo.InvariantCulture) / (double)below;
        return below != 0;
    }

    private static bool TakeDecimal(string text, int at, out double number, out int end)
    {
        end = Digits(text, at);
        var digits = end - at;
        // "8..12" is a range, not "8." and ".12"
        var point =
            end < text.Length
            && text[end] == '.'
            && !(end + 1 < text.Length && text[end + 1] == '.');
        if (point)
        {
            var after = Digits(text, end + 1);
            digits += after - end - 1;
            end = after;
        }

        if (digits > 0 && end < text.Length && text[end] is 'e' or 'E')
        {
            var exponent = end + 1 < text.Length && text[end + 1] is '-' or '+' ? end + 2 : end + 1;
            var after = Digits(text, exponent);
            end = after > exponent ? after : end;
        }

        number = 0;
        return digits > 0
            && double.TryParse(
                text.AsSpan(at, end - at),
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
                CultureInfo.InvariantCulture,
                out number
            );
    }

    private static int Digits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }
}
