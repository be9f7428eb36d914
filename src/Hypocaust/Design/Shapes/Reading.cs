using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design.Shapes;

/// <summary>What happens while nodes become records: problems with their places, and which values could not be read.</summary>
internal sealed class Reading(SourceText source, ProblemList problems)
{
    private readonly HashSet<string> holes = new(StringComparer.Ordinal);

    /// <summary>Whether some record could not even be made with stand-ins, so that references cannot be followed.</summary>
    public bool IsBroken { get; private set; }

    /// <summary>Whether further problems are only counted.</summary>
    public bool IsFull => problems.IsFull;

    /// <summary>Paths of values that hold a stand-in because what stood there could not be read.</summary>
    public IReadOnlySet<string> Holes => holes;

    /// <summary>Adds a problem at a byte of the file.</summary>
    public void Add(Problem problem, Place place, int offset)
    {
        if (problems.IsFull)
        {
            problems.Add(problem);
            return;
        }

        problems.Add(
            problem with
            {
                Place = place.ToString(),
                Position = source.PositionOf(offset),
            }
        );
    }

    /// <summary>Adds a problem for which a stand-in takes the value's place.</summary>
    public void AddHole(Problem problem, Place place, int offset)
    {
        Add(problem, place, offset);
        AddSilentHole(place);
    }

    /// <summary>Notes a stand-in whose problem has been told elsewhere.</summary>
    public void AddSilentHole(Place place)
    {
        if (holes.Count < ProblemList.Longest)
        {
            holes.Add(place.ToString());
        }
    }

    /// <summary>Notes that a record has no stand-in.</summary>
    public void Break() => IsBroken = true;
}
