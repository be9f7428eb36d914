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
        if (!IsClouded(place))
        {
            reading.Add(problem, place, StartOf(place));
        }
    }

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
