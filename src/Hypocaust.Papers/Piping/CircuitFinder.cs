using System.Collections.Immutable;

namespace Hypocaust.Papers.Piping;

/// <summary>Finds the circuits of a plant by series and parallel reduction of its port graph.</summary>
/// <remarks>
/// Vertices are tees, parts on tees and the ports of all other parts; edges are pipes and parts with one way through. A vertex with two edges
/// joins them in series, edges between the same two vertices become branches, a blind end becomes a stub of its neighbour. What is left
/// between the heater's ports, and between the secondary ports of closely spaced tees, is the circuit.
/// </remarks>
internal sealed class CircuitFinder
{
    private readonly PipingGraph graph;
    private readonly List<Edge> edges = [];
    private readonly Dictionary<string, List<ImmutableArray<Element>>> stubs = new(
        StringComparer.Ordinal
    );
    private readonly HashSet<string> terminals = new(StringComparer.Ordinal);

    private bool branchedStub;

    private CircuitFinder(PipingGraph graph) => this.graph = graph;

    private sealed record Edge(string From, string To, ImmutableArray<Element> Way)
    {
        public Edge Reversed() => new(To, From, Reverse(Way));
    }

    /// <summary>The circuit of the first heater with everything piped, or null where the plant is not made of such circuits.</summary>
    public static HeaterCircuit? Find(PipingGraph graph)
    {
        var heater = graph.InOrder.FirstOrDefault(item => item.Kind == SymbolKind.Heater);
        return heater is null ? null : new CircuitFinder(graph).Find(heater);
    }

    /// <summary>A way from its other end.</summary>
    public static ImmutableArray<Element> Reverse(ImmutableArray<Element> way) =>
        [.. way.Reverse().Select(element => element.Reversed())];

    private static string At(string item, string port) => item + "\n" + port;

    private HeaterCircuit? Find(DrawnItem heater)
    {
        Build(heater);
        while (Chain() || Merge() || Trim()) { }

        var way = Between(At(heater.Name, "out"), At(heater.Name, "in"));
        if (way is not { } found)
        {
            return null;
        }

        var tidy = Tidy(found);
        return edges.Count == 0 && stubs.Count == 0 && !branchedStub ? new(heater, tidy) : null;
    }

    private void Build(DrawnItem heater)
    {
        terminals.Add(At(heater.Name, "out"));
        terminals.Add(At(heater.Name, "in"));
        var piped = graph
            .Pieces.SelectMany(piece => (string[])[piece.FromItem, piece.ToItem])
            .ToHashSet(StringComparer.Ordinal);
        foreach (var item in graph.InOrder.Where(item => piped.Contains(item.Name)))
        {
            var name = item.Name;
            if (item.Kind == SymbolKind.SpacedTees)
            {
                terminals.Add(At(name, "secondaryOut"));
                terminals.Add(At(name, "secondaryIn"));
                edges.Add(
                    new(
                        At(name, "primaryIn"),
                        At(name, "primaryOut"),
                        [new SpacedTeesElement(item, true, [])]
                    )
                );
            }
            else if (item.Kind == SymbolKind.Manifold)
            {
                edges.Add(
                    new(At(name, "supply"), At(name, "return"), [new ManifoldElement(item, true)])
                );
            }
            else if (item.IsInline && item != heater)
            {
                edges.Add(new(At(name, "in"), At(name, "out"), [new ItemElement(item, true, [])]));
            }
        }

        foreach (var piece in graph.Pieces)
        {
            edges.Add(
                new(
                    Vertex(piece.FromItem, piece.FromPort),
                    Vertex(piece.ToItem, piece.ToPort),
                    [new PipeElement(piece, true)]
                )
            );
        }
    }

    private string Vertex(string item, string port) =>
        graph.Items[item] is { IsTapped: true } or { Kind: SymbolKind.Tee } ? item : At(item, port);

    private List<Edge> EdgesAt(string vertex) =>
        [.. edges.Where(edge => edge.From == vertex || edge.To == vertex)];

    private List<string> Vertices() =>
        edges
            .SelectMany(edge => (string[])[edge.From, edge.To])
            .Where(vertex => !terminals.Contains(vertex))
            .Distinct(StringComparer.Ordinal)
            .ToList();

    // A blind end becomes a stub of the vertex from which it comes
    private bool Trim()
    {
        foreach (var vertex in Vertices())
        {
            if (EdgesAt(vertex) is not [var edge] || edge.From == edge.To)
            {
                continue;
            }

            var outward = edge.To == vertex ? edge : edge.Reversed();
            if (!graph.Items.ContainsKey(outward.From) || terminals.Contains(outward.From))
            {
                continue;
            }

            var way = outward.Way.AddRange(ElementsOf(vertex));
            if (way.Any(one => one is not (PipeElement or ItemElement { Stubs.IsEmpty: true })))
            {
                branchedStub = true;
            }

            edges.Remove(edge);
            stubs.TryAdd(outward.From, []);
            stubs[outward.From].Add(way);
            return true;
        }

        return false;
    }

    private bool Chain()
    {
        foreach (var vertex in Vertices())
        {
            if (EdgesAt(vertex) is not [var a, var b] || a.From == a.To || b.From == b.To)
            {
                continue;
            }

            var into = a.To == vertex ? a : a.Reversed();
            var onward = b.From == vertex ? b : b.Reversed();
            edges.Remove(a);
            edges.Remove(b);
            edges.Add(
                new(into.From, onward.To, [.. into.Way, .. ElementsOf(vertex), .. onward.Way])
            );
            return true;
        }

        return false;
    }

    private bool Merge()
    {
        for (var i = 0; i < edges.Count; i++)
        {
            var first = edges[i];
            List<Edge> same =
            [
                .. edges.Where(edge =>
                    (edge.From == first.From && edge.To == first.To)
                    || (edge.From == first.To && edge.To == first.From)
                ),
            ];
            if (same.Count < 2 || first.From == first.To)
            {
                continue;
            }

            var branches = same.Select(edge =>
                    edge.From == first.From ? edge.Way : Reverse(edge.Way)
                )
                .ToImmutableArray();
            edges.RemoveAll(same.Contains);
            edges.Add(new(first.From, first.To, [new ParallelElement(null, null, branches)]));
            return true;
        }

        return false;
    }

    private ImmutableArray<Element> ElementsOf(string vertex)
    {
        if (!graph.Items.TryGetValue(vertex, out var item))
        {
            return [];
        }

        var here = stubs.Remove(vertex, out var found) ? found : [];
        return [new ItemElement(item, true, [.. here])];
    }

    private ImmutableArray<Element>? Between(string from, string to)
    {
        var edge = edges.Find(edge =>
            (edge.From == from && edge.To == to) || (edge.From == to && edge.To == from)
        );
        if (edge is null)
        {
            return null;
        }

        edges.Remove(edge);
        return edge.From == from ? edge.Way : Reverse(edge.Way);
    }

    // Tees at both ends of branches belong to them; spaced tees get their secondary circuit
    private ImmutableArray<Element> Tidy(ImmutableArray<Element> way)
    {
        var tidy = ImmutableArray.CreateBuilder<Element>();
        for (var i = 0; i < way.Length; i++)
        {
            switch (way[i])
            {
                case SpacedTeesElement tees:
                    var secondary = Between(
                        At(tees.Item.Name, "secondaryOut"),
                        At(tees.Item.Name, "secondaryIn")
                    );
                    tidy.Add(tees with { Secondary = Tidy(secondary ?? []) });
                    break;
                case ParallelElement parallel:
                    tidy.Add(Ends(parallel, tidy, way, ref i));
                    break;
                default:
                    tidy.Add(way[i]);
                    break;
            }
        }

        return tidy.ToImmutable();
    }

    private ParallelElement Ends(
        ParallelElement parallel,
        ImmutableArray<Element>.Builder before,
        ImmutableArray<Element> way,
        ref int i
    )
    {
        DrawnItem? split = null;
        DrawnItem? join = null;
        if (before is [.., ItemElement { Item.Kind: SymbolKind.Tee, Stubs.IsEmpty: true } first])
        {
            split = first.Item;
            before.RemoveAt(before.Count - 1);
        }

        if (
            i + 1 < way.Length
            && way[i + 1] is ItemElement { Item.Kind: SymbolKind.Tee, Stubs.IsEmpty: true } last
        )
        {
            join = last.Item;
            i++;
        }

        return new(split, join, [.. parallel.Branches.Select(Tidy)]);
    }
}
