using Hypocaust.Hydraulics;

namespace Hypocaust.Tests.Hydraulics;

public sealed class NetworkTests
{
    private static readonly Node[] Two = [new("a", 0, 1e5), new("b")];

    private static string[] Codes(IEnumerable<Node> nodes, params Branch[] branches) =>
        [
            .. Network
                .Create(nodes, branches)
                .Problems.Select(problem => $"{problem.Place} {problem.Code}"),
        ];

    [Fact]
    public void A_part_without_given_pressure_is_named() =>
        Codes(
                [new("a", 0, 1e5), new("b"), new("c"), new("d")],
                new Branch("ab", "a", "b"),
                new Branch("cd", "c", "d")
            )
            .ShouldBe(["c no-reference-pressure"]);

    [Fact]
    public void Every_problem_is_reported_at_once() =>
        Codes(
                [new("a", 0, 1e5), new("a"), new("b", double.NaN)],
                new Branch("p", "a", "nowhere"),
                new Branch("p", "b", "b") { LossCoefficient = 1 },
                new Branch("q", "a", "b") { KvM3PerH = 0, LengthM = -1 }
            )
            .ShouldBe([
                "a duplicate-id",
                "p duplicate-id",
                "b number-out-of-range",
                "p unknown-node",
                "p branch-to-itself",
                "p no-diameter",
                "q number-out-of-range",
                "q number-out-of-range",
            ]);

    [Fact]
    public void A_network_without_nodes_is_a_problem() =>
        Codes([]).ShouldBe(["nodes empty-network"]);

    [Fact]
    public void A_network_without_branches_has_only_its_given_pressures()
    {
        var network = Network.Create([new("a", 0, 1e5)], []).Value;
        var solution = new NetworkSolver(network).Solve(new NetworkConditions(network, 1000, 1e-3));
        solution.Status.ShouldBe(SolveStatus.Converged);
        solution.PressurePa("a").ShouldBe(1e5);
        solution.WorstBranch.ShouldBeNull();
        solution.WorstNode.ShouldBeNull();
    }

    [Fact]
    public void Pump_coefficients_that_would_rise_are_refused() =>
        Codes(Two, new Branch("p", "a", "b") { Pump = new PumpLaw(1e4, -1, 1) })
            .ShouldBe(["p number-out-of-range"]);
}
