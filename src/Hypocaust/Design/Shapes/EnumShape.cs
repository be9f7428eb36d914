using System.Text.Json;
using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;

namespace Hypocaust.Design.Shapes;

/// <summary>One of a few words, written in camel case; reading does not mind capitals, blanks, hyphens and underscores.</summary>
internal sealed class EnumShape : ValueShape
{
    private readonly Dictionary<string, object> values = new(StringComparer.OrdinalIgnoreCase);
    private readonly string[] names;

    public EnumShape(Type type)
    {
        names = [.. Enum.GetNames(type).Select(JsonNamingPolicy.CamelCase.ConvertName)];
        foreach (var name in names)
        {
            values[name] = Enum.Parse(type, name, ignoreCase: true);
        }
    }

    public override string Described => $"one of {string.Join(", ", names)}";

    public override string Example => $"\"{names[0]}\"";

    public override object StandIn => values[names[0]];

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind != SourceKind.String)
        {
            WrongType(node, place, reading);
            return null;
        }

        if (values.GetValueOrDefault(Fold(node.Text)) is { } value)
        {
            return value;
        }

        reading.AddHole(DesignProblems.BadChoice(node.Text, names), place, node.Start);
        return null;
    }

    public override object ReadDefault(string text) => values[text];

    public override JsonObject Schema(SchemaBook book) =>
        new() { ["enum"] = new JsonArray([.. names.Select(name => JsonValue.Create(name))]) };

    private static string Fold(string text) =>
        text.Length > 60
            ? text
            : string.Concat(text.Where(c => c is not ' ' and not '-' and not '_'));
}
