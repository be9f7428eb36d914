using System.Text.Json.Nodes;
using Hypocaust.Design.Shapes;

namespace Hypocaust.Design.Schema;

/// <summary>Collects the definitions of one JSON Schema while its root is written.</summary>
internal sealed class SchemaBook
{
    private const string Dialect = "https://json-schema.org/draft/2020-12/schema";
    private readonly SortedDictionary<string, JsonObject> definitions = new(StringComparer.Ordinal);
    private readonly Dictionary<Type, string> names = [];

    /// <summary>Writes the whole schema of a record.</summary>
    public static JsonObject Write(RecordShape root, string id, bool allowsSchemaKey)
    {
        var book = new SchemaBook();
        var body = book.WriteRecord(root);
        if (allowsSchemaKey)
        {
            body["properties"]!.AsObject()[RecordShape.SchemaKey] = new JsonObject
            {
                ["type"] = "string",
                ["description"] = "Where editors find this schema.",
            };
        }

        var schema = new JsonObject { ["$schema"] = Dialect, ["$id"] = id };
        foreach (var (key, value) in body)
        {
            schema[key] = value?.DeepClone();
        }

        if (book.definitions.Count > 0)
        {
            schema["$defs"] = new JsonObject(
                book.definitions.Select(pair => new KeyValuePair<string, JsonNode?>(
                    pair.Key,
                    pair.Value
                ))
            );
        }

        return schema;
    }

    /// <summary>A reference to the definition of a record, or the schema itself of anything else.</summary>
    public JsonObject Refer(ValueShape shape)
    {
        var type = shape switch
        {
            RecordShape record => record.Type,
            FamilyShape family => family.Type,
            _ => null,
        };
        if (type is null)
        {
            return shape.Schema(this);
        }

        if (!names.TryGetValue(type, out var name))
        {
            name = NameOf(type);
            names[type] = name;
            definitions[name] = []; // a place first: the type may contain itself
            definitions[name] = shape.Schema(this);
        }

        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    /// <summary>Writes a record.</summary>
    public JsonObject WriteRecord(RecordShape record)
    {
        var properties = new JsonObject();
        if (record.Kind is { } kind)
        {
            properties[RecordShape.KindKey] = new JsonObject { ["const"] = kind };
        }

        foreach (var property in record.Properties)
        {
            properties[property.Name] = WriteProperty(property);
        }

        var required = record
            .Properties.Where(property => property.IsRequired)
            .Select(property => property.Name);
        var all = record.Kind is null ? required : required.Prepend(RecordShape.KindKey);
        var schema = new JsonObject { ["type"] = "object" };
        AddDescription(schema, record.Meaning);
        schema["properties"] = properties;
        schema["required"] = new JsonArray([.. all.Select(name => JsonValue.Create(name))]);
        schema["additionalProperties"] = false;
        return schema;
    }

    /// <summary>Writes a family: one of its records, told apart by <c>kind</c>.</summary>
    public JsonObject WriteFamily(FamilyShape family)
    {
        var schema = new JsonObject();
        AddDescription(schema, family.Meaning);
        schema["oneOf"] = new JsonArray([.. family.Members.Select(Refer)]);
        return schema;
    }

    private JsonObject WriteProperty(PropertyShape property)
    {
        var schema = Refer(property.Shape);
        if (property.MayBeNull)
        {
            schema = new JsonObject
            {
                ["anyOf"] = new JsonArray(schema, new JsonObject { ["type"] = "null" }),
            };
        }

        AddDescription(schema, property.Meaning);
        if (property.Within is { } within)
        {
            property.Shape.AddRange(schema, within);
        }

        if (property.DefaultText is { } text)
        {
            schema["default"] = text;
        }
        else if (property is { IsRequired: false, Missing: bool standard })
        {
            schema["default"] = standard;
        }

        return schema;
    }

    // The meaning of the place comes before what its type says of itself
    private static void AddDescription(JsonObject schema, string meaning)
    {
        if (meaning.Length > 0)
        {
            schema["description"] = $"{meaning} {schema["description"]}".Trim();
        }
    }

    private string NameOf(Type type)
    {
        var name = type.Name.Split('`')[0];
        var simple = char.ToLowerInvariant(name[0]) + name[1..];
        var number = 1;
        var unique = simple;
        while (names.ContainsValue(unique))
        {
            unique = $"{simple}{++number}";
        }

        return unique;
    }
}
