using System.Collections.Immutable;
using Hypocaust.Conduction;
using Hypocaust.Problems;

namespace Hypocaust.Floor.Section;

/// <summary>How finely a section is solved.</summary>
/// <param name="CellsPerRadius">Cells across the tube's radius of the coarser of two grids; default 4. The finer has twice as many.</param>
public sealed record SectionAccuracy(int CellsPerRadius = 4);

/// <summary>A floor section solved in two dimensions, for any build-up: half a spacing between the planes of symmetry.</summary>
/// <remarks>
/// Solved on two grids, one with every cell of the other halved. The figures are the finer one's; <see cref="ErrorPercent"/> is what
/// the halving changed, and an allowance for the circle. Against the independent solutions of section2d.csv:
/// see docs/methods/section.md.
/// </remarks>
/// <source>Fourier's law, finite volumes; checked against section2d.csv, floor_methods.csv, floor_limits_2d.csv, floor_resistance.csv</source>
public sealed class FloorSection2D
{
    // The tube's circle cuts the cells of either grid in its own way, which their difference need not show; the most seen against
    // the independent solutions is 0.1 %.
    private const double CircleErrorPercent = 0.1;

    private FloorSection2D(
        SectionBuildUp buildUp,
        SectionResponse response,
        SectionField byWater,
        SectionField byBelow
    )
    {
        BuildUp = buildUp;
        Response = response;
        ByWater = byWater;
        ByBelow = byBelow;
    }

    /// <summary>What was solved.</summary>
    public SectionBuildUp BuildUp { get; }

    /// <summary>Heat and surface as they follow the three temperatures.</summary>
    public SectionResponse Response { get; }

    /// <summary>Estimated error of the heat in per cent of all that the water gives: how far the two grids lie apart, and 0.1 for the circle in the grid.</summary>
    public double ErrorPercent { get; private init; }

    /// <summary>Cells of the finer grid.</summary>
    public int Cells { get; private init; }

    /// <summary>Iterations on the finer grid.</summary>
    public int Iterations { get; private init; }

    /// <summary>Largest imbalance of a cell on the finer grid, as a share of the temperature difference.</summary>
    public double Residual { get; private init; }

    /// <summary>Field for water at 1, room and below at 0.</summary>
    private SectionField ByWater { get; }

    /// <summary>Field for below at 1, water and room at 0.</summary>
    private SectionField ByBelow { get; }

    /// <summary>Solves a section.</summary>
    /// <param name="buildUp">The section; what is physically impossible about it is given as problems.</param>
    /// <param name="accuracy">How finely; left out, 4 and 8 cells across the tube's radius.</param>
    public static Result<FloorSection2D> Solve(
        SectionBuildUp buildUp,
        SectionAccuracy? accuracy = null
    )
    {
        List<Problem> problems = [.. buildUp.Problems()];
        if (problems.Count > 0)
        {
            return Result<FloorSection2D>.Failed(problems);
        }

        var cells = (accuracy ?? new SectionAccuracy()).CellsPerRadius;
        var x = SectionGrid.Across(buildUp, cells);
        var y = SectionGrid.Upward(buildUp, cells);
        var coarse = On(buildUp, x, y);
        var fine = On(buildUp, SectionGrid.Halve(x), SectionGrid.Halve(y));
        return
            fine.Status == ConductionStatus.Converged && coarse.Status == ConductionStatus.Converged
            ? new FloorSection2D(buildUp, fine.Response, fine.ByWater, fine.ByBelow)
            {
                ErrorPercent = Apart(coarse.Response, fine.Response),
                Cells = fine.ByWater.Columns * fine.ByWater.Rows,
                Iterations = fine.Iterations,
                Residual = fine.Residual,
            }
            : FloorProblems.SectionNotSolved(fine.Status.Sentence());
    }

    /// <summary>Temperatures in the layers.</summary>
    /// <param name="waterC">Water in °C.</param>
    /// <param name="roomC">Room in °C.</param>
    /// <param name="belowC">Below in °C.</param>
    public SectionField FieldC(double waterC, double roomC, double belowC) =>
        SectionField.Sum(ByWater, waterC - roomC, ByBelow, belowC - roomC, roomC);

    private static double Apart(SectionResponse coarse, SectionResponse fine) =>
        CircleErrorPercent
        + 100
            * Math.Max(
                Math.Abs(coarse.UpWPerM2K - fine.UpWPerM2K),
                Math.Abs(coarse.DownWPerM2K - fine.DownWPerM2K)
            )
            / (fine.UpWPerM2K + fine.DownWPerM2K);

    private sealed record Grid(
        SectionResponse Response,
        SectionField ByWater,
        SectionField ByBelow,
        ConductionStatus Status,
        int Iterations,
        double Residual
    );

    private static Grid On(
        SectionBuildUp section,
        ImmutableArray<double> x,
        ImmutableArray<double> y
    )
    {
        var solver = new ConductionSolver();
        var byWater = solver.Solve(SectionConduction.Unit(section, x, y, waterC: 1, belowC: 0));
        var closed = double.IsPositiveInfinity(section.BelowM2KPerW);
        var byBelow = closed
            ? null
            : solver.Solve(SectionConduction.Unit(section, x, y, waterC: 0, belowC: 1));
        var half = section.SpacingM / 2;
        var (warmByWater, coldByWater) = SectionConduction.Surface(section, byWater);
        var (warmByBelow, coldByBelow) = byBelow is null
            ? (0, 0)
            : SectionConduction.Surface(section, byBelow);
        var water = SectionField.Of(byWater);
        return new Grid(
            new SectionResponse(
                byWater.TopHeatWPerM() / half,
                byWater.BottomHeatWPerM() / half,
                byBelow is null ? 0 : byBelow.TopHeatWPerM() / half,
                warmByWater,
                coldByWater,
                warmByBelow,
                coldByBelow
            ),
            water,
            byBelow is null ? SectionField.ZeroLike(water) : SectionField.Of(byBelow),
            byBelow is { Status: not ConductionStatus.Converged } ? byBelow.Status : byWater.Status,
            Math.Max(byWater.Iterations, byBelow?.Iterations ?? 0),
            Math.Max(byWater.ImbalanceK, byBelow?.ImbalanceK ?? 0)
        );
    }
}
