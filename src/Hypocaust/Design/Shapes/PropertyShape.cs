using Hypocaust.Design.Source;

namespace Hypocaust.Design.Shapes;

/// <summary>One property of a record: its name in the file, its type, and what the declaration says about it.</summary>
/// <param name="Name">Name in the file, camel case.</param>
/// <param name="Shape">Its type.</param>
/// <param name="IsRequired">Whether it must be written.</param>
/// <param name="MayBeNull">Whether an answer may hold null; a design leaves the property out instead.</param>
/// <param name="Meaning">What it means, or empty.</param>
/// <param name="DefaultText">The default as a person would write it, or null.</param>
/// <param name="Within">Its range, or null.</param>
/// <param name="Missing">The value taken when it is not written.</param>
internal sealed record PropertyShape(
    string Name,
    ValueShape Shape,
    bool IsRequired,
    bool MayBeNull,
    string Meaning,
    string? DefaultText,
    WithinAttribute? Within,
    object? Missing
)
{
    /// <summary>Reads the property from its node.</summary>
    public object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind == SourceKind.Null)
        {
            reading.AddHole(
                DesignProblems.NullValue(Name, IsRequired, Shape.Described),
                place,
                node.Start
            );
            return Shape.StandIn;
        }

        var value = Shape.Read(node, place, reading);
        if (value is null)
        {
            return Shape.StandIn;
        }

        if (Within is not null && Shape.OutOfRange(value, Within) is { } problem)
        {
            reading.AddHole(problem, place, node.Start);
        }

        return value;
    }
}
