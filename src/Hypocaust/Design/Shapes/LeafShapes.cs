using System.Globalization;
using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design.Shapes;

/// <summary>A free text.</summary>
internal sealed class StringShape : ValueShape
{
    public override string Described => "a text";

    public override string Example => "\"…\"";

    public override object StandIn => "";

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind == SourceKind.String)
        {
            return node.Text;
        }

        WrongType(node, place, reading);
        return null;
    }

    public override object ReadDefault(string text) => text;

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "string" };
}

/// <summary>True or false.</summary>
internal sealed class BoolShape : ValueShape
{
    public override string Described => "true or false";

    public override string Example => "true";

    public override object StandIn => false;

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind is SourceKind.True or SourceKind.False)
        {
            return node.Kind == SourceKind.True;
        }

        WrongType(node, place, reading);
        return null;
    }

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "boolean" };
}

/// <summary>A whole number.</summary>
internal sealed class IntShape : ValueShape
{
    public override string Described => "a whole number";

    public override string Example => "3";

    public override object StandIn => 1;

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (
            node.Kind == SourceKind.Number
            && double.TryParse(
                node.Text,
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out var number
            )
            && number == Math.Floor(number)
            && Math.Abs(number) <= int.MaxValue
        )
        {
            return (int)number;
        }

        WrongType(node, place, reading);
        return null;
    }

    public override Problem? OutOfRange(object value, WithinAttribute within) =>
        (int)value < within.Low || (int)value > within.High
            ? DesignProblems.OutOfBounds(
                ((int)value).ToString(CultureInfo.InvariantCulture),
                within.Low.ToString(CultureInfo.InvariantCulture),
                within.High.ToString(CultureInfo.InvariantCulture)
            )
            : null;

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "integer" };

    public override void AddRange(JsonObject schema, WithinAttribute within)
    {
        schema["minimum"] = (int)within.Low;
        schema["maximum"] = (int)within.High;
    }
}

/// <summary>A computed number; answers hold them, designs do not.</summary>
internal sealed class NumberShape : ValueShape
{
    public override string Described => "a number";

    public override string Example => "0.5";

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (
            node.Kind == SourceKind.Number
            && double.TryParse(
                node.Text,
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out var number
            )
            && double.IsFinite(number)
        )
        {
            return number;
        }

        WrongType(node, place, reading);
        return null;
    }

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "number" };
}

/// <summary>A reserved section that is kept as it stands.</summary>
internal sealed class VerbatimShape : ValueShape
{
    public override string Described => "an object";

    public override string Example => "{ … }";

    public override object StandIn => new JsonObject();

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind == SourceKind.Object)
        {
            return Copy(node);
        }

        WrongType(node, place, reading);
        return null;
    }

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "object" };

    private static JsonObject Copy(SourceNode node)
    {
        var copy = new JsonObject();
        foreach (var member in node.Members)
        {
            copy[member.Name] = CopyAny(member.Value);
        }

        return copy;
    }

    private static JsonNode? CopyAny(SourceNode node) =>
        node.Kind switch
        {
            SourceKind.Object => Copy(node),
            SourceKind.Array => new JsonArray([.. node.Items.Select(CopyAny)]),
            SourceKind.String => JsonValue.Create(node.Text),
            SourceKind.Number => JsonNode.Parse(node.Text),
            SourceKind.Null => null,
            _ => JsonValue.Create(node.Kind == SourceKind.True),
        };
}
