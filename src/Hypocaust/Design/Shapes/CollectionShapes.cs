using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;

namespace Hypocaust.Design.Shapes;

/// <summary>A list or an object of entries of one type.</summary>
internal interface ICollectionShape
{
    /// <summary>The type of the entries.</summary>
    ValueShape Item { get; }
}

/// <summary>Values in order.</summary>
internal sealed class ListShape<T>(ValueShape item) : ValueShape, ICollectionShape
{
    public ValueShape Item => item;

    public override string Described => "a list";

    public override string Example => $"[{item.Example}]";

    public override object StandIn => ImmutableArray<T>.Empty;

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind != SourceKind.Array)
        {
            WrongType(node, place, reading);
            return null;
        }

        var items = ImmutableArray.CreateBuilder<T>(node.Items.Count);
        for (var i = 0; i < node.Items.Count; i++)
        {
            if ((item.Read(node.Items[i], place.Item(i), reading) ?? item.StandIn) is T value)
            {
                items.Add(value);
            }
            else
            {
                reading.Break();
            }
        }

        return items.DrainToImmutable();
    }

    public override JsonObject Schema(SchemaBook book) =>
        new() { ["type"] = "array", ["items"] = book.Refer(item) };
}

/// <summary>Values by name, as the members of one object.</summary>
internal sealed class NamedShape<T>(ValueShape item) : ValueShape, ICollectionShape
    where T : notnull
{
    public ValueShape Item => item;

    public override string Described => "an object with a name for each entry";

    public override string Example => "{ \"name\": … }";

    public override object StandIn => Named<T>.Empty;

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind != SourceKind.Object)
        {
            WrongType(node, place, reading);
            return null;
        }

        var entries = new List<KeyValuePair<string, T>>(node.Members.Count);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in node.Members)
        {
            var at = place.Member(member.Name);
            if (!Names.IsName(member.Name))
            {
                reading.Add(DesignProblems.BadName(member.Name), at, member.NameStart);
            }

            // a name given twice has been reported when the text was read
            if (!seen.Add(member.Name))
            {
                continue;
            }

            if ((item.Read(member.Value, at, reading) ?? item.StandIn) is T value)
            {
                entries.Add(new(member.Name, value));
            }
            else
            {
                reading.Break();
            }
        }

        return new Named<T>(entries);
    }

    public override JsonObject Schema(SchemaBook book) =>
        new()
        {
            ["type"] = "object",
            ["propertyNames"] = new JsonObject
            {
                ["pattern"] = "^\\p{L}",
                ["maxLength"] = Names.LongestName,
            },
            ["additionalProperties"] = book.Refer(item),
        };
}
