using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design.Shapes;

/// <summary>How a value of one type stands in a file: the one description from which it is read and its schema is written.</summary>
internal abstract class ValueShape
{
    /// <summary>What belongs there, for a sentence: <c>a length</c>, <c>true or false</c>.</summary>
    public abstract string Described { get; }

    /// <summary>What a person would write there, for a remedy.</summary>
    public abstract string Example { get; }

    /// <summary>What stands in for a value that could not be read, so that the rest can still be checked; null where nothing can.</summary>
    public virtual object? StandIn => null;

    /// <summary>Reads a node; null after a problem has been added.</summary>
    public abstract object? Read(SourceNode node, Place place, Reading reading);

    /// <summary>Reads a default as it stands in a <see cref="DefaultAttribute"/>.</summary>
    /// <exception cref="InvalidOperationException">A declaration is wrong: the type takes no default text.</exception>
    public virtual object ReadDefault(string text) =>
        throw new InvalidOperationException($"{Described} takes no default text (\"{text}\").");

    /// <summary>The problem of a value outside its range, or null.</summary>
    /// <exception cref="InvalidOperationException">A declaration is wrong: the type has no range.</exception>
    public virtual Problem? OutOfRange(object value, WithinAttribute within) =>
        throw new InvalidOperationException($"{Described} has no range.");

    /// <summary>Writes the JSON Schema of the type.</summary>
    public abstract JsonObject Schema(SchemaBook book);

    /// <summary>Adds a range to a schema.</summary>
    public virtual void AddRange(JsonObject schema, WithinAttribute within) { }

    /// <summary>Reports a node of the wrong kind.</summary>
    protected void WrongType(SourceNode node, Place place, Reading reading) =>
        reading.AddHole(DesignProblems.WrongType(node, Described, Example), place, node.Start);
}
