using Hypocaust.Design;
using Hypocaust.Problems;

namespace Hypocaust.Web.Session;

/// <summary>Opens the design with which the app starts.</summary>
internal static class SessionStart
{
    /// <summary>Reads the file, or the demo as a working copy, and takes hold of its journal.</summary>
    public static Result<DesignSession> Open(WebOptions options)
    {
        var file = options.File ?? options.DemoFile;
        return DesignOnDisk
            .Open(file)
            .Then<DesignSession>(opened => new DesignSession(
                opened.Document,
                Path.GetFileName(file),
                options.File is null ? null : new DesignPlace(Path.GetFullPath(file), opened.Stamp),
                EditJournal.TryOpen(JournalPath(options), options.Clock),
                options.Clock
            ));
    }

    private static string JournalPath(WebOptions options) =>
        options.File is { } file
            ? Path.GetFullPath(file) + ".unsaved"
            : Path.Combine(options.DataFolder, Path.GetFileName(options.DemoFile) + ".unsaved");
}
