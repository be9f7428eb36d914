using System.Text;

namespace Hypocaust.Web.Entries;

/// <summary>Names of the code as names for people and for the file.</summary>
internal static class Words
{
    /// <summary><c>DesignOutdoor</c> as <c>Design outdoor</c>.</summary>
    public static string Label(string name)
    {
        var words = new StringBuilder(name.Length + 4);
        foreach (var c in name)
        {
            if (words.Length == 0)
            {
                words.Append(char.ToUpperInvariant(c));
            }
            else if (char.IsUpper(c))
            {
                words.Append(' ').Append(char.ToLowerInvariant(c));
            }
            else
            {
                words.Append(c);
            }
        }

        return words.ToString();
    }

    /// <summary><c>DesignOutdoor</c> as <c>designOutdoor</c>.</summary>
    public static string InFile(string name) =>
        name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];
}
