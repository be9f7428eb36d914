using System.Reflection;
using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;

namespace Hypocaust.Design.Shapes;

/// <summary>Several records that are told apart by their <c>kind</c>.</summary>
internal sealed class FamilyShape(Type type, IReadOnlyList<RecordShape> members) : ValueShape
{
    private readonly Dictionary<string, RecordShape> byKind = members.ToDictionary(
        member => member.Kind!,
        StringComparer.OrdinalIgnoreCase
    );

    public Type Type => type;

    public IReadOnlyList<RecordShape> Members => members;

    public string Meaning => type.GetCustomAttribute<MeaningAttribute>()?.Text ?? "";

    public override string Described => "an object";

    public override string Example => $"{{ \"kind\": \"{members[0].Kind}\", … }}";

    /// <summary>The record that a node's kind names, or null.</summary>
    public RecordShape? Find(SourceNode node) =>
        node.Find(RecordShape.KindKey)?.Value is { Kind: SourceKind.String } named
            ? byKind.GetValueOrDefault(named.Text)
            : null;

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind == SourceKind.Object && Find(node) is { } member)
        {
            return member.Read(node, place, reading);
        }

        reading.Break();
        if (node.Kind != SourceKind.Object)
        {
            WrongType(node, place, reading);
            return null;
        }

        var kinds = members.Select(one => one.Kind!);
        var written = node.Find(RecordShape.KindKey)?.Value;
        var problem =
            written is null ? DesignProblems.MissingKind(kinds)
            : written.Kind == SourceKind.String ? DesignProblems.UnknownKind(written.Text, kinds)
            : DesignProblems.WrongType(written, "the kind of a part", $"\"{members[0].Kind}\"");
        reading.AddHole(
            problem,
            written is null ? place : place.Member(RecordShape.KindKey),
            (written ?? node).Start
        );
        return null;
    }

    public override JsonObject Schema(SchemaBook book) => book.WriteFamily(this);
}
