namespace Hypocaust.Floor;

/// <summary>Something the person should know about a result that is otherwise sound.</summary>
/// <param name="Code">Stable kebab-case name of this kind of note.</param>
/// <param name="Text">One or two plain sentences.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record FloorNote(string Code, string Text, string Source);
