using System.Text.Encodings.Web;
using System.Text.Json;

namespace Hypocaust.Design.Source;

/// <summary>How we write JSON texts: signs such as ° and ² as they are, for people read these files.</summary>
internal static class PlainJson
{
    public static JsonSerializerOptions Options { get; } =
        new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A text with its quotes.</summary>
    public static string Quote(string text) => JsonSerializer.Serialize(text, Options);
}
