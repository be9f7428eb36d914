using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Plant;

/// <summary>Turns the items and runs of a design into points and branches.</summary>
/// <remarks>The design has passed its reference check: a name that leads nowhere here is a bug and throws.</remarks>
internal sealed class PlantGraphBuilder
{
    private const string FirstTee = "first tee";
    private const string SecondTee = "second tee";

    private readonly HeatingDesign design;
    private readonly PlantDesign plant;
    private readonly Func<string, Part?> partNamed;
    private readonly ImmutableArray<PlacedPart> items;
    private readonly ImmutableArray<PortAddress> ports;
    private readonly Dictionary<PortAddress, int> portIndex;
    private readonly int[] parent;

    private PlantGraphBuilder(
        HeatingDesign design,
        PlantDesign plant,
        Func<string, Part?> partNamed
    )
    {
        this.design = design;
        this.plant = plant;
        this.partNamed = partNamed;
        items =
        [
            .. plant.Items.Select(entry => new PlacedPart(
                entry.Key,
                entry.Value,
                PartOf(entry.Value.Part)
            )),
        ];
        ports =
        [
            .. items.SelectMany(item =>
                PointsOf(item.Part).Select(port => new PortAddress(item.Name, port))
            ),
        ];
        portIndex = ports
            .Select((port, index) => (port, index))
            .ToDictionary(pair => pair.port, pair => pair.index);
        parent = [.. Enumerable.Range(0, ports.Length)];
    }

    public static PlantGraph Build(
        HeatingDesign design,
        PlantDesign plant,
        Func<string, Part?> partNamed
    ) => new PlantGraphBuilder(design, plant, partNamed).Build();

    private PlantGraph Build()
    {
        var joins = plant
            .Runs.SelectMany((run, index) => RunRoute.Read(run, index, ItemPart).Value)
            .ToImmutableArray();
        foreach (var join in joins.Where(join => join.IsDirect))
        {
            Unite(join.From, join.To);
        }

        foreach (var tee in items.Where(item => item.Part is TeePart))
        {
            Unite(new PortAddress(tee.Name, "a"), new PortAddress(tee.Name, "b"));
            Unite(new PortAddress(tee.Name, "a"), new PortAddress(tee.Name, "c"));
        }

        var (nodes, nodeOf) = Nodes();
        int At(PortAddress port) => nodeOf[Root(portIndex[port])];
        return new PlantGraph(
            nodes,
            [.. ItemBranches(At), .. PipeBranches(joins, At), .. LoopBranches(At)],
            items
        );
    }

    // closely spaced tees have two points inside, so that each port keeps its own flow and temperature
    private static ImmutableArray<string> PointsOf(Part part) =>
        part is CloselySpacedTeesPart ? [.. Ports.Of(part), FirstTee, SecondTee] : Ports.Of(part);

    private Part PartOf(string name) =>
        partNamed(name)
        ?? throw new InvalidOperationException($"The part \"{name}\" was not checked.");

    private Part? ItemPart(string item) =>
        plant.Items.TryGet(item, out var found) ? partNamed(found.Part) : null;

    private (ImmutableArray<PlantNode> Nodes, Dictionary<int, int> NodeOfRoot) Nodes()
    {
        var nodeOf = new Dictionary<int, int>();
        var nodes = ImmutableArray.CreateBuilder<PlantNode>();
        foreach (
            var group in Enumerable
                .Range(0, ports.Length)
                .GroupBy(Root)
                .OrderBy(group => group.Min())
        )
        {
            nodeOf[group.Key] = nodes.Count;
            ImmutableArray<PortAddress> members = [.. group.Order().Select(index => ports[index])];
            var height = members.Average(port => plant.Items[port.Item].Height.Si);
            nodes.Add(new PlantNode(members[0].ToString(), height, members));
        }

        return (nodes.ToImmutable(), nodeOf);
    }

    private IEnumerable<PlantBranch> ItemBranches(Func<PortAddress, int> at)
    {
        foreach (var item in items)
        {
            PortAddress Port(string name) => new(item.Name, name);
            if (Ports.IsTwoPort(item.Part))
            {
                yield return new PlantBranch.InItem(
                    item.Name,
                    at(Port(Ports.In)),
                    at(Port(Ports.Out)),
                    item.Name,
                    item.Item,
                    item.Part
                );
            }
            else if (item.Part is CloselySpacedTeesPart tees)
            {
                int Tee(string name) => at(Port(name));
                PlantBranch.InTee Way(string port, int from, int to) =>
                    new($"{item.Name}.{port}", from, to, item.Name, port, tees);
                var (first, second) = (Tee(FirstTee), Tee(SecondTee));
                yield return new PlantBranch.Between(item.Name, first, second, item.Name, tees);
                yield return Way(Ports.PrimaryIn, Tee(Ports.PrimaryIn), first);
                yield return Way(Ports.SecondaryOut, first, Tee(Ports.SecondaryOut));
                yield return Way(Ports.SecondaryIn, Tee(Ports.SecondaryIn), second);
                yield return Way(Ports.PrimaryOut, second, Tee(Ports.PrimaryOut));
            }
        }
    }

    private IEnumerable<PlantBranch> PipeBranches(
        ImmutableArray<Join> joins,
        Func<PortAddress, int> at
    )
    {
        foreach (var join in joins.Where(join => !join.IsDirect))
        {
            var run = plant.Runs[join.Run];
            yield return new PlantBranch.InPipe(
                $"{join.From} to {join.To} ({join.Run}.{join.Step})",
                at(join.From),
                at(join.To),
                join,
                run.Pipe,
                (PipePart)PartOf(run.Pipe),
                run.Insulation.Si
            );
        }
    }

    private IEnumerable<PlantBranch> LoopBranches(Func<PortAddress, int> at)
    {
        var loops = design.Floor?.Loops ?? [];
        for (var i = 0; i < loops.Length; i++)
        {
            var loop = loops[i];
            if (LoopManifold.Of(loop, plant, partNamed) is not { } manifold)
            {
                continue;
            }

            yield return new PlantBranch.InLoop(
                $"loop {i + 1} {loop.Name}",
                at(new PortAddress(manifold, Ports.Supply)),
                at(new PortAddress(manifold, Ports.Return)),
                i,
                loop,
                (PipePart)PartOf(loop.Tube),
                LoopLength.Metres(loop),
                loop.Valve?.Si ?? ((ManifoldPart)PartOf(plant.Items[manifold].Part)).ValveKv.Si
            );
        }
    }

    private int Root(int index)
    {
        while (parent[index] != index)
        {
            index = parent[index] = parent[parent[index]];
        }

        return index;
    }

    private void Unite(PortAddress a, PortAddress b)
    {
        var (rootA, rootB) = (Root(portIndex[a]), Root(portIndex[b]));
        parent[Math.Max(rootA, rootB)] = Math.Min(rootA, rootB);
    }
}
