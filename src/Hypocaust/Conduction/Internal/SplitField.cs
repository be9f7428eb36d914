using System.Runtime.CompilerServices;

namespace Hypocaust.Conduction.Internal;

/// <summary>
/// A number for each cell, odd and even columns apart, so that a row of each lies together in memory. Odd column 2f + 1 and even
/// column 2f both stand at place f + 1 of their row; the rest of a row is padding and stays 0.
/// </summary>
internal sealed class SplitField
{
    /// <summary>Numbers handled at once.</summary>
    public const int Lanes = 8;

    public SplitField(int columns, int rows)
    {
        (Columns, Rows) = (columns, rows);
        Stride = StrideOf(columns);
        // one more row of padding at either end, for the neighbours of the outermost places
        Odd = new double[(Stride * rows) + (2 * Lanes)];
        Even = new double[(Stride * rows) + (2 * Lanes)];
    }

    public int Columns { get; }

    public int Rows { get; }

    public int Stride { get; }

    public double[] Odd { get; }

    public double[] Even { get; }

    public static int StrideOf(int columns) => ((columns / 2) + 3 + Lanes - 1) / Lanes * Lanes;

    /// <summary>Place of the first column of a row.</summary>
    public int Start(int row) => Lanes + (row * Stride) + 1;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void CopyFrom(ReadOnlySpan<double> natural)
    {
        for (var row = 0; row < Rows; row++)
        {
            var line = natural.Slice(row * Columns, Columns);
            var start = Start(row);
            for (var column = 0; column + 1 < Columns; column += 2)
            {
                Even[start + (column / 2)] = line[column];
                Odd[start + (column / 2)] = line[column + 1];
            }

            if (Columns % 2 == 1)
            {
                Even[start + (Columns / 2)] = line[Columns - 1];
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void CopyTo(Span<double> natural)
    {
        for (var row = 0; row < Rows; row++)
        {
            var line = natural.Slice(row * Columns, Columns);
            var start = Start(row);
            for (var column = 0; column + 1 < Columns; column += 2)
            {
                line[column] = Even[start + (column / 2)];
                line[column + 1] = Odd[start + (column / 2)];
            }

            if (Columns % 2 == 1)
            {
                line[Columns - 1] = Even[start + (Columns / 2)];
            }
        }
    }
}
