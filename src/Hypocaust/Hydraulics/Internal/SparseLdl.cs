using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

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
    /// <param name="diagonal">Diagonal, at least as long as the matrix; overwritten.</param>
    /// <param name="x">Right-hand side, at least as long; on return the solution.</param>
    public bool Solve(double[] diagonal, double[] x)
    {
        // references instead of indexed arrays: the bounds are right by construction, and checking them costs a third of the time
        ref var d = ref MemoryMarshal.GetArrayDataReference(diagonal);
        ref var v = ref MemoryMarshal.GetArrayDataReference(OffDiagonal);
        ref var f = ref MemoryMarshal.GetArrayDataReference(factor);
        ref var r = ref MemoryMarshal.GetArrayDataReference(row);
        ref var meeting = ref MemoryMarshal.GetArrayDataReference(target);
        ref var b = ref MemoryMarshal.GetArrayDataReference(x);
        var first = 0;
        for (var k = 0; k < count; k++)
        {
            var pivot = Unsafe.Add(ref d, k);
            if (!(pivot > 0))
            {
                return false;
            }

            var inverse = 1 / pivot;
            var y = Unsafe.Add(ref b, k);
            var end = start[k + 1];
            for (var i = first; i < end; i++)
            {
                var value = Unsafe.Add(ref v, i);
                var l = value * inverse;
                var other = Unsafe.Add(ref r, i);
                Unsafe.Add(ref f, i) = l;
                Unsafe.Add(ref d, other) -= l * value;
                Unsafe.Add(ref b, other) -= l * y;
                for (var j = first; j < i; j++)
                {
                    Unsafe.Add(ref v, meeting) -= l * Unsafe.Add(ref v, j);
                    meeting = ref Unsafe.Add(ref meeting, 1);
                }
            }

            Unsafe.Add(ref b, k) = y * inverse;
            first = end;
        }

        for (var k = count - 1; k >= 0; k--)
        {
            var sum = Unsafe.Add(ref b, k);
            for (var i = start[k]; i < first; i++)
            {
                sum -= Unsafe.Add(ref f, i) * Unsafe.Add(ref b, Unsafe.Add(ref r, i));
            }

            first = start[k];
            Unsafe.Add(ref b, k) = sum;
        }

        return true;
    }
}
