using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Piping;

/// <summary>A part on the list that hangs on no pipe does nothing.</summary>
public sealed class PartNotPiped()
    : ReviewRule(
        new()
        {
            Id = "part-not-piped",
            Title = "A part is not connected to the circuit",
            Severity = Severity.WillNotWork,
            Why = "What hangs on no pipe does nothing, and an open end lets the water out.",
            LooksAt =
                "Whether every port of every item, tees aside, is joined to something, and whether pipes lead from it to a heater.",
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
        var reached = graph
            .ItemsOf<HeaterPart>()
            .SelectMany(heater => graph.Reach(graph.NodeOf(heater), _ => true))
            .ToHashSet();
        foreach (var item in graph.Items)
        {
            var open = Ports
                .Of(item.Part)
                .Where(port => item.Part is not TeePart && IsOpen(graph, item, port))
                .ToList();
            var isSafety = item.Part is ReliefPart or VesselPart;
            if (open.Count > 0)
            {
                var ports =
                    open.Count == Ports.Of(item.Part).Length
                        ? ""
                        : $" at {PipingQuestions.Listed(open)}";
                yield return Find(
                    DesignPlaces.Item(item.Name),
                    $"\"{item.Name}\" ({PartKinds.NameOf(item.Part)}) is joined to nothing{ports}.",
                    $"Write \"{item.Name}\" in the run where it belongs, or take it out.",
                    isSafety ? Severity.Danger : null
                );
            }
            else if (reached.Count > 0 && !reached.Contains(graph.NodeOf(item)))
            {
                yield return Find(
                    DesignPlaces.Item(item.Name),
                    $"No pipe leads from \"{item.Name}\" ({PartKinds.NameOf(item.Part)}) to a heater.",
                    "Join its run to the circuit of the heater.",
                    isSafety ? Severity.Danger : null
                );
            }
        }
    }

    // a port is open where no other item meets it and no pipe or loop begins
    private static bool IsOpen(PlantGraph graph, PlacedPart item, string port)
    {
        var node = graph.NodeOf(item.Name, port);
        return graph.Nodes[node].Ports.All(other => other.Item == item.Name)
            && !graph.Branches.Any(branch =>
                (branch.From == node || branch.To == node)
                && branch is (PlantBranch.InPipe or PlantBranch.InLoop)
            );
    }
}
