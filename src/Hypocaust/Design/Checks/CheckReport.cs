using Hypocaust.Design.Shapes;
using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design.Checks;

/// <summary>Where the checks put what they find; what only follows from a value that could not be read is left out.</summary>
internal sealed class CheckReport(SourceNode root, Reading reading)
{
    /// <summary>Adds a problem unless a stand-in at its place, above or below it may be the cause.</summary>
    public void Add(Place place, Problem problem)
    {
        if (reading.IsFull || !IsClouded(place))
        {
            reading.Add(problem, place, StartOf(place));
        }
    }

    /// <summary>Reports a name that leads nowhere among named things, unless those could not all be read.</summary>
    public void Refer<T>(string what, string name, Named<T> known, Place place, Place knownAt)
        where T : notnull
    {
        if (!known.Has(name))
        {
            Refer(what, name, known.Names, place, knownAt);
        }
    }

    /// <summary>Reports a part that is neither on the shelf nor in the built-in list.</summary>
    public void Refer(string what, string name, PartLookup parts, Place place) =>
        Refer(what, name, parts.Names, place, Place.Root.Member("parts"));

    /// <summary>Reports a name that leads nowhere, unless the things it may name could not be read.</summary>
    public void Refer(
        string what,
        string name,
        IEnumerable<string> known,
        Place place,
        Place knownAt
    )
    {
        if (!IsHole(knownAt))
        {
            Add(place, CheckProblems.UnknownName(what, name, reading.IsFull ? [] : known));
        }
    }

    private bool IsHole(Place place) => reading.Holes.Contains(place.ToString());

    /// <summary>Whether a stand-in is at a place, above or below it.</summary>
    public bool IsClouded(Place place)
    {
        if (reading.Holes.Count == 0)
        {
            return false;
        }

        var path = place.ToString();
        return reading.Holes.Any(hole => IsWithin(hole, path) || IsWithin(path, hole));
    }

    private static bool IsWithin(string inner, string outer) =>
        inner.StartsWith(outer, StringComparison.Ordinal)
        && (inner.Length == outer.Length || inner[outer.Length] is '.' or '[');

    // A value that is missing has no place in the text; its nearest parent has
    private int StartOf(Place place)
    {
        for (var at = place; at.Parent is not null; at = at.Parent)
        {
            if (root.Find(at) is { } node)
            {
                return node.Start;
            }
        }

        return root.Start;
    }
}
