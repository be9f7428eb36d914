using System.Collections.Immutable;

namespace Hypocaust.Web.Entries;

/// <summary>One value of the design that a person can change.</summary>
/// <param name="Path">Its path, for example <c>$.plant.items.heater.setPoint</c>.</param>
/// <param name="Label">Its name in words.</param>
/// <param name="Meaning">What it means, in one sentence.</param>
/// <param name="Text">The value as written or assumed; empty where none is given.</param>
/// <param name="Assumed">Whether it is a default that nobody wrote.</param>
/// <param name="Example">How such a value is written; empty for a choice.</param>
/// <param name="Choices">The values that it may have; empty where anything may be written.</param>
public sealed record Field(
    string Path,
    string Label,
    string Meaning,
    string Text,
    bool Assumed,
    string Example,
    ImmutableArray<Choice> Choices
);

/// <summary>One of the values that a field may have.</summary>
/// <param name="Text">As it stands in the file.</param>
/// <param name="Label">In words.</param>
public sealed record Choice(string Text, string Label);

/// <summary>Fields that belong together.</summary>
/// <param name="Path">Path of the thing that they describe.</param>
/// <param name="Label">Its name in words.</param>
/// <param name="Meaning">What it means, in one sentence.</param>
/// <param name="Fields">Its own fields.</param>
/// <param name="Groups">Things within it.</param>
public sealed record FieldGroup(
    string Path,
    string Label,
    string Meaning,
    ImmutableArray<Field> Fields,
    ImmutableArray<FieldGroup> Groups
)
{
    /// <summary>Whether a path names this thing or something within it; of the design itself, one of its own fields.</summary>
    public bool Holds(string path) =>
        Path == FieldTree.Itself
            ? Fields.Any(field => field.Path == path)
            : path.StartsWith(Path, StringComparison.Ordinal)
                && (path.Length == Path.Length || path[Path.Length] is '.' or '[');

    /// <summary>Every field in it and within it.</summary>
    public IEnumerable<Field> All() => Fields.Concat(Groups.SelectMany(group => group.All()));
}
