namespace Hypocaust.Design;

/// <summary>Names that a person gives to things in the file, and help when one is misspelt.</summary>
public static class Names
{
    /// <summary>Characters that a name may have.</summary>
    public const int LongestName = 60;

    // A file with more names than this is no person's, and comparing all would take seconds
    private const int MostCompared = 2000;

    /// <summary>Whether a text can name a thing: letters, digits, <c>- _ / ½ ¾</c>, blanks and a point between digits, starting with a letter; at most <see cref="LongestName"/> characters.</summary>
    public static bool IsName(string text)
    {
        if (text.Length is 0 or > LongestName || !char.IsLetter(text[0]) || text[^1] == ' ')
        {
            return false;
        }

        for (var i = 0; i < text.Length; i++)
        {
            if (!IsNameCharacter(text[i]) && !IsDecimalPoint(text, i))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a point stands between digits and so belongs to the name, where others part an item from its port.</summary>
    internal static bool IsDecimalPoint(string text, int at) =>
        text[at] == '.'
        && at > 0
        && at + 1 < text.Length
        && char.IsAsciiDigit(text[at - 1])
        && char.IsAsciiDigit(text[at + 1]);

    /// <summary>The known name nearest to a misspelt one, or null if none is near.</summary>
    public static string? Nearest(string text, IEnumerable<string> known)
    {
        var limit = Math.Max(2, text.Length / 3);
        return known
            .Where(name => Math.Abs(name.Length - text.Length) <= limit)
            .Take(MostCompared)
            .Select(name => (name, distance: Distance(text, name)))
            .Where(pair => pair.distance <= limit)
            .OrderBy(pair => pair.distance)
            .ThenBy(pair => pair.name, StringComparer.Ordinal)
            .Select(pair => pair.name)
            .FirstOrDefault();
    }

    private static bool IsNameCharacter(char c) =>
        char.IsLetterOrDigit(c)
        || c is '-' or '_' or '/' or ' ' or '½' or '¾' or '¼' or '⅜' or '⅝' or '⅛';

    // Optimal string alignment distance, case ignored: a swap of neighbours counts once
    private static int Distance(string a, string b)
    {
        if (a.Length > 80 || b.Length > 80)
        {
            return int.MaxValue;
        }

        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                rows[i, j] =
                    i == 0 ? j
                    : j == 0 ? i
                    : Step(a, b, rows, i, j);
            }
        }

        return rows[a.Length, b.Length];
    }

    private static int Step(string a, string b, int[,] rows, int i, int j)
    {
        var same = Same(a[i - 1], b[j - 1]);
        var best = Math.Min(
            Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1,
            rows[i - 1, j - 1] + (same ? 0 : 1)
        );
        var swapped = i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]);
        return swapped ? Math.Min(best, rows[i - 2, j - 2] + 1) : best;
    }

    private static bool Same(char x, char y) =>
        char.ToUpperInvariant(x) == char.ToUpperInvariant(y);
}
