using Hypocaust.Hydraulics;
using MathNet.Numerics.RootFinding;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>
/// A second method, with nothing in common with the solver but the laws: loop by loop (Cross 1936), each loop's flow found by
/// bracketing (MathNet, Brent), round and round until none changes. Slow but sure without check valves: each round lowers a smooth convex function.
/// </summary>
internal static class LoopRelaxation
{
    /// <summary>Flows, or <see langword="null"/> if the rounds did not settle.</summary>
    public static double[]? Solve(Network network, NetworkConditions conditions, int rounds)
    {
        var loops = Loops(network, conditions);
        var flows = new double[network.Branches.Length];
        for (var round = 0; round < rounds; round++)
        {
            var largest = 0.0;
            foreach (var loop in loops)
            {
                var change = Balance(network, conditions, flows, loop);
                foreach (var (branch, sign) in loop.Members)
                {
                    flows[branch] += sign * change;
                }

                largest = Math.Max(largest, Math.Abs(change));
            }

            if (largest < 1e-11)
            {
                return flows;
            }
        }

        return null;
    }

    private sealed record Loop(List<(int Branch, int Sign)> Members, double GivenPa);

    private static double Balance(
        Network network,
        NetworkConditions conditions,
        double[] flows,
        Loop loop
    )
    {
        double Excess(double change) =>
            loop.Members.Sum(member =>
                member.Sign
                * IndependentLaws.DifferencePa(
                    network,
                    conditions,
                    member.Branch,
                    flows[member.Branch] + (member.Sign * change)
                )
            ) - loop.GivenPa;
        var reach = 1e-3;
        while (Excess(-reach) > 0 || Excess(reach) < 0)
        {
            reach *= 4;
        }

        return Brent.FindRoot(Excess, -reach, reach, 1e-14, 400);
    }

    private static List<Loop> Loops(Network network, NetworkConditions conditions)
    {
        var count = network.Nodes.Length;
        var wayIn = new (int Branch, int Sign)?[count];
        var known = new bool[count];
        var tree = new HashSet<int>();
        var open = new Queue<int>();
        for (var node = 0; node < count; node++)
        {
            if (network.Nodes[node].GivenPressurePa is not null)
            {
                known[node] = true;
                open.Enqueue(node);
            }
        }

        for (var next = 0; next < count || open.Count > 0; )
        {
            if (open.Count == 0)
            {
                // a part that closed valves cut off starts at any of its nodes
                if (!known[next])
                {
                    known[next] = true;
                    open.Enqueue(next);
                }

                next++;
                continue;
            }

            var at = open.Dequeue();
            foreach (var (branch, from, to) in Ends(network, conditions))
            {
                if ((from == at && !known[to]) || (to == at && !known[from]))
                {
                    var far = from == at ? to : from;
                    known[far] = true;
                    wayIn[far] = (branch, from == at ? 1 : -1);
                    tree.Add(branch);
                    open.Enqueue(far);
                }
            }
        }

        return
        [
            .. Ends(network, conditions)
                .Where(end => !tree.Contains(end.Branch))
                .Select(end => Close(network, wayIn, end)),
        ];
    }

    /// <summary>The loop of a branch outside the tree: along it, back to the roots on both sides, and through the given pressures.</summary>
    private static Loop Close(
        Network network,
        (int Branch, int Sign)?[] wayIn,
        (int Branch, int From, int To) chord
    )
    {
        var net = new Dictionary<int, int> { [chord.Branch] = 1 };
        var rootFrom = Walk(network, wayIn, chord.From, 1, net);
        var rootTo = Walk(network, wayIn, chord.To, -1, net);
        var given =
            rootFrom == rootTo
                ? 0
                : network.Nodes[rootFrom].GivenPressurePa!.Value
                    - network.Nodes[rootTo].GivenPressurePa!.Value;
        return new Loop(
            [
                .. net.Where(member => member.Value != 0)
                    .Select(member => (member.Key, member.Value)),
            ],
            given
        );
    }

    private static int Walk(
        Network network,
        (int Branch, int Sign)?[] wayIn,
        int node,
        int direction,
        Dictionary<int, int> net
    )
    {
        while (wayIn[node] is { } way)
        {
            net[way.Branch] = net.GetValueOrDefault(way.Branch) + (direction * way.Sign);
            var branch = network.Branches[way.Branch];
            node = network.NodeIndex(way.Sign > 0 ? branch.From : branch.To);
        }

        return node;
    }

    private static IEnumerable<(int Branch, int From, int To)> Ends(
        Network network,
        NetworkConditions conditions
    ) =>
        Enumerable
            .Range(0, network.Branches.Length)
            .Where(branch => !conditions.Closed[branch])
            .Select(branch =>
                (
                    branch,
                    network.NodeIndex(network.Branches[branch].From),
                    network.NodeIndex(network.Branches[branch].To)
                )
            );
}
