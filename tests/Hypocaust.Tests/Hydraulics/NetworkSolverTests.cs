using Hypocaust.Hydraulics;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>States that are not failures: pumps off, closed valves, dead legs, parts cut off, check valves in every arrangement.</summary>
public sealed class NetworkSolverTests
{
    private static readonly PumpLaw Pump = PumpCurve.Create(5, -0.3, -0.4).Value.ToLaw();

    private static Branch Pipe(string id, string from, string to, double length = 20) =>
        new(id, from, to)
        {
            LengthM = length,
            InnerDiameterM = 0.016,
            RoughnessM = 7e-6,
        };

    private static Branch Check(string id, string from, string to, double crackPa = 0) =>
        new(id, from, to)
        {
            KvM3PerH = 3,
            IsCheckValve = true,
            CrackingPressurePa = crackPa,
        };

    private static (NetworkSolution Solution, NetworkConditions Conditions) Solve(
        IEnumerable<Node> nodes,
        IEnumerable<Branch> branches,
        params string[] closed
    )
    {
        var network = Network.Create(nodes, branches).Value;
        var conditions = new NetworkConditions(network, 990, 6e-4);
        foreach (var branch in closed)
        {
            conditions.SetClosed(network.BranchIndex(branch), true);
        }

        var solution = new NetworkSolver(network).Solve(conditions);
        solution.Status.ShouldBe(SolveStatus.Converged);
        return (solution, conditions);
    }

    [Fact]
    public void Closed_valve_stops_the_pump_at_its_shut_off_head()
    {
        var (solution, _) = Solve(
            [new("a", 0, 1e5), new("b"), new("c")],
            [
                new Branch("pump", "a", "b") { Pump = Pump },
                Pipe("pipe", "b", "c"),
                Pipe("valve", "c", "a"),
            ],
            "valve"
        );
        solution.FlowKgPerS("pump").ShouldBe(0, 1e-12);
        // p = p0 + ρ g H0, everywhere up to the closed valve
        solution.PressurePa("c")!.Value.ShouldBe(1e5 + (990 * 9.80665 * 5), 1e-6);
        solution.PressureDifferencePa("valve")!.Value.ShouldBe(990 * 9.80665 * 5, 1e-6);
        solution.States[2].ShouldBe(BranchState.Closed);
    }

    [Fact]
    public void Part_behind_two_closed_valves_has_flows_but_no_pressure()
    {
        var (solution, _) = Solve(
            [new("a", 0, 1e5), new("b"), new("c"), new("d")],
            [
                Pipe("supply", "a", "b"),
                Pipe("return", "c", "a"),
                new Branch("pump", "b", "c") { Pump = Pump },
                Pipe("round", "c", "d"),
                Pipe("back", "d", "b"),
            ],
            "supply",
            "return"
        );
        solution.PressurePa("a").ShouldBe(1e5);
        solution.PressurePa("b").ShouldBeNull();
        solution.PressurePa("c").ShouldBeNull();
        solution.PressureDifferencePa("supply").ShouldBeNull();
        // differences inside the part are determined, and the flow goes on round it
        solution.PressureDifferencePa("round").ShouldNotBeNull();
        solution.FlowKgPerS("pump").ShouldBeGreaterThan(0.1);
        solution.FlowKgPerS("round").ShouldBe(solution.FlowKgPerS("pump"), 1e-12);
        solution.FlowKgPerS("supply").ShouldBe(0);
    }

    [Fact]
    public void Nothing_running_is_a_solution_without_flow()
    {
        var (network, conditions) = Ring();
        conditions.SetPumpSpeed(0, 0);
        var solution = new NetworkSolver(network).Solve(conditions);
        solution.Status.ShouldBe(SolveStatus.Converged);
        solution.FlowsKgPerS.Max(Math.Abs).ShouldBeLessThan(1e-6);
        solution.PressurePa("c")!.Value.ShouldBe(1e5, 1e-6);
    }

    [Theory]
    [InlineData(0.9, false)]
    [InlineData(1.1, true)]
    public void Check_valve_opens_exactly_above_its_cracking_pressure(double part, bool opens)
    {
        var crack = 990 * 9.80665 * 5 / part;
        var (solution, _) = Solve(
            [new("a", 0, 1e5), new("b"), new("c")],
            [
                new Branch("pump", "a", "b") { Pump = Pump },
                Check("check", "b", "c", crack),
                Pipe("pipe", "c", "a"),
            ]
        );
        (solution.States[1] == BranchState.Open).ShouldBe(opens);
        (solution.FlowKgPerS("pipe") > 0.01).ShouldBe(opens);
        if (!opens)
        {
            solution.FlowKgPerS("check").ShouldBe(0);
            solution
                .PressureDifferencePa("check")!
                .Value.ShouldBe(part * crack, 1e-10 * part * crack);
        }
    }

    [Fact]
    public void Check_valves_in_series_hold_together_and_leave_the_pressure_between_open()
    {
        // pump pushes against both: neither alone needs to hold everything, so the pressure between them is not determined
        var (solution, _) = Solve(
            [new("a", 0, 1e5), new("b"), new("m"), new("c")],
            [
                new Branch("pump", "a", "b") { Pump = Pump },
                Check("first", "m", "b"),
                Check("second", "c", "m"),
                Pipe("pipe", "c", "a"),
            ]
        );
        solution.FlowKgPerS("pipe").ShouldBe(0, 1e-12);
        solution.FlowKgPerS("first").ShouldBe(0);
        solution.PressurePa("b")!.Value.ShouldBe(1e5 + (990 * 9.80665 * 5), 1e-6);
    }

    [Fact]
    public void Check_valves_in_series_open_when_pressed_open_together()
    {
        // each needs 20 kPa, together 40 kPa of the pump's 48.5 kPa: closed one by one they would look shut
        var (solution, _) = Solve(
            [new("a", 0, 1e5), new("b"), new("m"), new("c")],
            [
                new Branch("pump", "a", "b") { Pump = Pump },
                Check("first", "b", "m", 20e3),
                Check("second", "m", "c", 20e3),
                Pipe("pipe", "c", "a"),
            ]
        );
        solution.FlowKgPerS("pipe").ShouldBeGreaterThan(0.03);
    }

    [Fact]
    public void Stopped_pump_resists_with_its_own_coefficient_both_ways()
    {
        // 10 kPa across a stopped pump of Kv 4: Q = Kv √(Δp/1 bar · 1000/ρ) (IEC 60534)
        var expected = 4 * Math.Sqrt(0.1 * 1000 / 990.0) / 3600 * 990;
        foreach (var sign in (int[])[1, -1])
        {
            var network = Network
                .Create(
                    [new("a", 0, 1e5 + (sign * 1e4)), new("b", 0, 1e5)],
                    [new Branch("pump", "a", "b") { Pump = Pump with { StoppedKvM3PerH = 4 } }]
                )
                .Value;
            var conditions = new NetworkConditions(network, 990, 6e-4);
            conditions.SetPumpSpeed(0, 0);
            new NetworkSolver(network)
                .Solve(conditions)
                .FlowKgPerS("pump")
                .ShouldBe(sign * expected, 1e-9 * expected);
        }
    }

    [Fact]
    public void Valve_position_set_by_Kv_changes_the_flow()
    {
        var network = Network
            .Create(
                [new("a", 0, 1.1e5), new("b", 0, 1e5)],
                [new Branch("valve", "a", "b") { KvM3PerH = 4 }]
            )
            .Value;
        var conditions = new NetworkConditions(network, 1000, 1e-3);
        conditions.SetKv(0, 1.6);
        // 0.1 bar: Q = 1.6 √0.1 m³/h
        new NetworkSolver(network)
            .Solve(conditions)
            .FlowKgPerS("valve")
            .ShouldBe(1.6 * Math.Sqrt(0.1) / 3.6, 1e-9);
    }

    [Fact]
    public void Warm_solve_gives_the_cold_answer_in_fewer_steps_and_allocates_nothing()
    {
        var (network, conditions) = Ring();
        var solver = new NetworkSolver(network);
        var cold = solver.SolveInPlace(conditions, warm: false);
        double[] flows = [.. solver.FlowsKgPerS];
        SolveReport warm = default;
        for (var repeat = 0; repeat < 3; repeat++)
        {
            conditions.SetFluid(1, 990, 6.0001e-4);
            var before = GC.GetAllocatedBytesForCurrentThread();
            warm = solver.SolveInPlace(conditions, warm: true);
            var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            allocated.ShouldBe(0);
        }

        warm.Status.ShouldBe(SolveStatus.Converged);
        warm.Iterations.ShouldBeLessThan(cold.Iterations);
        for (var branch = 0; branch < flows.Length; branch++)
        {
            solver.FlowsKgPerS[branch].ShouldBe(flows[branch], 1e-4 * Math.Abs(flows[branch]));
        }
    }

    [Fact]
    public void Solve_from_an_earlier_solution_equals_a_cold_solve()
    {
        for (var seed = 1; seed <= 200; seed++)
        {
            var (network, conditions) = RandomNetworks.Make(seed);
            var solver = new NetworkSolver(network);
            var first = solver.Solve(conditions);
            conditions.SetFluid(985, 9e-4);
            var warm = solver.Solve(conditions, first);
            var cold = solver.Solve(conditions);
            warm.Status.ShouldBe(SolveStatus.Converged);
            var scale = cold.FlowsKgPerS.Max(Math.Abs);
            for (var branch = 0; branch < network.Branches.Length; branch++)
            {
                warm.FlowsKgPerS[branch]
                    .ShouldBe(cold.FlowsKgPerS[branch], (1e-6 * scale) + 1e-5, $"seed {seed}");
            }
        }
    }

    [Fact]
    public void Too_few_iterations_are_reported_with_the_worst_branch_and_node()
    {
        var (network, conditions) = Ring();
        var solution = new NetworkSolver(
            network,
            NetworkSolverOptions.Default with
            {
                IterationLimit = 1,
            }
        ).Solve(conditions);
        solution.Status.ShouldBe(SolveStatus.IterationLimit);
        solution.Report.HeadResidual.ShouldBeGreaterThan(1e-10);
        network.Branches.Select(branch => branch.Id).ShouldContain(solution.WorstBranch!);
        network.Nodes.Select(node => node.Id).ShouldContain(solution.WorstNode!);
    }

    [Theory]
    [InlineData(1e-90)]
    [InlineData(1e-30)]
    [InlineData(1e-9)]
    [InlineData(1e9)]
    public void Absurd_diameters_end_in_a_named_status_and_numbers(double diameter)
    {
        var network = Network
            .Create(
                [new("a", 0, 1e5), new("b"), new("c")],
                [
                    new Branch("pump", "a", "b") { Pump = Pump },
                    Pipe("narrow", "b", "c") with
                    {
                        InnerDiameterM = diameter,
                    },
                    Pipe("pipe", "c", "a"),
                ]
            )
            .Value;
        var solution = new NetworkSolver(network).Solve(new NetworkConditions(network, 990, 6e-4));
        Enum.IsDefined(solution.Status).ShouldBeTrue();
        solution.FlowsKgPerS.ShouldAllBe(flow => double.IsFinite(flow));
        solution.PressuresPa.ShouldAllBe(pressure => double.IsFinite(pressure!.Value));
        double.IsFinite(solution.Report.HeadResidual).ShouldBeTrue();
        double.IsFinite(solution.Report.MassResidual).ShouldBeTrue();
    }

    [Fact]
    public void Conditions_of_another_network_are_refused()
    {
        var (network, _) = Ring();
        var (_, others) = Ring();
        Should.Throw<ArgumentException>(() => new NetworkSolver(network).Solve(others));
    }

    [Fact]
    public void Every_status_has_its_sentence()
    {
        var sentences = Enum.GetValues<SolveStatus>().Select(status => status.Sentence()).ToList();
        sentences.Distinct().Count().ShouldBe(sentences.Count);
        sentences.ShouldAllBe(sentence => sentence.EndsWith('.'));
    }

    private static (Network Network, NetworkConditions Conditions) Ring()
    {
        var network = Network
            .Create(
                [new("a", 0, 1e5), new("b"), new("c")],
                [
                    new Branch("pump", "a", "b") { Pump = Pump },
                    Pipe("one", "b", "c", 60),
                    Pipe("two", "b", "c", 80),
                    Check("check", "c", "a"),
                ]
            )
            .Value;
        return (network, new NetworkConditions(network, 990, 6e-4));
    }
}
