using Hypocaust.Conduction.Internal;

namespace Hypocaust.Conduction;

/// <summary>When a solve is done.</summary>
/// <param name="Tolerance">Energy norm of the error, as the preconditioner sees it, over that of the start; default 1e-12.</param>
/// <param name="MostIterations">Iterations allowed; default 200, where 10 to 20 are usual.</param>
public sealed record ConductionSolverOptions(double Tolerance = 1e-12, int MostIterations = 200);

/// <summary>
/// Solves sections by conjugate gradients with a multigrid preconditioner. Keeps its working memory from one solve to the next of
/// the same size; use one solver a thread.
/// </summary>
/// <remarks>
/// The result is the same to the last bit on every machine: sums are taken in eight fixed lanes, whatever the width of the registers.
/// </remarks>
/// <source>Hestenes and Stiefel 1952; line relaxation with semicoarsening after Dendy 1982 and Schaffer 1998 (from memory)</source>
public sealed class ConductionSolver(ConductionSolverOptions? options = null)
{
    private readonly ConductionSolverOptions options = options ?? new ConductionSolverOptions();
    private FivePointSystem? system;
    private ColumnMultigrid? multigrid;
    private ConjugateGradients? iteration;
    private int[] body = [];

    /// <summary>Solves a problem.</summary>
    public ConductionSolution Solve(ConductionProblem problem)
    {
        if (
            system is null
            || multigrid is null
            || iteration is null
            || system.Columns != problem.Columns
            || system.Rows != problem.Rows
        )
        {
            system = new FivePointSystem(problem.Columns, problem.Rows);
            multigrid = new ColumnMultigrid(problem.Columns, problem.Rows);
            iteration = new ConjugateGradients(multigrid);
            body = new int[problem.Columns * problem.Rows];
        }

        Assembly.Fill(problem, system, body);
        multigrid.Prepare(system);
        var temperatures = new double[body.Length];
        var (status, iterations) = iteration.Solve(system.Heat, temperatures, options);
        var imbalance = system.ImbalanceK(temperatures);
        return new ConductionSolution(
            problem,
            temperatures,
            double.IsFinite(imbalance) ? status : ConductionStatus.Breakdown,
            iterations,
            imbalance
        );
    }
}
