using System.Globalization;

namespace Hypocaust.Web.Entries;

/// <summary>Paths of values in a design, written as the reader of design files writes them.</summary>
internal static class DesignPath
{
    /// <summary>A member of a thing: <c>$.floor</c>, or <c>$.parts['big pump']</c> where the name has other signs than letters and digits.</summary>
    public static string Member(string parent, string name) =>
        IsPlain(name)
            ? $"{parent}.{name}"
            : $"{parent}['{name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}']";

    /// <summary>An item of a list.</summary>
    public static string Item(string parent, int index) =>
        string.Create(CultureInfo.InvariantCulture, $"{parent}[{index}]");

    /// <summary>The page on which a value stands.</summary>
    public static string PageOf(string path) =>
        path.Split('.', '[') switch
        {
            [_, "floor", ..] => "floor",
            [_, "plant" or "parts", ..] => "plant",
            _ => "space",
        };

    /// <summary>The address of a value on its page.</summary>
    public static string AddressOf(string path) =>
        $"/{PageOf(path)}?field={Uri.EscapeDataString(path)}";

    private static bool IsPlain(string name) =>
        name.Length > 0
        && (char.IsLetter(name[0]) || name[0] is '_' or '$')
        && name.All(c => char.IsLetterOrDigit(c) || c is '_' or '$');
}
