using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A check valve the wrong way round stops its circulator.</summary>
public sealed class CheckValveHoldsBack()
    : ReviewRule(
        new()
        {
            Id = "check-valve-holds-back",
            Title = "A check valve holds back the water of a running circulator",
            Severity = Severity.WillNotWork,
            Why = "The circulator presses against a closed flap and nothing behind it gets warm.",
            LooksAt =
                "Check valves without flow in the same still stretch of pipe as a running circulator without flow.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(ShutValveStopsFlow)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        foreach (
            var pump in subject.Plant!.Circulators.Where(one => one.Running && one.FlowM3PerS == 0)
        )
        {
            bool IsStill(PlantBranch branch) =>
                !branch.IsItem(pump.Item)
                && !branch.IsShut()
                && (
                    branch is not PlantBranch.InItem item
                    || subject.ItemAnswer(item.Name).FlowKgPerS is null or 0
                );
            var holding = graph
                .Branches.OfType<PlantBranch.InItem>()
                .Where(branch => branch.IsOneWay() && IsStill(branch))
                .Where(branch => PressesOnOutlet(graph, pump.Item, branch, IsStill))
                .Select(branch => branch.Name)
                .ToList();
            if (holding.Count > 0)
            {
                yield return Find(
                    DesignPlaces.Item(holding[0]),
                    $"{PipingQuestions.Listed(holding)} let no water pass while \"{pump.Item}\" runs.",
                    $"Turn {PipingQuestions.Listed(holding)} round so that the arrow points with the flow of \"{pump.Item}\"."
                );
            }
        }
    }

    // from the circulator's outlet the still water leads to the side of the check valve where its arrow ends
    private static bool PressesOnOutlet(
        PlantGraph graph,
        string pump,
        PlantBranch check,
        Func<PlantBranch, bool> isStill
    )
    {
        var reached = graph.Reach(
            graph.NodeOf(pump, Ports.Out),
            branch => branch != check && isStill(branch)
        );
        return reached.Contains(check.To) && !reached.Contains(check.From);
    }
}
