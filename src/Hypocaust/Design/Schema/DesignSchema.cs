using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Shapes;

namespace Hypocaust.Design;

/// <summary>The JSON Schema of the design file, so that editors complete and check it.</summary>
public static class DesignSchema
{
    /// <summary>Identifies the schema; nothing is fetched from it.</summary>
    public const string Id = "urn:hypocaust:design:1";

    /// <summary>Writes the schema (draft 2020-12), from the same description of the records from which designs are read.</summary>
    public static string Write() =>
        RecordSchema.Print(
            SchemaBook.Write(ShapeBook.Designs.Record<HeatingDesign>(), Id, allowsSchemaKey: true)
        );
}

/// <summary>The JSON Schema of any record that we write, such as the answer.</summary>
public static class RecordSchema
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes the schema (draft 2020-12) of a record as System.Text.Json writes it in camel case, enums as camel case texts: every public property, required, null where the declaration allows it; <see cref="MeaningAttribute"/> gives the descriptions.</summary>
    /// <param name="type">A record of bool, int, double, string, enums, records and lists of them.</param>
    /// <param name="id">Identifies the schema, for example <c>urn:hypocaust:answer:1</c>.</param>
    /// <exception cref="InvalidOperationException">A property has a type that no file holds.</exception>
    public static string For(Type type, string id) =>
        Print(
            SchemaBook.Write((RecordShape)ShapeBook.Answers.Of(type), id, allowsSchemaKey: false)
        );

    internal static string Print(JsonObject schema) => schema.ToJsonString(Readable) + "\n";
}
