using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Problems;
using Hypocaust.Quantities;
using Hypocaust.Web.Entries;

namespace Hypocaust.Web.Session;

/// <summary>A design at one moment with its answer; a page shows a moment and nothing else.</summary>
/// <param name="Document">The design and its text.</param>
/// <param name="Answer">Its answer.</param>
/// <param name="What">The edit that led here, in words; empty at the start.</param>
public sealed record Moment(DesignDocument Document, Answer Answer, string What)
{
    private FieldTree? fields;

    /// <summary>The design.</summary>
    public HeatingDesign Design => Document.Design;

    /// <summary>The units in which numbers are shown.</summary>
    public UnitSystem Units => Document.Design.Units;

    /// <summary>All values of the design as fields; made when first asked for.</summary>
    public FieldTree Fields => fields ??= FieldTree.Of(Design);
}

/// <summary>An edit of one value.</summary>
/// <param name="Path">Path of the value in the design, for example <c>$.plant.fluid.share</c>.</param>
/// <param name="Text">What the person typed.</param>
/// <param name="What">The edit in words: <c>set point 38 °C → 42 °C</c>.</param>
public sealed record DesignEdit(string Path, string Text, string What);

/// <summary>An edit that could not be used: what was typed stays in its field.</summary>
/// <param name="Text">What the person typed.</param>
/// <param name="Problems">Why it could not be used, and what would do.</param>
public sealed record Rejection(string Text, ImmutableArray<Problem> Problems);

/// <summary>A file that could not be opened.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Problems">Every problem in it.</param>
public sealed record Unreadable(string Name, ImmutableArray<Problem> Problems);

/// <summary>Edits of an earlier run, brought back from the journal.</summary>
/// <param name="Since">When the last of them was made.</param>
/// <param name="Count">How many steps.</param>
public sealed record Restored(DateTimeOffset Since, int Count);
