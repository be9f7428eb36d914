namespace Hypocaust.Hydraulics.Internal;

/// <summary>
/// LDLᵀ factorisation of the symmetric nodal matrix. Which entries exist and which meet in each elimination step is worked out once;
/// <see cref="Solve"/> then only runs through lists.
/// </summary>
internal sealed class SparseLdl
{
    private readonly int count;
    private readonly int[] start;
    private readonly int[] row;
    private readonly int[] target;
    private readonly double[] factor;

    /// <summary>Lays out the factor for nodes already numbered in the order of their elimination.</summary>
    /// <param name="pattern">The order and the fill.</param>
    public SparseLdl(EliminationPattern pattern)
    {
        count = pattern.Count;
        var position = new Dictionary<(int Column, int Row), int>();
        start = new int[count + 1];
        var rows = new List<int>();
        for (var k = 0; k < count; k++)
        {
            foreach (var r in pattern.Below[k])
            {
                position[(k, r)] = rows.Count;
                rows.Add(r);
            }

            start[k + 1] = rows.Count;
        }

        row = [.. rows];
        factor = new double[row.Length];
        OffDiagonal = new double[row.Length + 1];
        Position = position;
        var targets = new List<int>();
        for (var k = 0; k < count; k++)
        {
            for (var a = start[k]; a < start[k + 1]; a++)
            {
                for (var b = start[k]; b < a; b++)
                {
                    targets.Add(position[(row[b], row[a])]);
                }
            }
        }

        target = [.. targets];
    }

    /// <summary>Where each pair (earlier, later) stands in <see cref="OffDiagonal"/>.</summary>
    public IReadOnlyDictionary<(int Column, int Row), int> Position { get; }

    /// <summary>Off-diagonal entries; the last one is a dump for entries that belong to no equation.</summary>
    public double[] OffDiagonal { get; }

    /// <summary>Factorises and solves in place. False where a pivot is not positive: the matrix is singular in double precision.</summary>
    /// <param name="diagonal">Diagonal; overwritten.</param>
    /// <param name="x">Right-hand side; on return the solution.</param>
    public bool Solve(double[] diagonal, double[] x)
    {
        var values = OffDiagonal;
        var t = 0;
        for (var k = 0; k < count; k++)
        {
            var pivot = diagonal[k];
            if (!(pivot > 0))
            {
                return false;
            }

            var inverse = 1 / pivot;
            var y = x[k];
            var first = start[k];
            var end = start[k + 1];
            for (var a = first; a < end; a++)
            {
                var value = values[a];
                var l = value * inverse;
                factor[a] = l;
                diagonal[row[a]] -= l * value;
                x[row[a]] -= l * y;
                for (var b = first; b < a; b++)
                {
                    values[target[t++]] -= l * values[b];
                }
            }

            x[k] = y * inverse;
        }

        for (var k = count - 1; k >= 0; k--)
        {
            var sum = x[k];
            for (var a = start[k]; a < start[k + 1]; a++)
            {
                sum -= factor[a] * x[row[a]];
            }

            x[k] = sum;
        }

        return true;
    }
}
