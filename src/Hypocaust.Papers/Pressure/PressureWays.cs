using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Piping;
using Element = Hypocaust.Papers.Piping.Element;

namespace Hypocaust.Papers.Pressure;

/// <summary>Finds the circuits along which the pressure is worth drawing.</summary>
internal sealed class PressureWays(PipingGraph graph)
{
    private readonly List<PressureWay> ways = [];

    /// <summary>The heater's circuit, and every secondary circuit on the way to the loop with the largest drop.</summary>
    public static IReadOnlyList<PressureWay> Find(PipingGraph graph)
    {
        var finder = new PressureWays(graph);
        if (CircuitFinder.Find(graph) is { } circuit)
        {
            var stops = new List<PressureStop>();
            Add(stops, Stop(circuit.Heater, forward: true));
            finder.Follow(circuit.Way, stops);
            finder.ways.Insert(0, new("heater circuit", stops));
        }
        else
        {
            List<PressureStop> stops = [];
            foreach (var item in graph.InOrder)
            {
                Add(stops, Stop(item, forward: true));
            }

            finder.ways.Add(new("items in the order of the design", stops));
        }

        return [.. finder.ways.Where(way => way.Stops.Count > 1)];
    }

    private void Follow(ImmutableArray<Element> way, List<PressureStop> stops)
    {
        foreach (var element in way)
        {
            switch (element)
            {
                case ItemElement item:
                    Add(stops, Stop(item.Item, item.Forward));
                    break;
                case ManifoldElement manifold:
                    AddLoop(stops, manifold.Item);
                    break;
                case SpacedTeesElement tees:
                    Add(stops, Stop(tees.Item, tees.Forward));
                    var second = new List<PressureStop>();
                    Add(second, Stop(tees.Item, forward: true));
                    Follow(tees.Secondary, second);
                    ways.Add(new($"circuit behind {tees.Item.Name}", second));
                    break;
                case ParallelElement parallel:
                    Follow(Hardest(parallel), stops);
                    break;
            }
        }
    }

    private ImmutableArray<Element> Hardest(ParallelElement parallel) =>
        parallel.Branches.MaxBy(branch =>
            branch
                .OfType<ManifoldElement>()
                .Select(one =>
                    LoopsOf(one.Item).Select(loop => loop.Running!.DropPa).DefaultIfEmpty().Max()
                )
                .DefaultIfEmpty(-1)
                .Max()
        );

    private IEnumerable<LoopAnswer> LoopsOf(DrawnItem manifold)
    {
        var parts = new PartLookup(graph.Design);
        var names = (graph.Design.Floor?.Loops ?? [])
            .Where(loop => LoopManifold.Of(loop, graph.Design.Plant!, parts.Find) == manifold.Name)
            .Select(loop => loop.Name)
            .ToHashSet(StringComparer.Ordinal);
        return (graph.Floor?.Loops ?? []).Where(loop =>
            loop.Running is not null && names.Contains(loop.Name)
        );
    }

    private void AddLoop(List<PressureStop> stops, DrawnItem manifold)
    {
        if (manifold.Answer?.PressurePa is not { } pressure)
        {
            return;
        }

        stops.Add(new(manifold.Name, pressure, pressure));
        if (LoopsOf(manifold).MaxBy(loop => loop.Running!.DropPa) is { } loop)
        {
            stops.Add(new(loop.Name, pressure, pressure - loop.Running!.DropPa, IsItem: false));
        }
    }

    private static void Add(List<PressureStop> stops, PressureStop? stop)
    {
        if (stop is not null)
        {
            stops.Add(stop);
        }
    }

    private static PressureStop? Stop(DrawnItem item, bool forward)
    {
        if (item.Answer?.PressurePa is not { } pressure || item.Kind == SymbolKind.Tee)
        {
            return null;
        }

        var out_ = item.IsInline ? pressure - (item.Answer.DropPa ?? 0) : pressure;
        return forward
            ? new(item.Name, pressure, out_, item.Kind == SymbolKind.Vessel)
            : new(item.Name, out_, pressure, item.Kind == SymbolKind.Vessel);
    }
}
