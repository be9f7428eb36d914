using Hypocaust.Conduction.Internal;

namespace Hypocaust.Conduction;

/// <summary>Temperatures of a section, and how well they are solved.</summary>
public sealed class ConductionSolution
{
    private readonly double[] temperaturesC;

    internal ConductionSolution(
        ConductionProblem problem,
        double[] temperaturesC,
        ConductionStatus status,
        int iterations,
        double imbalanceK
    )
    {
        Problem = problem;
        this.temperaturesC = temperaturesC;
        Status = status;
        Iterations = iterations;
        ImbalanceK = imbalanceK;
    }

    /// <summary>What was solved.</summary>
    public ConductionProblem Problem { get; }

    /// <summary>Why the solve ended; the figures are to be used only if it converged.</summary>
    public ConductionStatus Status { get; }

    /// <summary>Iterations of conjugate gradients.</summary>
    public int Iterations { get; }

    /// <summary>Residual: the farthest that a cell lies from the mean of its neighbours, weighted by their conductances, in K.</summary>
    public double ImbalanceK { get; }

    /// <summary>Temperature of each cell in °C, row by row from the bottom.</summary>
    public ReadOnlySpan<double> TemperaturesC => temperaturesC;

    /// <summary>Temperature of a cell in °C.</summary>
    /// <param name="column">Column, from 0 at the left.</param>
    /// <param name="row">Row, from 0 at the bottom.</param>
    public double TemperatureC(int column, int row) =>
        temperaturesC[(row * Problem.Columns) + column];

    /// <summary>Heat out through the upper face of a column in W for each metre along the tubes.</summary>
    public double TopHeatWPerM(int column) =>
        Assembly.FaceConductance(Problem, Problem.Top, column, Problem.Rows - 1)
        * (TemperatureC(column, Problem.Rows - 1) - Problem.Top.TemperatureC);

    /// <summary>Heat out through the lower face of a column in W for each metre along the tubes.</summary>
    public double BottomHeatWPerM(int column) =>
        Assembly.FaceConductance(Problem, Problem.Bottom, column, 0)
        * (TemperatureC(column, 0) - Problem.Bottom.TemperatureC);

    /// <summary>Heat out through the whole upper face in W for each metre along the tubes.</summary>
    public double TopHeatWPerM() => Enumerable.Range(0, Problem.Columns).Sum(TopHeatWPerM);

    /// <summary>Heat out through the whole lower face in W for each metre along the tubes.</summary>
    public double BottomHeatWPerM() => Enumerable.Range(0, Problem.Columns).Sum(BottomHeatWPerM);

    /// <summary>Temperature of the upper face of the cells in a column, below film and covering, in °C.</summary>
    public double TopFaceC(int column)
    {
        var row = Problem.Rows - 1;
        var width = Problem.XLinesM[column + 1] - Problem.XLinesM[column];
        var half = (Problem.YLinesM[row + 1] - Problem.YLinesM[row]) / 2;
        return TemperatureC(column, row)
            - (
                TopHeatWPerM(column)
                / width
                * half
                / Problem.ConductivitiesWPerMK[(row * Problem.Columns) + column]
            );
    }
}
