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
        return ReadText(file)
            .Then(DesignFile.Read)
            .Then<DesignSession>(document => new DesignSession(
                document,
                Path.GetFileName(file),
                options.File is null ? null : Path.GetFullPath(file),
                EditJournal.TryOpen(JournalPath(options), options.Clock),
                options.Clock
            ));
    }

    private static string JournalPath(WebOptions options) =>
        options.File is { } file
            ? Path.GetFullPath(file) + ".unsaved"
            : Path.Combine(options.DataFolder, Path.GetFileName(options.DemoFile) + ".unsaved");

    private static Result<string> ReadText(string file)
    {
        try
        {
            return File.ReadAllText(file);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return WebProblems.CannotRead(file, failure.Message.TrimEnd('.'));
        }
    }
}
