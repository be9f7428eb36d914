using System.Collections.Immutable;
using Hypocaust.Conduction;

namespace Hypocaust.Floor.Section;

/// <summary>Temperatures at the middles of the cells of half a spacing, tube at the left edge, from the bottom up.</summary>
public sealed class SectionField
{
    private readonly double[] values;

    private SectionField(
        ImmutableArray<double> x,
        ImmutableArray<double> y,
        double[] values,
        int tubeRow
    ) => (XM, YM, this.values, TubeRow) = (x, y, values, tubeRow);

    /// <summary>Distances of the columns' middles from the plane through the tube in m, rising.</summary>
    public ImmutableArray<double> XM { get; }

    /// <summary>Heights of the rows' middles above the bottom of the layers in m, rising.</summary>
    public ImmutableArray<double> YM { get; }

    /// <summary>Number of columns.</summary>
    public int Columns => XM.Length;

    /// <summary>Number of rows.</summary>
    public int Rows => YM.Length;

    /// <summary>Row just above the tube's centre; with column 0, a place inside the tube.</summary>
    public int TubeRow { get; }

    /// <summary>Temperature in °C; inside the tube, that of the water.</summary>
    public double this[int column, int row] => values[(row * Columns) + column];

    internal static SectionField Of(ConductionSolution solution) =>
        new(
            Middles(solution.Problem.XLinesM),
            Middles(solution.Problem.YLinesM),
            solution.TemperaturesC.ToArray(),
            TubeRowOf(solution.Problem)
        );

    internal static SectionField ZeroLike(SectionField field) =>
        new(field.XM, field.YM, new double[field.values.Length], field.TubeRow);

    internal static SectionField Sum(
        SectionField first,
        double firstFactor,
        SectionField second,
        double secondFactor,
        double added
    ) =>
        new(
            first.XM,
            first.YM,
            [
                .. first.values.Zip(
                    second.values,
                    (a, b) => (a * firstFactor) + (b * secondFactor) + added
                ),
            ],
            first.TubeRow
        );

    private static int TubeRowOf(ConductionProblem problem)
    {
        var row = 0;
        while ((problem.YLinesM[row] + problem.YLinesM[row + 1]) / 2 < problem.Tubes[0].YM)
        {
            row++;
        }

        return row;
    }

    private static ImmutableArray<double> Middles(ImmutableArray<double> lines) =>
        [.. lines.Zip(lines.Skip(1), (from, to) => (from + to) / 2)];
}
