using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Balancing valves and flow meters of a manifold work one way.</summary>
public sealed class LoopsRunBackwards()
    : ReviewRule(
        new()
        {
            Id = "loops-run-backwards",
            Title = "Water passes a manifold backwards",
            Severity = Severity.Poor,
            Why =
                "Flow meters on the supply bar show nothing, and valves made for one direction hammer.",
            LooksAt = "The sign of the flow through the loops of each manifold.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant | Needs.Floor,
            CausedBy = [typeof(CirculatorPipedBackwards), typeof(CloselySpacedTeesPipedBackwards)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Graph!.Branches.OfType<PlantBranch.InLoop>()
            .Where(loop => subject.Floor!.Loops[loop.Index].Running is { FlowKgPerS: < 0 })
            .GroupBy(loop =>
                subject.Graph.Nodes[loop.From].Ports.First(port => port.Port == Ports.Supply).Item
            )
            .Select(manifold =>
                Find(
                    DesignPlaces.Item(manifold.Key),
                    $"Water enters \"{manifold.Key}\" at its return bar and leaves by its supply bar.",
                    "Swap its two connections, or turn the circulator round."
                )
            );
}
