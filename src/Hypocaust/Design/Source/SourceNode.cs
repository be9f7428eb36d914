namespace Hypocaust.Design.Source;

/// <summary>What stands at a node.</summary>
internal enum SourceKind
{
    Object,
    Array,
    String,
    Number,
    True,
    False,
    Null,
}

/// <summary>A JSON value and where it stands in the file.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">First byte.</param>
/// <param name="End">Byte after the last.</param>
internal sealed record SourceNode(SourceKind Kind, int Start, int End)
{
    /// <summary>A string's characters or a number's digits; empty for the rest.</summary>
    public string Text { get; init; } = "";

    /// <summary>An object's members in the order of the file, double ones included.</summary>
    public IReadOnlyList<SourceMember> Members { get; init; } = [];

    /// <summary>An array's items.</summary>
    public IReadOnlyList<SourceNode> Items { get; init; } = [];

    /// <summary>The first member of a name, or null.</summary>
    public SourceMember? Find(string name)
    {
        foreach (var member in Members)
        {
            if (member.Name == name)
            {
                return member;
            }
        }

        return null;
    }

    /// <summary>The node at a place, or null.</summary>
    public SourceNode? Find(Place place)
    {
        if (place.Parent is null)
        {
            return this;
        }

        var parent = Find(place.Parent);
        return place.Name is { } name ? parent?.Find(name)?.Value
            : parent is not null && place.Index < parent.Items.Count ? parent.Items[place.Index]
            : null;
    }

    /// <summary>What it is, for a sentence.</summary>
    public string Described =>
        Kind switch
        {
            SourceKind.Object => "an object {…}",
            SourceKind.Array => "a list […]",
            SourceKind.String => $"the text {DesignProblems.Quoted(Text)}",
            SourceKind.Number => $"the number {DesignProblems.Short(Text)}",
            SourceKind.True => "true",
            SourceKind.False => "false",
            _ => "null",
        };
}

/// <summary>A name and its value in an object.</summary>
/// <param name="Name">The name.</param>
/// <param name="NameStart">Byte of its opening quote.</param>
/// <param name="Value">The value.</param>
internal sealed record SourceMember(string Name, int NameStart, SourceNode Value);
