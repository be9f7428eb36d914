namespace Hypocaust.Problems;

/// <summary>An expected failure: something in the person's input that cannot be used as it stands, and what would do instead.</summary>
/// <param name="Code">Stable kebab-case name of this kind of problem, for example <c>unknown-key</c>.</param>
/// <param name="Place">JSON path of the value concerned (<c>$.floor.loops[2].spacing</c>), or the name of an argument.</param>
/// <param name="What">What is wrong, in one plain sentence without a full stop.</param>
/// <param name="Remedy">What would do, in one plain sentence without a full stop.</param>
public sealed record Problem(string Code, string Place, string What, string Remedy)
{
    /// <summary>Where the value stands in the text, if it came from a text.</summary>
    public TextPosition? Position { get; init; }

    /// <summary>The problem as a line for people: what is wrong; what would do.</summary>
    public override string ToString() => $"{Place}: {What}; {Remedy}";
}

/// <summary>A place in a text as an editor counts it.</summary>
/// <param name="Line">Line number, from 1.</param>
/// <param name="Column">Column in characters, from 1.</param>
public readonly record struct TextPosition(int Line, int Column);
