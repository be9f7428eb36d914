using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Service;

/// <summary>The system must be filled and topped up.</summary>
public sealed class FillValveMissing()
    : ReviewRule(
        new()
        {
            Id = "fill-valve-missing",
            Title = "There is no way to fill the system",
            Severity = Severity.WillNotWork,
            Why = "Without a valve for a hose nobody can fill it, raise its pressure or top it up.",
            LooksAt =
                "Whether there is a fill valve, a purge valve or a manifold with fill and drain valves.",
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
        if (!graph.Tappings(TappingFunction.Fill).Any() && !HosePoints.OfBothKinds(graph).Any())
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "No item is a fill valve, a purge valve or a manifold with fill and drain valves.",
                "Put a fill valve on a tee beside the expansion vessel; keep a backflow preventer before any hose from drinking water."
            );
        }
    }
}
