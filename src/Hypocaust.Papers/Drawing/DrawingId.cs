using System.Globalization;
using System.Text;

namespace Hypocaust.Papers.Drawing;

/// <summary>Ids of drawn things, so that a page can link to them.</summary>
public static class DrawingId
{
    /// <summary>The id of an item: <c>item-</c> and its name, blanks as <c>_</c>, other signs than letters, digits and <c>-</c> as <c>_xHEX_</c>.</summary>
    public static string OfItem(string name) => "item-" + Safe(name);

    /// <summary>The id of a loop: <c>loop-</c> and its name, written in the same way.</summary>
    public static string OfLoop(string name) => "loop-" + Safe(name);

    private static string Safe(string name)
    {
        var text = new StringBuilder();
        foreach (var rune in name.EnumerateRunes())
        {
            _ =
                Rune.IsLetterOrDigit(rune) || rune.Value == '-' ? text.Append(rune.ToString())
                : rune.Value == ' ' ? text.Append('_')
                : text.Append(CultureInfo.InvariantCulture, $"_x{rune.Value:X}_");
        }

        return text.ToString();
    }
}
