using System.Collections.Immutable;

namespace Hypocaust.Floor;

/// <summary>A table over two axes, read linearly between its points. Its reader keeps the arguments inside.</summary>
internal sealed class LinearTable
{
    private readonly double[] rows;
    private readonly double[] columns;
    private readonly double[,] values;

    /// <summary>Lays the points out as a grid.</summary>
    /// <exception cref="InvalidDataException">The points do not fill a grid.</exception>
    public LinearTable(ImmutableArray<(double Row, double Column, double Value)> points)
    {
        rows = [.. points.Select(point => point.Row).Distinct().Order()];
        columns = [.. points.Select(point => point.Column).Distinct().Order()];
        if (points.Length != rows.Length * columns.Length)
        {
            throw new InvalidDataException("The points of a table must fill a grid.");
        }

        values = new double[rows.Length, columns.Length];
        foreach (var (row, column, value) in points)
        {
            values[Array.IndexOf(rows, row), Array.IndexOf(columns, column)] = value;
        }
    }

    /// <summary>The value at a point inside the table.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside the table or is not a number.</exception>
    public double At(double row, double column)
    {
        var (i, rowShare) = Find(rows, row);
        var (j, columnShare) = Find(columns, column);
        var low = Between(values[i, j], values[i, Next(columns, j)], columnShare);
        var high = Between(
            values[Next(rows, i), j],
            values[Next(rows, i), Next(columns, j)],
            columnShare
        );
        return Between(low, high, rowShare);
    }

    private static int Next(double[] axis, int index) => Math.Min(index + 1, axis.Length - 1);

    private static double Between(double low, double high, double share) =>
        low + (high - low) * share;

    private static (int Index, double Share) Find(double[] axis, double value)
    {
        if (!value.IsWithin(axis[0], axis[^1]))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Outside the table.");
        }

        var found = Array.BinarySearch(axis, value);
        if (found >= 0)
        {
            return (found, 0);
        }

        var below = ~found - 1;
        return (below, (value - axis[below]) / (axis[below + 1] - axis[below]));
    }
}
