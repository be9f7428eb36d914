using Hypocaust.Hydraulics;

namespace Hypocaust.Tests.Hydraulics;

public sealed class NetworkPropertyTests
{
    private const int Networks = 2000;

    /// <summary>
    /// Flow that counts as none, kg/s (36 g an hour): where nothing drives, heads hold to 1e-10 Pa, and the widest fitting here
    /// (K = 0.2 on 38 mm, 78 Pa s²/kg²) lets 1e-6 to 1e-5 kg/s through for that.
    /// </summary>
    private const double NothingKgPerS = 1e-5;

    [Fact]
    public void Two_thousand_random_networks_converge_and_satisfy_laws_written_independently()
    {
        var most = 0;
        for (var seed = 1; seed <= Networks; seed++)
        {
            var (network, conditions) = RandomNetworks.Make(seed);
            var solution = new NetworkSolver(network).Solve(conditions);
            solution.Status.ShouldBe(SolveStatus.Converged, $"seed {seed}");
            most = Math.Max(most, solution.Report.Iterations);
            Satisfies(solution, conditions, seed);
        }

        most.ShouldBeLessThan(60);
    }

    [Fact]
    public void Flows_equal_those_found_loop_by_loop()
    {
        var compared = 0;
        for (var seed = 1; seed <= 150; seed++)
        {
            // without check valves: at their corners a method that goes loop by loop can stick
            var (made, drawn) = RandomNetworks.Make(seed);
            var network = Network
                .Create(
                    made.Nodes,
                    made.Branches.Select(branch => branch with { IsCheckValve = false })
                )
                .Value;
            var conditions = Copy(network, drawn);
            if (
                network.Branches.Length > 24
                || LoopRelaxation.Solve(network, conditions, rounds: 60) is not { } expected
            )
            {
                continue;
            }

            var solution = new NetworkSolver(network).Solve(conditions);
            var scale = expected.Max(Math.Abs);
            for (var branch = 0; branch < expected.Length; branch++)
            {
                solution
                    .FlowsKgPerS[branch]
                    .ShouldBe(
                        expected[branch],
                        (1e-6 * scale) + NothingKgPerS,
                        $"seed {seed}, {network.Branches[branch].Id}"
                    );
            }

            compared++;
        }

        // the slow method does not settle on all of them in its rounds
        compared.ShouldBeGreaterThan(50);
    }

    [Fact]
    public void Doubled_density_and_viscosity_at_doubled_pressures_gives_the_same_volume_flows()
    {
        // every law is proportional to density at fixed kinematic viscosity, so pressures double and volume flows stay (dimensional analysis)
        for (var seed = 1; seed <= 200; seed++)
        {
            var (network, conditions) = RandomNetworks.Make(seed);
            var doubledNetwork = Network
                .Create(
                    network.Nodes.Select(node =>
                        node with
                        {
                            GivenPressurePa = 2 * node.GivenPressurePa,
                        }
                    ),
                    network.Branches.Select(branch =>
                        branch with
                        {
                            CrackingPressurePa = 2 * branch.CrackingPressurePa,
                        }
                    )
                )
                .Value;
            var doubled = new NetworkConditions(doubledNetwork, 1000, 1e-3);
            for (var branch = 0; branch < network.Branches.Length; branch++)
            {
                doubled.SetFluid(
                    branch,
                    2 * conditions.DensitiesKgPerM3[branch],
                    2 * conditions.ViscositiesPaS[branch]
                );
                doubled.SetClosed(branch, conditions.Closed[branch]);
                if (network.Branches[branch].Pump is not null)
                {
                    doubled.SetPumpSpeed(branch, conditions.PumpSpeedRatios[branch]);
                }
            }

            var first = new NetworkSolver(network).Solve(conditions);
            var second = new NetworkSolver(doubledNetwork).Solve(doubled);
            second.Status.ShouldBe(SolveStatus.Converged);
            var scale = first.FlowsKgPerS.Max(Math.Abs);
            for (var branch = 0; branch < network.Branches.Length; branch++)
            {
                (second.FlowsKgPerS[branch] / 2).ShouldBe(
                    first.FlowsKgPerS[branch],
                    (1e-6 * scale) + NothingKgPerS,
                    $"seed {seed}, {network.Branches[branch].Id}"
                );
            }
        }
    }

    [Fact]
    public void Turning_branches_round_turns_their_flows_round()
    {
        for (var seed = 1; seed <= 200; seed++)
        {
            var (network, conditions) = RandomNetworks.Make(seed);
            var turned = network
                .Branches.Select(branch =>
                    branch.IsCheckValve
                    || branch.Pump is not null
                    || branch.ReverseLossCoefficient is not null
                        ? branch
                        : branch with
                        {
                            From = branch.To,
                            To = branch.From,
                        }
                )
                .ToList();
            var turnedNetwork = Network.Create(network.Nodes, turned).Value;
            var turnedConditions = Copy(turnedNetwork, conditions);
            var first = new NetworkSolver(network).Solve(conditions);
            var second = new NetworkSolver(turnedNetwork).Solve(turnedConditions);
            second.Status.ShouldBe(SolveStatus.Converged);
            var scale = first.FlowsKgPerS.Max(Math.Abs);
            for (var branch = 0; branch < turned.Count; branch++)
            {
                var sign = turned[branch].From == network.Branches[branch].From ? 1 : -1;
                (sign * second.FlowsKgPerS[branch]).ShouldBe(
                    first.FlowsKgPerS[branch],
                    (1e-6 * scale) + NothingKgPerS,
                    $"seed {seed}"
                );
            }
        }
    }

    [Fact]
    public void Wide_registers_and_one_branch_at_a_time_agree()
    {
        for (var seed = 1; seed <= 300; seed++)
        {
            var (network, conditions) = RandomNetworks.Make(seed);
            var wide = new NetworkSolver(network).Solve(conditions);
            var single = new NetworkSolver(
                network,
                NetworkSolverOptions.Default with
                {
                    Vectorised = false,
                }
            ).Solve(conditions);
            single.Status.ShouldBe(SolveStatus.Converged);
            var scale = wide.FlowsKgPerS.Max(Math.Abs);
            for (var branch = 0; branch < network.Branches.Length; branch++)
            {
                single
                    .FlowsKgPerS[branch]
                    .ShouldBe(
                        wide.FlowsKgPerS[branch],
                        (1e-6 * scale) + NothingKgPerS,
                        $"seed {seed}"
                    );
            }
        }
    }

    private static NetworkConditions Copy(Network network, NetworkConditions from)
    {
        var copy = new NetworkConditions(network, 1000, 1e-3);
        for (var branch = 0; branch < network.Branches.Length; branch++)
        {
            copy.SetFluid(branch, from.DensitiesKgPerM3[branch], from.ViscositiesPaS[branch]);
            copy.SetClosed(branch, from.Closed[branch]);
            if (network.Branches[branch].Pump is not null)
            {
                copy.SetPumpSpeed(branch, from.PumpSpeedRatios[branch]);
            }
        }

        return copy;
    }

    private static void Satisfies(NetworkSolution solution, NetworkConditions conditions, int seed)
    {
        var network = solution.Network;
        var balance = new double[network.Nodes.Length];
        var flowScale = Math.Max(1e-6, solution.FlowsKgPerS.Max(Math.Abs));
        var headScale = Math.Max(
            1,
            solution.PressureDifferencesPa.Max(found => Math.Abs(found ?? 0))
        );
        for (var index = 0; index < network.Branches.Length; index++)
        {
            var branch = network.Branches[index];
            var flow = solution.FlowsKgPerS[index];
            double.IsFinite(flow).ShouldBeTrue();
            balance[network.NodeIndex(branch.From)] -= flow;
            balance[network.NodeIndex(branch.To)] += flow;
            var where = $"seed {seed}, {branch.Id}";
            var needed = IndependentLaws.DifferencePa(network, conditions, index, flow);
            switch (solution.States[index])
            {
                case BranchState.Open:
                    // 1e-10 asked of the solver; its quadratic losses are linear below 1e-6 kg/s, at most 3e-4 Pa here
                    solution.PressureDifferencesPa[index]!.Value.ShouldBe(
                        needed,
                        (2e-10 * headScale) + 3e-4 + (1.1 * Math.Abs(flow)),
                        where
                    );
                    (branch.IsCheckValve && flow < 0).ShouldBeFalse(where);
                    break;
                case BranchState.CheckValveClosed:
                    flow.ShouldBe(0, where);
                    (
                        solution.PressureDifferencesPa[index] ?? double.NegativeInfinity
                    ).ShouldBeLessThanOrEqualTo(needed + (1e-8 * headScale), where);
                    break;
                default:
                    flow.ShouldBe(0, where);
                    break;
            }
        }

        for (var node = 0; node < balance.Length; node++)
        {
            if (network.Nodes[node].GivenPressurePa is null)
            {
                Math.Abs(balance[node])
                    .ShouldBeLessThan(1e-10 * flowScale, $"seed {seed}, node {node}");
            }
        }
    }
}
