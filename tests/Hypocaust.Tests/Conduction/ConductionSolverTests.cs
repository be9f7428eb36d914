using Hypocaust.Bench;
using Hypocaust.Conduction;
using MathNet.Numerics.LinearAlgebra;

namespace Hypocaust.Tests.Conduction;

public sealed class ConductionSolverTests
{
    // 400 × 100 cells, three pipes, a rug: solved by SciPy (SuperLU) and by a band factorisation in C, which agree to 4e-12
    [Fact]
    public void Benchmark_problem_equals_the_solution_of_scipy()
    {
        var section = SectionProblem.Read(
            Path.Combine(AppContext.BaseDirectory, "Reference", "p5.json")
        );
        var solution = new ConductionSolver().Solve(section.Build());
        solution.Status.ShouldBe(ConductionStatus.Converged);
        solution.Iterations.ShouldBeLessThan(20);
        section.Difference(solution).ShouldBeLessThan(1e-9);
    }

    // exact: resistances in series, the temperature linear in each layer
    [Fact]
    public void Layered_slab_equals_resistances_in_series_on_any_grid()
    {
        var random = new Random(71);
        for (var trial = 0; trial < 50; trial++)
        {
            var (x, y) = (RandomConduction.Lines(random), RandomConduction.Lines(random));
            var columns = x.Length - 1;
            var layers = y.Skip(1).Select(_ => RandomConduction.Conductivity(random)).ToList();
            var (top, bottom) = (random.NextDouble(), 3 * random.NextDouble());
            var problem = ConductionProblem
                .Create(
                    x,
                    y,
                    [.. layers.SelectMany(k => Enumerable.Repeat(k, columns))],
                    ConductionFace.Uniform(20, top, columns),
                    ConductionFace.Uniform(-10, bottom, columns)
                )
                .Value;
            var solution = new ConductionSolver().Solve(problem);
            var resistance = top + bottom + layers.Select((k, i) => (y[i + 1] - y[i]) / k).Sum();
            var flux = 30 / resistance;
            solution
                .BottomHeatWPerM()
                .ShouldBe(flux * (x[^1] - x[0]), 1e-9 * flux * (x[^1] - x[0]));
            solution.TopHeatWPerM().ShouldBe(-flux * (x[^1] - x[0]), 1e-9 * flux * (x[^1] - x[0]));
            solution.TopFaceC(columns / 2).ShouldBe(20 - (flux * top), 1e-9 * 30);
        }
    }

    // Checked against a dense Cholesky factorisation (MathNet.Numerics) of a matrix that the test builds from Fourier's law itself
    [Fact]
    public void Random_sections_equal_a_dense_solution()
    {
        var random = new Random(72);
        var solver = new ConductionSolver();
        for (var trial = 0; trial < 60; trial++)
        {
            var problem = RandomConduction.Draw(random);
            var solution = solver.Solve(problem);
            solution.Status.ShouldBe(ConductionStatus.Converged, $"trial {trial}");
            solution.Iterations.ShouldBeLessThan(60, $"trial {trial}");
            var dense = RandomConduction.Dense(problem);
            var expected = dense.Matrix.Cholesky().Solve(dense.Heat);
            for (var cell = 0; cell < expected.Count; cell++)
            {
                solution.TemperaturesC[cell].ShouldBe(expected[cell], 1e-7, $"trial {trial}");
            }
        }
    }

    [Fact]
    public void Temperatures_stay_between_the_given_ones_and_heat_balances()
    {
        var random = new Random(73);
        for (var trial = 0; trial < 60; trial++)
        {
            var problem = RandomConduction.Draw(random);
            var solution = new ConductionSolver().Solve(problem);
            var given = problem
                .Held.Select(cell => cell.TemperatureC)
                .Append(problem.Top.TemperatureC)
                .Append(problem.Bottom.TemperatureC)
                .ToList();
            foreach (var celsius in solution.TemperaturesC)
            {
                celsius.ShouldBeInRange(given.Min() - 1e-8, given.Max() + 1e-8);
            }

            solution.ImbalanceK.ShouldBeLessThan(1e-8);
        }
    }

    [Fact]
    public void Working_memory_kept_from_another_solve_changes_no_bit()
    {
        var random = new Random(74);
        var first = RandomConduction.Draw(random);
        var second = RandomConduction.Draw(random);
        var kept = new ConductionSolver();
        kept.Solve(first);
        kept.Solve(second);
        kept.Solve(first)
            .TemperaturesC.ToArray()
            .ShouldBe(new ConductionSolver().Solve(first).TemperaturesC.ToArray());
    }

    [Fact]
    public void Iterations_that_run_out_are_told()
    {
        var problem = RandomConduction.Draw(new Random(75));
        var solution = new ConductionSolver(new ConductionSolverOptions(MostIterations: 1)).Solve(
            problem
        );
        solution.Status.ShouldBe(ConductionStatus.IterationLimit);
        solution.Status.Sentence().ShouldContain("did not settle");
    }
}
