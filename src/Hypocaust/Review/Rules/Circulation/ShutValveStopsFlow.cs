using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A shut valve in the only way stops everything behind it.</summary>
public sealed class ShutValveStopsFlow()
    : ReviewRule(
        new()
        {
            Id = "shut-valve-stops-flow",
            Title = "A shut valve stops the flow",
            Severity = Severity.WillNotWork,
            Why = "What lies behind the valve gets no water.",
            LooksAt =
                "Whether each heater, each running circulator and the loops of each manifold lie on a closed way with the valves as they stand, and would with the valves open.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    private sealed record Worker(string Name, int From, int To, Func<PlantBranch, bool> IsOther)
    {
        public bool LiesOnWay(PlantGraph graph, Func<PlantBranch, bool> passes) =>
            graph.Reach(To, branch => IsOther(branch) && passes(branch)).Contains(From);
    }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var shut = graph
            .Branches.OfType<PlantBranch.InItem>()
            .Where(branch => branch.IsShut())
            .Select(branch => branch.Name)
            .ToList();
        var stopped = Workers(graph)
            .Where(worker =>
                !worker.LiesOnWay(graph, branch => !branch.IsShut())
                && worker.LiesOnWay(graph, _ => true)
            )
            .Select(worker => worker.Name)
            .ToList();
        if (shut.Count > 0 && stopped.Count > 0)
        {
            yield return Find(
                DesignPlaces.Item(shut[0], "shut"),
                $"With {PipingQuestions.Listed(shut)} shut, no water can pass {PipingQuestions.Listed(stopped)}.",
                $"Open {PipingQuestions.Listed(shut)} for running."
            );
        }
    }

    private static IEnumerable<Worker> Workers(PlantGraph graph)
    {
        foreach (var branch in graph.Branches.OfType<PlantBranch.InItem>())
        {
            if (branch.Part is HeaterPart or CirculatorPart && !branch.Item.Off)
            {
                yield return new Worker(
                    branch.Name,
                    branch.From,
                    branch.To,
                    other => other != branch
                );
            }
        }

        foreach (var manifold in graph.ItemsOf<ManifoldPart>())
        {
            var supply = graph.NodeOf(manifold.Name, Ports.Supply);
            yield return new Worker(
                manifold.Name,
                supply,
                graph.NodeOf(manifold.Name, Ports.Return),
                other => other is not PlantBranch.InLoop loop || loop.From != supply
            );
        }
    }
}
