using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Web.Session;

/// <summary>Everything the pages show, as one value that does not change under them.</summary>
/// <param name="History">The design, what was and what was undone.</param>
/// <param name="Change">What the last step changed, in one line; empty at the start.</param>
/// <param name="FileName">Name under which the design is saved.</param>
/// <param name="Place">The file itself; null for a working copy without one.</param>
/// <param name="SavedText">The text as it stands in the file; null where nothing was saved yet.</param>
/// <param name="SavedAt">When it was last saved in this run.</param>
/// <param name="Rejections">Entries that could not be used, by path.</param>
/// <param name="Unreadable">The file that could not be opened, until dismissed.</param>
/// <param name="Restored">Edits of an earlier run that were brought back, until kept or discarded.</param>
/// <param name="Notice">What else the person should know (a save that failed, no journal); null for nothing.</param>
public sealed record SessionView(
    History<Moment> History,
    string Change,
    string FileName,
    DesignPlace? Place,
    string? SavedText,
    DateTimeOffset? SavedAt,
    ImmutableDictionary<string, Rejection> Rejections,
    Unreadable? Unreadable,
    Restored? Restored,
    string? Notice
)
{
    /// <summary>The design and its answer now.</summary>
    public Moment Present => History.Present;

    /// <summary>Whether the file holds what the page shows.</summary>
    public bool IsSaved =>
        string.Equals(SavedText, Present.Document.Text, StringComparison.Ordinal);
}

/// <summary>The file in which a design stands.</summary>
/// <param name="Path">The file.</param>
/// <param name="Stamp">What it held when it was last read or written.</param>
public sealed record DesignPlace(string Path, FileStamp Stamp);
