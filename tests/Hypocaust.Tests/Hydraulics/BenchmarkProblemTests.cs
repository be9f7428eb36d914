using Hypocaust.Bench;
using Hypocaust.Hydraulics;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>
/// Problem P1 of bench/reference: a whole plant with two pumps, closely spaced tees and twelve loops; solved by SciPy (root, lm) and by hand-written C.
/// </summary>
public sealed class BenchmarkProblemTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Cold_solve_equals_the_solution_of_scipy(bool vectorised)
    {
        var problem = NetworkProblem.Read(
            Path.Combine(AppContext.BaseDirectory, "Reference", "p1.json")
        );
        var solution = new NetworkSolver(
            problem.Network,
            NetworkSolverOptions.Default with
            {
                Vectorised = vectorised,
            }
        ).Solve(
            new NetworkConditions(problem.Network, problem.DensityKgPerM3, problem.ViscosityPaS)
        );

        solution.Status.ShouldBe(SolveStatus.Converged);
        problem.FlowsM3PerS.Count.ShouldBe(46);
        problem.PressuresPa.Count.ShouldBeGreaterThanOrEqualTo(33);
        foreach (var (branch, expected) in problem.FlowsM3PerS)
        {
            (solution.FlowKgPerS(branch) / problem.DensityKgPerM3).ShouldBe(
                expected,
                1e-9 * Math.Abs(expected),
                branch
            );
        }

        foreach (var (node, expected) in problem.PressuresPa)
        {
            solution.PressurePa(node)!.Value.ShouldBe(expected, 1e-5, node);
        }
    }
}
