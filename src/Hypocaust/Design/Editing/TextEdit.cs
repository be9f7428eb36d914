using System.Text;
using Hypocaust.Design.Shapes;
using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design.Editing;

/// <summary>Changes one value in the bytes of a file; every other byte stays.</summary>
internal static class TextEdit
{
    public static Result<byte[]> Apply(
        SourceText source,
        SourceNode root,
        string path,
        string? newText
    )
    {
        if (Place.Parse(path) is not { Parent: { } parentPlace } place)
        {
            return DesignProblems.NoSuchPlace(path, "write a path like $.plant.items.pump.speed");
        }

        if (root.Find(parentPlace) is not { } parent)
        {
            return DesignProblems.NoSuchPlace(path, $"add {parentPlace} to the file first");
        }

        var node = root.Find(place);
        if (newText is null)
        {
            return node is null ? source.Bytes.ToArray() : Remove(source, parent, place);
        }

        if (node is { Kind: SourceKind.Object or SourceKind.Array })
        {
            return DesignProblems.NotALeaf(path);
        }

        var value = AsJson(newText, ShapePath.Find(root, place));
        if (node is not null)
        {
            return Splice(source, node.Start, node.End, value);
        }

        return place.Name is { } name && parent.Kind == SourceKind.Object
            ? Insert(source, parent, name, value)
            : DesignProblems.NoSuchPlace(path, "edit an entry that is there");
    }

    // What a person types becomes a number or true/false only where the file wants one
    private static string AsJson(string text, ValueShape? shape)
    {
        var trimmed = text.Trim();
        var isLiteral = shape switch
        {
            IntShape => trimmed.Length is > 0 and < 10 && trimmed.All(char.IsAsciiDigit),
            BoolShape => trimmed is "true" or "false",
            _ => false,
        };
        return isLiteral && !(trimmed.Length > 1 && trimmed[0] == '0')
            ? trimmed
            : PlainJson.Quote(text);
    }

    private static byte[] Insert(SourceText source, SourceNode parent, string name, string value)
    {
        var member = $"{PlainJson.Quote(name)}: {value}";
        if (parent.Members.Count == 0)
        {
            return Splice(source, parent.Start, parent.End, $"{{ {member} }}");
        }

        var last = parent.Members[^1];
        var gap = GapBefore(source, last.NameStart);
        var separator = gap.Contains('\n', StringComparison.Ordinal) ? "," + gap : ", ";
        return Splice(source, last.Value.End, last.Value.End, separator + member);
    }

    private static byte[] Remove(SourceText source, SourceNode parent, Place place)
    {
        var starts =
            parent.Kind == SourceKind.Object
                ? parent.Members.Select(member => member.NameStart).ToArray()
                : [.. parent.Items.Select(item => item.Start)];
        var ends =
            parent.Kind == SourceKind.Object
                ? parent.Members.Select(member => member.Value.End).ToArray()
                : [.. parent.Items.Select(item => item.End)];
        var index = place.Name is { } name
            ? parent.Members.TakeWhile(member => member.Name != name).Count()
            : place.Index;
        // with the comma after it, or, at the end, with the one before
        return index + 1 < starts.Length ? Splice(source, starts[index], starts[index + 1], "")
            : index > 0 ? Splice(source, ends[index - 1], ends[index], "")
            : Splice(source, parent.Start + 1, parent.End - 1, "");
    }

    private static string GapBefore(SourceText source, int offset)
    {
        var start = offset;
        while (source.Bytes[start - 1] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')
        {
            start--;
        }

        return Encoding.UTF8.GetString(source.Bytes[start..offset]);
    }

    private static byte[] Splice(SourceText source, int start, int end, string text) =>
        [.. source.Bytes[..start], .. Encoding.UTF8.GetBytes(text), .. source.Bytes[end..]];
}
