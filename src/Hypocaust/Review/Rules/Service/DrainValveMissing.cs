using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Service;

/// <summary>The system must be emptied for repair.</summary>
public sealed class DrainValveMissing()
    : ReviewRule(
        new()
        {
            Id = "drain-valve-missing",
            Title = "There is no way to drain the system",
            Severity = Severity.Poor,
            Why =
                "Every repair begins with draining; without a valve the water runs over the floor.",
            LooksAt =
                "Whether there is a drain valve, a purge valve or a manifold with fill and drain valves.",
            Source = "EN 12828:2012, 4.6 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        if (!graph.Tappings(TappingFunction.Drain).Any() && !HosePoints.OfBothKinds(graph).Any())
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "No item is a drain valve, a purge valve or a manifold with fill and drain valves.",
                "Put a drain valve on a tee at the lowest point of the pipe."
            );
        }
    }
}
