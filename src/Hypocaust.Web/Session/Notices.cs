using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Web.Session;

/// <summary>What the session has to tell besides the answer, made by name.</summary>
internal static class Notices
{
    /// <summary>Edits are not kept on disk.</summary>
    public const string NoJournal =
        "Edits are not kept on disk until you save: another Hypocaust has this design open, or its folder cannot be written.";

    /// <summary>The file changed under an old journal.</summary>
    public static string SetAside(string path) =>
        $"The file has changed since your last unsaved edits, so they were not brought back; they are kept in {path}.";

    /// <summary>The file could not be written.</summary>
    public static string NotSaved(ImmutableArray<Problem> problems) =>
        "Not saved: "
        + string.Join("; ", problems.Select(problem => $"{problem.What}; {problem.Remedy}"))
        + ".";
}
