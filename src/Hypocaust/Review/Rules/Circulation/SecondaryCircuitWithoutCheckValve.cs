using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A circuit at rest must not be warmed by its neighbour.</summary>
public sealed class SecondaryCircuitWithoutCheckValve()
    : ReviewRule(
        new()
        {
            Id = "secondary-circuit-without-check-valve",
            Title = "A secondary circuit has no check valve",
            Severity = Severity.Poor,
            Why =
                "Warm water rises into the resting circuit, and the little pressure between the tees drives it on: the floor warms when nobody asks.",
            LooksAt =
                "Whether every way from the first of two closely spaced tees through the secondary circuit and back passes a check valve.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        foreach (var tees in graph.ItemsOf<CloselySpacedTeesPart>())
        {
            bool Passes(PlantBranch branch) =>
                branch is not (PlantBranch.InTee or PlantBranch.Between) && !branch.IsOneWay();
            var reached = graph.Reach(graph.NodeOf(tees.Name, Ports.SecondaryOut), Passes);
            if (reached.Contains(graph.NodeOf(tees.Name, Ports.SecondaryIn)))
            {
                yield return Find(
                    DesignPlaces.Item(tees.Name),
                    $"No check valve lies between the secondary supply and return of \"{tees.Name}\".",
                    "Put a check valve behind the circulator of the secondary circuit, its arrow with the flow."
                );
            }
        }
    }
}
