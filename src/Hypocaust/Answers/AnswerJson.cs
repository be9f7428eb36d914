using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Hypocaust.Design;

namespace Hypocaust.Answers;

/// <summary>The answer as JSON: SI values, stable names ending in their unit.</summary>
public static class AnswerJson
{
    /// <summary>Identifies the schema; nothing is fetched from it.</summary>
    public const string SchemaId = "urn:hypocaust:answer:1";

    private static readonly AnswerJsonContext Context = new(
        new JsonSerializerOptions
        {
            WriteIndented = true,
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
        }
    );

    /// <summary>Writes an answer.</summary>
    public static string Write(Answer answer) => JsonSerializer.Serialize(answer, Context.Answer);

    /// <summary>Writes the review alone.</summary>
    public static string Write(ReviewAnswer review) =>
        JsonSerializer.Serialize(review, Context.ReviewAnswer);

    /// <summary>The JSON Schema of an answer (draft 2020-12).</summary>
    public static string Schema() => RecordSchema.For(typeof(Answer), SchemaId);
}

/// <summary>Serialisation made at build time, so that the command line starts fast.</summary>
[JsonSerializable(typeof(Answer))]
internal sealed partial class AnswerJsonContext : JsonSerializerContext;
