using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Design;

/// <summary>Opens and saves design files. A save either happens whole or not at all, and the versions before it stay beside the file as <c>NAME.hypocaust.json.1~</c> (the newest) to <c>.5~</c>.</summary>
public static class DesignOnDisk
{
    /// <summary>How many earlier versions are kept.</summary>
    public const int VersionsKept = 5;

    /// <summary>Opens a design file.</summary>
    /// <param name="path">The file.</param>
    public static Result<OpenedDesign> Open(string path) =>
        Guarded<OpenedDesign>(
            path,
            SavingProblems.CannotRead,
            () =>
            {
                using var stream = File.OpenRead(path);
                return DesignFile
                    .Read(stream)
                    .Then<OpenedDesign>(document => new OpenedDesign(
                        document,
                        FileStamp.Of(document.Bytes.Span)
                    ));
            }
        );

    /// <summary>Saves a design: writes a temporary file beside it, flushes it to the disk, keeps the version before and renames.</summary>
    /// <param name="path">The file.</param>
    /// <param name="document">The design.</param>
    /// <param name="expected">The file as it was when it was opened or last saved; null to save a new file or to overwrite whatever is there.</param>
    /// <returns>The new stamp, or the problem; after a problem the file is as it was.</returns>
    public static Result<FileStamp> Save(
        string path,
        DesignDocument document,
        FileStamp? expected = null
    ) =>
        Guarded<FileStamp>(
            path,
            SavingProblems.CannotWrite,
            () =>
                expected is not null && StampOf(path) != expected
                    ? SavingProblems.ChangedSince(path)
                    : Replace(FinalTarget(path), document.Bytes.Span)
        );

    private static FileStamp Replace(string path, ReadOnlySpan<byte> bytes)
    {
        var temporary = $"{path}.{Guid.NewGuid():N}.tmp";
        try
        {
            Write(temporary, bytes);
            KeepVersions(path);
            File.Move(temporary, path, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }

        return FileStamp.Of(bytes);
    }

    // A link stays a link: the file to which it leads is replaced
    private static string FinalTarget(string path) =>
        File.Exists(path)
            ? File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path
            : path;

    private static FileStamp? StampOf(string path) =>
        File.Exists(path) ? FileStamp.Of(File.ReadAllBytes(path)) : null;

    private static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        file.Write(bytes);
        file.Flush(flushToDisk: true);
    }

    // The file itself is copied, not moved, so that it exists at every moment
    private static void KeepVersions(string path)
    {
        if (!File.Exists(path))
        {
            return;
        }

        for (var i = VersionsKept - 1; i >= 1; i--)
        {
            if (File.Exists(Version(path, i)))
            {
                File.Move(Version(path, i), Version(path, i + 1), overwrite: true);
            }
        }

        File.Copy(path, Version(path, 1), overwrite: true);
    }

    private static string Version(string path, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{path}.{number}~");

    private static Result<T> Guarded<T>(
        string path,
        Func<string, Exception, Problem> problem,
        Func<Result<T>> work
    )
        where T : notnull
    {
        try
        {
            return work();
        }
        catch (Exception failure)
            when (failure
                    is IOException
                        or UnauthorizedAccessException
                        or ArgumentException
                        or NotSupportedException
                        or System.Security.SecurityException
            )
        {
            return problem(path, failure);
        }
    }
}
