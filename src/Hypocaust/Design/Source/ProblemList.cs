using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Design.Source;

/// <summary>Problems as they are found; a hopeless file does not make thousands of them.</summary>
internal sealed class ProblemList
{
    /// <summary>How many are listed before the rest is only counted.</summary>
    public const int Longest = 200;

    private readonly List<Problem> found = [];
    private int count;

    public bool IsEmpty => count == 0;

    /// <summary>Whether further problems are only counted, so that nobody need search for a remedy.</summary>
    public bool IsFull => count >= Longest;

    public void Add(Problem problem)
    {
        if (!IsFull)
        {
            found.Add(problem);
        }

        count++;
    }

    /// <summary>All of them in the order of the file, and one that says how many are left out.</summary>
    public ImmutableArray<Problem> ToArray()
    {
        var ordered = found
            .OrderBy(problem => problem.Position?.Line ?? 0)
            .ThenBy(problem => problem.Position?.Column ?? 0)
            .ToImmutableArray();
        return count > found.Count
            ? ordered.Add(DesignProblems.AndMore(count - found.Count))
            : ordered;
    }
}
