using System.Collections.Immutable;
using Hypocaust.Conduction;
using MathNet.Numerics.LinearAlgebra;

namespace Hypocaust.Tests.Conduction;

/// <summary>Sections with every cell another material, on grids of any grading, for the tests of this folder.</summary>
internal static class RandomConduction
{
    public static ImmutableArray<double> Lines(Random random)
    {
        var lines = new List<double> { random.NextDouble() };
        for (var i = random.Next(1, 20); i > 0; i--)
        {
            lines.Add(lines[^1] + Math.Pow(10, -3 + (2 * random.NextDouble())));
        }

        return [.. lines];
    }

    public static double Conductivity(Random random) =>
        Math.Pow(10, -1.7 + (3 * random.NextDouble()));

    public static ConductionProblem Draw(Random random)
    {
        var (x, y) = (Lines(random), Lines(random));
        var (columns, rows) = (x.Length - 1, y.Length - 1);
        return ConductionProblem
            .Create(
                x,
                y,
                [.. Enumerable.Range(0, columns * rows).Select(_ => Conductivity(random))],
                new ConductionFace(
                    20,
                    [.. Enumerable.Range(0, columns).Select(_ => random.NextDouble())]
                ),
                random.Next(3) == 0
                    ? ConductionFace.Adiabatic(columns)
                    : ConductionFace.Uniform(5, 0.1 + random.NextDouble(), columns),
                [
                    .. Enumerable
                        .Range(0, random.Next(4))
                        .Select(_ => new HeldCell(
                            random.Next(columns),
                            random.Next(rows),
                            20 + (20 * random.NextDouble())
                        ))
                        .DistinctBy(cell => (cell.Column, cell.Row)),
                ]
            )
            .Value;
    }

    /// <summary>The heat balances, written out from Fourier's law: half a cell on either side in series.</summary>
    public static (Matrix<double> Matrix, Vector<double> Heat) Dense(ConductionProblem problem)
    {
        var (columns, rows) = (problem.Columns, problem.Rows);
        var matrix = Matrix<double>.Build.Dense(columns * rows, columns * rows);
        var heat = Vector<double>.Build.Dense(columns * rows);
        double Width(int column) => problem.XLinesM[column + 1] - problem.XLinesM[column];
        double Height(int row) => problem.YLinesM[row + 1] - problem.YLinesM[row];
        double K(int cell) => problem.ConductivitiesWPerMK[cell];
        void Link(int one, int other, double conductance)
        {
            matrix[one, one] += conductance;
            matrix[other, other] += conductance;
            matrix[one, other] -= conductance;
            matrix[other, one] -= conductance;
        }

        void Give(int cell, double conductance, double celsius)
        {
            matrix[cell, cell] += conductance;
            heat[cell] += conductance * celsius;
        }

        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var cell = (row * columns) + column;
                if (column + 1 < columns)
                {
                    var half = (Width(column) / K(cell)) + (Width(column + 1) / K(cell + 1));
                    Link(cell, cell + 1, 2 * Height(row) / half);
                }

                if (row + 1 < rows)
                {
                    var half = (Height(row) / K(cell)) + (Height(row + 1) / K(cell + columns));
                    Link(cell, cell + columns, 2 * Width(column) / half);
                }
            }
        }

        for (var column = 0; column < columns; column++)
        {
            var top = ((rows - 1) * columns) + column;
            Give(
                column,
                Width(column)
                    / ((Height(0) / 2 / K(column)) + problem.Bottom.ResistancesM2KPerW[column]),
                problem.Bottom.TemperatureC
            );
            Give(
                top,
                Width(column)
                    / ((Height(rows - 1) / 2 / K(top)) + problem.Top.ResistancesM2KPerW[column]),
                problem.Top.TemperatureC
            );
        }

        foreach (var held in problem.Held)
        {
            var cell = (held.Row * columns) + held.Column;
            // symmetric elimination: the neighbours get their share as heat
            for (var other = 0; other < columns * rows; other++)
            {
                if (other != cell)
                {
                    heat[other] -= matrix[other, cell] * held.TemperatureC;
                    matrix[other, cell] = 0;
                    matrix[cell, other] = 0;
                }
            }

            matrix[cell, cell] = 1;
            heat[cell] = held.TemperatureC;
        }

        return (matrix, heat);
    }
}
