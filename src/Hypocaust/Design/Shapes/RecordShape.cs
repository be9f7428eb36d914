using System.Reflection;
using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;

namespace Hypocaust.Design.Shapes;

/// <summary>A record: its properties, in the order of its constructor.</summary>
internal sealed class RecordShape(Type type, string? kind, IReadOnlyList<PropertyShape> properties)
    : ValueShape
{
    /// <summary>The member by which families are told apart.</summary>
    public const string KindKey = "kind";

    /// <summary>The member by which an editor finds the schema; allowed at the head of a document.</summary>
    public const string SchemaKey = "$schema";

    private readonly Dictionary<string, int> indexByName = Index(properties);

    private ConstructorInvoker? constructor;

    public Type Type => type;

    /// <summary>Its name in its family, or null.</summary>
    public string? Kind => kind;

    public IReadOnlyList<PropertyShape> Properties => properties;

    public string Meaning => type.GetCustomAttribute<MeaningAttribute>()?.Text ?? "";

    public override string Described => "an object";

    public override string Example =>
        properties.FirstOrDefault(property => property.IsRequired) is { } first
            ? $"{{ \"{first.Name}\": … }}"
            : "{ … }";

    /// <summary>The property of a name, or null.</summary>
    public PropertyShape? Find(string name) =>
        indexByName.TryGetValue(name, out var index) ? properties[index] : null;

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind != SourceKind.Object)
        {
            WrongType(node, place, reading);
            reading.Break();
            return null;
        }

        var values = new object?[properties.Count];
        var present = new bool[properties.Count];
        var misspelt = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in node.Members)
        {
            if (!indexByName.TryGetValue(member.Name, out var index))
            {
                ReportUnknown(member, place, reading, misspelt);
            }
            else if (!present[index])
            {
                present[index] = true;
                values[index] = properties[index]
                    .Read(member.Value, place.Member(member.Name), reading);
                BreakWithout(values[index], reading);
            }
        }

        for (var i = 0; i < properties.Count; i++)
        {
            if (!present[i])
            {
                values[i] = ReadMissing(properties[i], node, place, reading, misspelt);
            }
        }

        constructor ??= ConstructorInvoker.Create(type.GetConstructors()[0]);
        return constructor.Invoke(values.AsSpan());
    }

    public override JsonObject Schema(SchemaBook book) => book.WriteRecord(this);

    private static Dictionary<string, int> Index(IReadOnlyList<PropertyShape> properties)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < properties.Count; i++)
        {
            index.Add(properties[i].Name, i);
        }

        return index;
    }

    private void ReportUnknown(
        SourceMember member,
        Place place,
        Reading reading,
        HashSet<string> misspelt
    )
    {
        var isSchema = place.Parent is null && member.Name == SchemaKey;
        if (isSchema || (member.Name == KindKey && kind is not null))
        {
            return;
        }

        var nearest = reading.IsFull ? null : Names.Nearest(member.Name, indexByName.Keys);
        if (nearest is not null)
        {
            misspelt.Add(nearest);
        }

        reading.Add(
            DesignProblems.UnknownKey(
                member.Name,
                nearest,
                properties.Select(property => property.Name)
            ),
            place.Member(member.Name),
            member.NameStart
        );
    }

    // A required property that stands there misspelt has been reported with its right name already
    private static object? ReadMissing(
        PropertyShape property,
        SourceNode node,
        Place place,
        Reading reading,
        HashSet<string> misspelt
    )
    {
        if (!property.IsRequired)
        {
            return property.Missing;
        }

        var at = place.Member(property.Name);
        if (misspelt.Contains(property.Name))
        {
            reading.AddSilentHole(at);
        }
        else
        {
            reading.AddHole(DesignProblems.Missing(property), at, node.Start);
        }

        BreakWithout(property.Shape.StandIn, reading);
        return property.Shape.StandIn;
    }

    private static void BreakWithout(object? value, Reading reading)
    {
        if (value is null)
        {
            reading.Break();
        }
    }
}
