using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Of two circulators side by side, one must not push water back through the other.</summary>
public sealed class ParallelCirculatorsWithoutCheckValve()
    : ReviewRule(
        new()
        {
            Id = "parallel-circulators-without-check-valve",
            Title = "Circulators side by side have no check valves",
            Severity = Severity.Poor,
            Why =
                "When one of them stands, the other pushes water backwards through it: the wrong zone warms, the right one does not.",
            LooksAt =
                "Pairs of circulators whose inlets and whose outlets are joined by a way without heater and check valve.",
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
        var pumps = graph.ItemsOf<CirculatorPart>().Select(pump => pump.Name).ToList();
        foreach (var pump in pumps)
        {
            var beside = pumps
                .Where(other => other != pump && CanPushBackThrough(graph, other, pump))
                .ToList();
            if (beside.Count > 0)
            {
                yield return Find(
                    DesignPlaces.Item(pump),
                    $"When \"{pump}\" stands, {PipingQuestions.Listed(beside)} can push water backwards through it.",
                    $"Put a check valve behind \"{pump}\", its arrow with the flow."
                );
            }
        }
    }

    private static bool CanPushBackThrough(PlantGraph graph, string pump, string resting)
    {
        bool Passes(PlantBranch branch) =>
            !branch.IsItem(pump)
            && !branch.IsItem(resting)
            && branch is not PlantBranch.InItem { Part: HeaterPart };
        bool Leads(string from, string to, string port) =>
            graph
                .ReachWithArrows(graph.NodeOf(from, port), Passes)
                .Contains(graph.NodeOf(to, port));
        return !graph.Branches.Any(branch => branch.IsItem(resting) && branch.IsOneWay())
            && Leads(pump, resting, Ports.Out)
            && Leads(resting, pump, Ports.In);
    }
}
