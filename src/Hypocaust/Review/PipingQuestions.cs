using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review;

/// <summary>What several rules ask of the piping.</summary>
internal static class PipingQuestions
{
    /// <summary>Items whose part is of a kind, with the part typed.</summary>
    public static IEnumerable<(PlacedPart Placed, TPart Part)> Parts<TPart>(this PlantGraph graph)
        where TPart : Part => graph.ItemsOf<TPart>().Select(item => (item, (TPart)item.Part));

    /// <summary>Parts in the pipe that do something.</summary>
    public static IEnumerable<PlacedPart> Inline(this PlantGraph graph, InlineFunction function) =>
        graph.Items.Where(item => item.Part is InlinePart inline && inline.Function == function);

    /// <summary>Parts on a tee that do something.</summary>
    public static IEnumerable<PlacedPart> Tappings(
        this PlantGraph graph,
        TappingFunction function
    ) =>
        graph.Items.Where(item => item.Part is TappingPart tapping && tapping.Function == function);

    /// <summary>Whether somebody can close a branch by hand.</summary>
    public static bool CanBeShut(this PlantBranch branch) =>
        branch
            is PlantBranch.InLoop
                or PlantBranch.InItem
                {
                    Part: InlinePart { Function: InlineFunction.ShutOff or InlineFunction.Purge }
                        or CirculatorPart { Isolating: true }
                };

    /// <summary>Whether a branch lets water one way only.</summary>
    public static bool IsOneWay(this PlantBranch branch) =>
        branch
            is PlantBranch.InItem
            {
                Part: InlinePart { Function: InlineFunction.Check }
                    or CirculatorPart { CheckValve: true }
            };

    /// <summary>Whether a branch is shut as the design stands.</summary>
    public static bool IsShut(this PlantBranch branch) =>
        branch is PlantBranch.InItem { Item.Shut: true } or PlantBranch.InLoop { Loop.Shut: true };

    /// <summary>Whether a branch belongs to an item.</summary>
    public static bool IsItem(this PlantBranch branch, string name) =>
        branch is PlantBranch.InItem item && item.Name == name;

    /// <summary>The point at the only, first or inlet port of an item.</summary>
    public static int NodeOf(this PlantGraph graph, PlacedPart placed) =>
        graph.NodeOf(placed.Name, Ports.Of(placed.Part)[0]);

    /// <summary>Whether an item can be taken out by closing valves, the rest of the plant staying full.</summary>
    /// <remarks>The water that then drains may hold small parts, but neither heater, manifold nor tees of two circuits.</remarks>
    public static bool CanBeIsolated(this PlantGraph graph, PlacedPart placed) =>
        Ports.Of(placed.Part).All(port => graph.HasValve(placed, port));

    /// <summary>The sides on which no valve parts an item with one way through from the main parts, in words.</summary>
    public static string OpenSides(this PlantGraph graph, PlacedPart placed) =>
        (graph.HasValve(placed, Ports.In), graph.HasValve(placed, Ports.Out)) switch
        {
            (false, false) => "either side",
            (false, true) => "its inlet side",
            _ => "its outlet side",
        };

    private static bool HasValve(this PlantGraph graph, PlacedPart placed, string port) =>
        graph
            .Reach(
                graph.NodeOf(placed.Name, port),
                branch => !branch.CanBeShut() && !branch.IsItem(placed.Name)
            )
            .All(node => !graph.IsOfMainParts(node, placed.Name));

    private static bool IsOfMainParts(this PlantGraph graph, int node, string except) =>
        graph
            .Nodes[node]
            .Ports.Any(port =>
                port.Item != except
                && graph.Item(port.Item).Part is HeaterPart or ManifoldPart or CloselySpacedTeesPart
            );

    /// <summary>The points that water can reach from a point when check valves let it pass one way only.</summary>
    public static ISet<int> ReachWithArrows(
        this PlantGraph graph,
        int start,
        Func<PlantBranch, bool> passes
    )
    {
        var reached = new HashSet<int> { start };
        var waiting = new Queue<int>([start]);
        while (waiting.TryDequeue(out var node))
        {
            var next = graph
                .Branches.Where(passes)
                .Where(branch => branch.From == node || (branch.To == node && !branch.IsOneWay()))
                .Select(branch => branch.From == node ? branch.To : branch.From);
            foreach (var other in next.Where(reached.Add))
            {
                waiting.Enqueue(other);
            }
        }

        return reached;
    }

    /// <summary>Pipes and tubes in use, each with where it is named.</summary>
    public static IEnumerable<(string Place, string Name, PipePart Pipe)> Pipes(
        this PlantGraph graph
    )
    {
        foreach (
            var run in graph.Branches.OfType<PlantBranch.InPipe>().DistinctBy(pipe => pipe.Join.Run)
        )
        {
            yield return (DesignPlaces.Run(run.Join.Run, "pipe"), $"pipe \"{run.Name}\"", run.Pipe);
        }

        foreach (var loop in graph.Branches.OfType<PlantBranch.InLoop>())
        {
            yield return (
                DesignPlaces.Loop(loop.Index, "tube"),
                $"tube \"{loop.Loop.Tube}\" of loop \"{loop.Loop.Name}\"",
                loop.Tube
            );
        }
    }

    /// <summary>Names in a sentence: <c>"a"</c>, <c>"a" and "b"</c>, <c>"a", "b" and "c"</c>.</summary>
    public static string Listed(IEnumerable<string> names)
    {
        var quoted = names.Select(name => $"\"{name}\"").ToList();
        return quoted.Count < 2
            ? string.Concat(quoted)
            : $"{string.Join(", ", quoted[..^1])} and {quoted[^1]}";
    }
}
