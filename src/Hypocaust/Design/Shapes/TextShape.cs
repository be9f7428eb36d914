using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;
using Hypocaust.Quantities;

namespace Hypocaust.Design.Shapes;

/// <summary>A value with a form of its own in one text, such as a step of a run.</summary>
internal sealed class TextShape<T> : ValueShape
    where T : class, IText<T>
{
    public override string Described => $"a {T.Form.Name}";

    public override string Example => $"\"{T.Form.Example}\"";

    public override object StandIn => T.Read(T.Form.Example).Value;

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind != SourceKind.String)
        {
            WrongType(node, place, reading);
            return null;
        }

        var read = T.Read(node.Text);
        if (read.TryGet(out var value))
        {
            return value;
        }

        foreach (var problem in read.Problems)
        {
            reading.AddHole(problem, place, node.Start);
        }

        return null;
    }

    public override object ReadDefault(string text) => T.Read(text).Value;

    public override JsonObject Schema(SchemaBook book) =>
        new()
        {
            ["type"] = "string",
            ["description"] = T.Form.Meaning,
            ["minLength"] = 1,
            ["examples"] = new JsonArray(T.Form.Example),
        };
}
