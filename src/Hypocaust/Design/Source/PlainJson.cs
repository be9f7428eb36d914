using System.Text.Encodings.Web;
using System.Text.Json;

namespace Hypocaust.Design.Source;

/// <summary>How we write JSON texts: signs such as ° and ² as they are, for people read these files.</summary>
internal static class PlainJson
{
    /// <summary>A text with its quotes.</summary>
    public static string Quote(string text) =>
        $"\"{JsonEncodedText.Encode(text, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";
}
