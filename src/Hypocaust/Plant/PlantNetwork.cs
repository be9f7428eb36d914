using System.Collections.Immutable;
using Hypocaust.Design;
using Hypocaust.Hydraulics;
using Hypocaust.Problems;

namespace Hypocaust.Plant;

/// <summary>The piping as a network of pressures and flows.</summary>
/// <param name="Network">Nodes and branches, in the order of the graph.</param>
/// <param name="Shut">Whether each branch is shut by hand.</param>
/// <param name="Curves">Curve of each running circulator, by branch.</param>
/// <param name="ReferenceNode">Node whose pressure is held at 0: where the expansion vessel connects, or else the first.</param>
internal sealed record PlantNetwork(
    Network Network,
    ImmutableArray<bool> Shut,
    ImmutableDictionary<int, PumpCurve> Curves,
    int ReferenceNode
)
{
    // drawn copper tube (handbook value, from memory)
    private const double DrawnTubeM = 1.5e-6;

    public static Result<PlantNetwork> Of(PlantGraph graph)
    {
        var problems = new List<Problem>();
        var curves = ImmutableDictionary.CreateBuilder<int, PumpCurve>();
        var branches = new List<Branch>();
        foreach (var branch in graph.Branches)
        {
            branches.Add(Of(branch, graph, branches.Count, curves, problems));
        }

        if (problems.Count > 0)
        {
            return Result<PlantNetwork>.Failed(problems);
        }

        var references = References(graph);
        var nodes = graph.Nodes.Select(
            (node, index) => new Node(node.Id, node.HeightM, references.Contains(index) ? 0 : null)
        );
        return Network
            .Create(nodes, branches)
            .Then<PlantNetwork>(network => new PlantNetwork(
                network,
                [.. graph.Branches.Select(IsShut)],
                curves.ToImmutable(),
                references[0]
            ));
    }

    private static bool IsShut(PlantBranch branch) =>
        branch switch
        {
            PlantBranch.InItem { Item.Shut: true } => true,
            PlantBranch.InLoop { Loop.Shut: true } => true,
            _ => false,
        };

    private static Branch Of(
        PlantBranch branch,
        PlantGraph graph,
        int index,
        ImmutableDictionary<int, PumpCurve>.Builder curves,
        List<Problem> problems
    )
    {
        var plain = new Branch(branch.Id, graph.Nodes[branch.From].Id, graph.Nodes[branch.To].Id);
        return branch switch
        {
            PlantBranch.InPipe pipe => plain with
            {
                LengthM = pipe.Join.LengthM,
                InnerDiameterM = pipe.Pipe.Inner.Si,
                RoughnessM = pipe.Pipe.Roughness.Si,
                LossCoefficient = FittingLoss.Coefficient(
                    pipe.Pipe.Inner.Si,
                    pipe.Join.Elbows,
                    pipe.Join.Tees
                ),
            },
            PlantBranch.InLoop loop => plain with
            {
                LengthM = loop.LengthM,
                InnerDiameterM = loop.Tube.Inner.Si,
                RoughnessM = loop.Tube.Roughness.Si,
                KvM3PerH = loop.ValveKv,
            },
            PlantBranch.Between tees => plain with
            {
                LengthM = tees.Part.Spacing.Si,
                InnerDiameterM = tees.Part.Inner.Si,
                RoughnessM = DrawnTubeM,
                LossCoefficient = FittingLoss.Coefficient(tees.Part.Inner.Si, elbows: 0, tees: 1),
            },
            PlantBranch.InTee way => plain with
            {
                InnerDiameterM = way.Part.Inner.Si,
                LossCoefficient = way.Turns ? FittingLoss.TeeBranch(way.Part.Inner.Si) : 0,
            },
            PlantBranch.InItem item => OfItem(plain, item, index, curves, problems),
            _ => throw new InvalidOperationException($"Unknown branch {branch.GetType().Name}."),
        };
    }

    private static Branch OfItem(
        Branch plain,
        PlantBranch.InItem item,
        int index,
        ImmutableDictionary<int, PumpCurve>.Builder curves,
        List<Problem> problems
    )
    {
        switch (item.Part)
        {
            case HeaterPart heater:
                return plain with { KvM3PerH = heater.Kv.Si };
            case InlinePart inline:
                return plain with
                {
                    KvM3PerH = inline.Kv.Si,
                    IsCheckValve = inline.Function == InlineFunction.Check,
                    CrackingPressurePa =
                        inline.Function == InlineFunction.Check ? inline.Opens.Si : 0,
                };
            case CirculatorPart circulator when item.Item.Off:
                return plain with
                {
                    KvM3PerH = circulator.StandingKv.Si,
                    IsCheckValve = circulator.CheckValve,
                };
            case CirculatorPart circulator:
                var points = circulator
                    .Speeds[SpeedOf(item.Item, circulator) - 1]
                    .Curve.Select(point => new PumpPoint(point.Flow.Si * 3600, point.Head.Si));
                var curve = PumpCurve.FromPoints(points);
                if (!curve.TryGet(out var falling))
                {
                    problems.AddRange(
                        curve.Problems.Select(problem =>
                            problem with
                            {
                                Place = DesignPlaces.Item(item.Name),
                            }
                        )
                    );
                    return plain;
                }

                curves[index] = falling;
                return plain with { Pump = falling.ToLaw(), IsCheckValve = circulator.CheckValve };
            default:
                throw new InvalidOperationException(
                    $"Water does not pass a {item.Part.GetType().Name}."
                );
        }
    }

    /// <summary>The speed at which a circulator is set; the only one where it has one.</summary>
    public static int SpeedOf(PlantItem item, CirculatorPart circulator) =>
        item.Speed ?? circulator.Speeds.Length;

    // one node of given pressure in each part of the piping that hangs together; the vessel's where there is one
    private static ImmutableArray<int> References(PlantGraph graph)
    {
        var vessels = graph
            .ItemsOf<VesselPart>()
            .Select(vessel => graph.NodeOf(vessel.Name, Ports.In));
        var references = ImmutableArray.CreateBuilder<int>();
        var covered = new HashSet<int>();
        foreach (var candidate in vessels.Concat(Enumerable.Range(0, graph.Nodes.Length)))
        {
            if (!covered.Contains(candidate))
            {
                references.Add(candidate);
                covered.UnionWith(graph.Reach(candidate, _ => true));
            }
        }

        return references.ToImmutable();
    }
}
