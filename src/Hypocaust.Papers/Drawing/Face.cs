using System.Globalization;
using System.Text;

namespace Hypocaust.Papers.Drawing;

/// <summary>A way to set text.</summary>
/// <param name="Style">Its CSS class.</param>
/// <param name="Size">Size of the letters, sheet units.</param>
/// <param name="Mono">Whether every letter is as wide as the next.</param>
public sealed record Face(string Style, double Size, bool Mono)
{
    /// <summary>Numbers that an instrument or the solver gives.</summary>
    public static readonly Face Number = new("num", 13, Mono: true);

    /// <summary>Names of things.</summary>
    public static readonly Face Name = new("name", 12.5, Mono: false);

    /// <summary>Remarks in the softer ink.</summary>
    public static readonly Face Soft = new("lab", 12, Mono: false);

    /// <summary>Head of a title block.</summary>
    public static readonly Face Head = new("head", 14, Mono: false);

    /// <summary>Estimated width of a text, sheet units; a little generous, so that what fits here fits on the page.</summary>
    public double WidthOf(string text)
    {
        var em = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            em += EmOf(rune);
        }

        return em * Size;
    }

    /// <summary>Cuts a text to a width, with an ellipsis where something is lost.</summary>
    public string Cut(string text, double width)
    {
        if (WidthOf(text) <= width)
        {
            return text;
        }

        var elements = new StringInfo(text);
        for (var kept = elements.LengthInTextElements - 1; kept > 0; kept--)
        {
            var cut = elements.SubstringByTextElements(0, kept).TrimEnd() + "…";
            if (WidthOf(cut) <= width)
            {
                return cut;
            }
        }

        return "…";
    }

    /// <summary>Breaks a text at its blanks into lines of at most a width; what is left over ends in an ellipsis.</summary>
    public IReadOnlyList<string> Lines(string text, double width, int most)
    {
        var lines = new List<string>();
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < words.Length; )
        {
            var line = new StringBuilder(words[i++]);
            var last = lines.Count == most - 1;
            while (i < words.Length && (last || WidthOf($"{line} {words[i]}") <= width))
            {
                line.Append(' ').Append(words[i++]);
            }

            lines.Add(Cut(line.ToString(), width));
        }

        return lines;
    }

    private double EmOf(Rune rune)
    {
        if (rune.Value >= 0x1100)
        {
            return rune.Value is >= 0x2000 and < 0x2E80 ? (Mono ? 0.62 : 0.7) : 1.3;
        }

        return Mono ? 0.605
            : "iljtfrI.,:;'|!()[]/· ".Contains((char)rune.Value, StringComparison.Ordinal) ? 0.34
            : "mwMW@%".Contains((char)rune.Value, StringComparison.Ordinal) ? 0.9
            : char.IsUpper((char)rune.Value) ? 0.7
            : rune.IsAscii ? 0.56
            : 0.66;
    }
}
