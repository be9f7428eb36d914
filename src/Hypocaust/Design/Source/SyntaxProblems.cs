using System.Text;
using Hypocaust.Problems;

namespace Hypocaust.Design.Source;

/// <summary>Says in plain words why a text is not JSON, judged by what stands where the reader gave up.</summary>
internal static class SyntaxProblems
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["true"] = "write true in small letters",
        ["false"] = "write false in small letters",
        ["null"] = "leave the value out",
        ["none"] = "leave the value out",
        ["nil"] = "leave the value out",
        ["undefined"] = "leave the value out",
        ["yes"] = "write true",
        ["no"] = "write false",
    };

    /// <summary>The problem at a byte.</summary>
    /// <param name="source">The text.</param>
    /// <param name="offset">Where the reader stopped.</param>
    /// <param name="open">Brackets still open, innermost first.</param>
    public static Problem At(SourceText source, int offset, IReadOnlyList<Opening> open)
    {
        var bytes = source.Bytes;
        var before = bytes[source.MarkLength..offset].TrimEnd(Blanks);
        var position = source.PositionOf(offset);
        if (bytes[source.MarkLength..].Trim(Blanks).IsEmpty)
        {
            return Syntax(
                "empty-file",
                new TextPosition(1, 1),
                "the file is empty",
                "start one with `hypocaust new`"
            );
        }

        if (bytes[offset..].Trim(Blanks).IsEmpty)
        {
            return Truncated(position, open);
        }

        var found = (char)bytes[offset];
        if (InsideText(source, offset))
        {
            return BrokenText(found, position);
        }

        if (open.Count == 0 && !before.IsEmpty)
        {
            return Syntax(
                "text-after-end",
                position,
                "the file goes on after its end",
                "take out what follows"
            );
        }

        var isAfterGap = before.Length < offset - source.MarkLength;
        return isAfterGap && open.Count > 0 && EndsValue(before) && StartsValue(found)
            ? Missing(IsName(before), position, open[0])
            : Misplaced(source, found, offset, open);
    }

    private static ReadOnlySpan<byte> Blanks => " \t\r\n"u8;

    private static Problem Misplaced(
        SourceText source,
        char found,
        int offset,
        IReadOnlyList<Opening> open
    )
    {
        var position = source.PositionOf(offset);
        return found switch
        {
            _ when char.IsAsciiLetter(found) || found == '_' => Word(
                WordAt(source.Bytes, offset),
                position
            ),
            '\'' => Syntax(
                "single-quotes",
                position,
                "a text stands in single quotes",
                "use double quotes: \"like this\""
            ),
            '}' or ']' => WrongBracket(source, found, position, open),
            ',' => Syntax(
                "stray-comma",
                position,
                "a comma stands where a value belongs",
                "take it out or write the value before it"
            ),
            '"' or '{' or '[' when open.Count > 0 => Missing(isColon: false, position, open[0]),
            '+' or '-' or '.' or (>= '0' and <= '9') => Syntax(
                "bad-number",
                position,
                "this is not a number as JSON writes it",
                "write it like 0.5 or 12, without a leading + or 0; a quantity goes in quotes with its unit, like \"12 L\""
            ),
            '/' or '#' => Syntax(
                "comment",
                position,
                "a comment does not belong in this file",
                "use a \"note\" instead"
            ),
            _ => Unexpected(source, offset, position),
        };
    }

    private static bool EndsValue(ReadOnlySpan<byte> before) =>
        !before.IsEmpty
        && (
            char.IsAsciiLetterOrDigit((char)before[^1])
            || before[^1] is (byte)'"' or (byte)'}' or (byte)']'
        );

    private static bool StartsValue(char found) =>
        char.IsAsciiLetterOrDigit(found) || found is '"' or '{' or '[' or '-';

    // A text is a member's name if a brace or comma comes before it, and a value if a colon does
    private static bool IsName(ReadOnlySpan<byte> before)
    {
        if (before[^1] != '"')
        {
            return false;
        }

        var start = before[..^1].LastIndexOf((byte)'"');
        var ahead = start < 0 ? [] : before[..start].TrimEnd(Blanks);
        return !ahead.IsEmpty && ahead[^1] is (byte)'{' or (byte)',';
    }

    // Quotes before the place on its line, escaped ones not counted: JSON texts cannot span lines
    private static bool InsideText(SourceText source, int offset)
    {
        var inside = false;
        var lineStart = source.Bytes[..offset].LastIndexOf((byte)'\n') + 1;
        for (var i = Math.Max(lineStart, source.MarkLength); i < offset; i++)
        {
            i += inside && source.Bytes[i] == '\\' ? 1 : 0;
            inside ^= i < offset && source.Bytes[i] == '"';
        }

        return inside;
    }

    private static Problem BrokenText(char found, TextPosition position) =>
        found is '\n' or '\r'
            ? Syntax(
                "open-text",
                position,
                "a text is not closed at the end of its line",
                "close it with a double quote"
            )
        : found < ' '
            ? Syntax(
                "control-character",
                position,
                "a text holds an invisible control character",
                "delete it, or write \\t for a tab"
            )
        : Syntax(
            "bad-escape",
            position,
            "the backslash in this text starts nothing that JSON knows",
            "write \\\\ for a backslash and \\\" for a quote"
        );

    private static Problem Truncated(TextPosition position, IReadOnlyList<Opening> open) =>
        Syntax(
            "truncated",
            position,
            "the file ends too early",
            open.Count == 0
                ? "complete the last value"
                : $"complete the last value and close the brackets with {string.Concat(open.Select(one => one.Closing))}"
        );

    private static Problem WrongBracket(
        SourceText source,
        char found,
        TextPosition position,
        IReadOnlyList<Opening> open
    )
    {
        if (open.Count == 0)
        {
            return Syntax("wrong-bracket", position, $"{found} closes nothing", "take it out");
        }

        var opened = source.PositionOf(open[0].Start);
        return found == open[0].Closing
            ? Syntax(
                "missing-value",
                position,
                $"a value is missing before {found}",
                "write the value, or take the name out"
            )
            : Syntax(
                "wrong-bracket",
                position,
                $"{found} does not close the {(open[0].IsObject ? '{' : '[')} of line {opened.Line}, column {opened.Column}",
                $"write {open[0].Closing} before it"
            );
    }

    private static Problem Missing(bool isColon, TextPosition position, Opening inside) =>
        isColon && inside.IsObject
            ? Syntax(
                "missing-colon",
                position,
                "no colon stands between a name and its value",
                "put a colon between them"
            )
            : Syntax(
                "missing-comma",
                position,
                "no comma stands before this",
                inside.IsObject
                    ? "put a comma between the members"
                    : "put a comma between the items"
            );

    private static Problem Word(string word, TextPosition position) =>
        word is "NaN" or "Infinity" or "Inf" or "inf" or "nan"
            ? Syntax(
                "not-finite",
                position,
                $"{word} is not a value to build with",
                "write a number with its unit in quotes, or leave it out"
            )
            : Syntax(
                "bare-word",
                position,
                $"{DesignProblems.Quoted(word)} stands without quotes or in the wrong place",
                Words.GetValueOrDefault(word) ?? "put names and texts in double quotes"
            );

    private static Problem Unexpected(SourceText source, int offset, TextPosition position)
    {
        _ = Rune.DecodeFromUtf8(source.Bytes[offset..], out var rune, out _);
        return rune.Value is '“' or '”' or '„' or '‘' or '’'
            ? Syntax(
                "curly-quotes",
                position,
                $"{rune} is a typographic quote",
                "use the plain double quote \""
            )
            : Syntax(
                "unexpected-character",
                position,
                $"{rune} is not expected here",
                "look for a missing quote, comma or bracket just before it"
            );
    }

    private static string WordAt(ReadOnlySpan<byte> bytes, int offset)
    {
        var start = offset;
        while (start > 0 && char.IsAsciiLetterOrDigit((char)bytes[start - 1]))
        {
            start--;
        }

        var end = offset;
        while (
            end < bytes.Length
            && end - start < 40
            && (char.IsAsciiLetterOrDigit((char)bytes[end]) || bytes[end] == '_')
        )
        {
            end++;
        }

        return Encoding.ASCII.GetString(bytes[start..end]);
    }

    private static Problem Syntax(string code, TextPosition position, string what, string remedy) =>
        new(code, "$", what, remedy) { Position = position };
}
