using Hypocaust.Problems;

namespace Hypocaust.Design;

/// <summary>Every message about files on the disk, made by name.</summary>
internal static class SavingProblems
{
    public static Problem CannotRead(string path, Exception failure) =>
        new(
            "cannot-read",
            path,
            Said(failure, "the file cannot be read"),
            failure is FileNotFoundException or DirectoryNotFoundException
                ? "check its name and folder"
                : "check that you may read it and that it is a file"
        );

    public static Problem CannotWrite(string path, Exception failure) =>
        new(
            "cannot-write",
            path,
            Said(failure, "the file cannot be saved, and stays as it was"),
            failure switch
            {
                UnauthorizedAccessException => "save it in a folder in which you may write",
                DirectoryNotFoundException => "make the folder first",
                _ => "check that the disk has room, or save it elsewhere",
            }
        );

    public static Problem ChangedSince(string path) =>
        new(
            "changed-since",
            path,
            "somebody or another program has changed the file since it was opened",
            "save under another name, or open it again and repeat your change"
        );

    private static string Said(Exception failure, string plain) =>
        failure is FileNotFoundException or DirectoryNotFoundException
            ? "there is no such file or folder"
            : $"{plain} ({failure.Message.TrimEnd('.')})";
}
