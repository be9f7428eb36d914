using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Air must be flushed out of the loops at filling.</summary>
public sealed class CannotBePurged()
    : ReviewRule(
        new()
        {
            Id = "cannot-be-purged",
            Title = "The system cannot be flushed free of air",
            Severity = Severity.Poor,
            Why =
                "At filling, a strong stream must push the air out of the loops one by one; without a way in and a way out it stays.",
            LooksAt =
                "Whether there is a purge valve, a manifold with fill and drain valves, or fill and drain valve with a shut-off valve besides.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
            CausedBy = [typeof(FillValveMissing), typeof(DrainValveMissing)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var hoses =
            graph.Tappings(TappingFunction.Fill).Any()
            && graph.Tappings(TappingFunction.Drain).Any();
        var canForceWay = graph.Inline(InlineFunction.ShutOff).Any();
        if (!HosePoints.OfBothKinds(graph).Any() && !(hoses && canForceWay))
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "The plant has no purge valve and no pair of hose valves with a shut-off valve between.",
                "Put a purge valve in the return, or a drain and a fill valve with a shut-off valve between them."
            );
        }
    }
}
