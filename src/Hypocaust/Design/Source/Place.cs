using System.Globalization;
using System.Text;

namespace Hypocaust.Design.Source;

/// <summary>A place in a JSON document, kept as a chain so that a path is written only when somebody asks: <c>$.floor.loops[2].spacing</c>.</summary>
internal sealed record Place
{
    private const int LongestName = 60;

    private Place(Place? parent, string? name, int index)
    {
        Parent = parent;
        Name = name;
        Index = index;
    }

    /// <summary>The document itself, <c>$</c>.</summary>
    public static Place Root { get; } = new(null, null, -1);

    public Place? Parent { get; }

    public string? Name { get; }

    public int Index { get; }

    public Place Member(string name) => new(this, name, -1);

    public Place Item(int index) => new(this, null, index);

    public override string ToString()
    {
        var steps = new Stack<Place>();
        for (var at = this; at.Parent is not null; at = at.Parent)
        {
            steps.Push(at);
        }

        var path = new StringBuilder("$");
        foreach (var step in steps)
        {
            _ = step.Name is { } name
                ? AppendName(path, name)
                : path.Append(CultureInfo.InvariantCulture, $"[{step.Index}]");
        }

        return path.ToString();
    }

    /// <summary>Reads a path as written by <see cref="ToString"/>; null if it is none.</summary>
    public static Place? Parse(string path)
    {
        if (!path.StartsWith('$'))
        {
            return null;
        }

        var place = Root;
        var at = 1;
        while (at < path.Length)
        {
            var next = path[at] switch
            {
                '.' => ParseName(path, ref at, place),
                '[' when at + 1 < path.Length && path[at + 1] == '\'' => ParseQuoted(
                    path,
                    ref at,
                    place
                ),
                '[' => ParseIndex(path, ref at, place),
                _ => null,
            };
            if (next is null)
            {
                return null;
            }

            place = next;
        }

        return place;
    }

    private static StringBuilder AppendName(StringBuilder path, string name)
    {
        var shown = name.Length > LongestName ? name[..LongestName] + "…" : name;
        return IsPlain(shown)
            ? path.Append('.').Append(shown)
            : path.Append("['")
                .Append(
                    shown
                        .Replace("\\", "\\\\", StringComparison.Ordinal)
                        .Replace("'", "\\'", StringComparison.Ordinal)
                )
                .Append("']");
    }

    private static bool IsPlain(string name) =>
        name.Length > 0
        && (char.IsLetter(name[0]) || name[0] is '_' or '$')
        && name.All(c => char.IsLetterOrDigit(c) || c is '_' or '$');

    private static Place? ParseName(string path, ref int at, Place parent)
    {
        var start = ++at;
        while (at < path.Length && path[at] is not '.' and not '[')
        {
            at++;
        }

        return at > start ? parent.Member(path[start..at]) : null;
    }

    private static Place? ParseQuoted(string path, ref int at, Place parent)
    {
        var name = new StringBuilder();
        for (at += 2; at < path.Length && path[at] != '\''; at++)
        {
            at += path[at] == '\\' && at + 1 < path.Length ? 1 : 0;
            name.Append(path[at]);
        }

        var closed = at + 1 < path.Length && path[at + 1] == ']';
        at += 2;
        return closed ? parent.Member(name.ToString()) : null;
    }

    private static Place? ParseIndex(string path, ref int at, Place parent)
    {
        var end = path.IndexOf(']', at);
        if (
            end < 0
            || !int.TryParse(
                path.AsSpan(at + 1, end - at - 1),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out var index
            )
        )
        {
            return null;
        }

        at = end + 1;
        return parent.Item(index);
    }
}
