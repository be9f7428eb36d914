using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Air must be flushed out of the loops at filling.</summary>
public sealed class CannotBePurged()
    : ReviewRule(
        new()
        {
            Id = "cannot-be-purged",
            Title = "A circuit cannot be flushed free of air",
            Severity = Severity.Poor,
            Why =
                "At filling, a strong stream must push the air out of the loops one by one; without a way in and a way out it stays.",
            LooksAt =
                "Whether each circuit has a purge valve, a manifold with fill and drain valves, or a fill and a drain valve with a shut-off valve besides.",
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
        var seen = new HashSet<int>();
        foreach (var main in graph.Items.Where(item => item.Part is HeaterPart or ManifoldPart))
        {
            // flushing does not pass from one circuit to another through closely spaced tees
            var circuit = graph.Reach(
                graph.NodeOf(main),
                branch => branch is not (PlantBranch.InTee or PlantBranch.Between)
            );
            if (seen.Contains(graph.NodeOf(main)) || CanBePurged(graph, circuit))
            {
                seen.UnionWith(circuit);
                continue;
            }

            seen.UnionWith(circuit);
            yield return Find(
                DesignPlaces.Item(main.Name),
                $"The circuit of \"{main.Name}\" has no purge valve and no pair of hose valves with a shut-off valve between.",
                "Put a purge valve in its return, or a drain and a fill valve with a shut-off valve between them."
            );
        }
    }

    private static bool CanBePurged(PlantGraph graph, ISet<int> circuit)
    {
        bool Lies(PlacedPart item) => circuit.Contains(graph.NodeOf(item));
        var hoses =
            graph.Tappings(TappingFunction.Fill).Any(Lies)
            && graph.Tappings(TappingFunction.Drain).Any(Lies);
        return HosePoints.OfBothKinds(graph).Any(Lies)
            || (hoses && graph.Inline(InlineFunction.ShutOff).Any(Lies));
    }
}
