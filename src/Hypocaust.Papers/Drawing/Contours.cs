using System.Collections.Immutable;

namespace Hypocaust.Papers.Drawing;

/// <summary>Closed lines around all places of a grid that are as hot as a level, by marching squares.</summary>
/// <remarks>
/// Each square of four grid points is crossed where its edges reach the level, by straight interpolation; in a square with two hot
/// corners across from each other the mean decides. Outside the grid all is cold, so that every line closes along its rim.
/// </remarks>
/// <source>Lorensen and Cline 1987, in the plane (from memory)</source>
internal sealed class Contours
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[,] values;

    // places on the rim twice: once with their value, once cold
    private Contours(double[] x, double[] y, double[,] values) =>
        (this.x, this.y, this.values) = (x, y, values);

    /// <summary>A grid of values.</summary>
    /// <param name="x">Places of its columns, rising.</param>
    /// <param name="y">Places of its rows, rising.</param>
    /// <param name="value">Value at a column and row.</param>
    public static Contours Of(
        IReadOnlyList<double> x,
        IReadOnlyList<double> y,
        Func<int, int, double> value
    )
    {
        var padded = new double[x.Count + 2, y.Count + 2];
        for (var i = 0; i < x.Count + 2; i++)
        {
            for (var j = 0; j < y.Count + 2; j++)
            {
                var inside = i > 0 && j > 0 && i <= x.Count && j <= y.Count;
                padded[i, j] = inside ? value(i - 1, j - 1) : double.NegativeInfinity;
            }
        }

        return new([x[0], .. x, x[^1]], [y[0], .. y, y[^1]], padded);
    }

    /// <summary>The lines around what is at the level or above it.</summary>
    public ImmutableArray<ImmutableArray<Point>> At(double level)
    {
        // from the edge where a line enters a square to the edge where it leaves; hot always on the same hand
        var next = new Dictionary<(int I, int J, bool Upright), (int, int, bool)>();
        for (var i = 0; i + 1 < x.Length; i++)
        {
            for (var j = 0; j + 1 < y.Length; j++)
            {
                Cross(next, i, j, level);
            }
        }

        var lines = ImmutableArray.CreateBuilder<ImmutableArray<Point>>();
        while (next.Count > 0)
        {
            var line = ImmutableArray.CreateBuilder<Point>();
            var edge = next.Keys.First();
            while (next.Remove(edge, out var following))
            {
                line.Add(On(edge, level));
                edge = following;
            }

            lines.Add(line.ToImmutable());
        }

        return lines.ToImmutable();
    }

    // corners counted round the square: 0 low left, 1 low right, 2 high right, 3 high left; edge n lies between corners n and n + 1
    private void Cross(
        Dictionary<(int, int, bool), (int, int, bool)> next,
        int i,
        int j,
        double level
    )
    {
        ReadOnlySpan<double> corners =
        [
            values[i, j],
            values[i + 1, j],
            values[i + 1, j + 1],
            values[i, j + 1],
        ];
        (int, int, bool) Edge(int side) =>
            side switch
            {
                0 => (i, j, false),
                1 => (i + 1, j, true),
                2 => (i, j + 1, false),
                _ => (i, j, true),
            };
        var mean = (corners[0] + corners[1] + corners[2] + corners[3]) / 4;
        for (var side = 0; side < 4; side++)
        {
            // the line enters over a side that goes from cold to hot, and leaves over one that goes from hot to cold
            if (corners[side] >= level || corners[(side + 1) % 4] < level)
            {
                continue;
            }

            // with a cold middle it turns back at once around the hot corner, else it passes on around the cold one
            var two = corners[(side + 2) % 4] < level && corners[(side + 3) % 4] >= level;
            var leave =
                two ? (mean >= level ? side + 3 : side + 1)
                : corners[(side + 2) % 4] < level ? side + 1
                : corners[(side + 3) % 4] < level ? side + 2
                : side + 3;
            next[Edge(side)] = Edge(leave % 4);
        }
    }

    private Point On((int I, int J, bool Upright) edge, double level)
    {
        var (i, j) = (edge.I, edge.J);
        var (i2, j2) = edge.Upright ? (i, j + 1) : (i + 1, j);
        var (a, b) = (values[i, j], values[i2, j2]);
        var share =
            double.IsInfinity(a) ? 1
            : double.IsInfinity(b) ? 0
            : (level - a) / (b - a);
        return new(x[i] + (share * (x[i2] - x[i])), y[j] + (share * (y[j2] - y[j])));
    }
}
