using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Hypocaust.Conduction.Internal;

/// <summary>
/// Every second column of a level: no two of them are neighbours, so all are solved at once, exactly, from bottom to top and back,
/// eight columns in a register.
/// </summary>
internal sealed class ColumnSet(int stride, int rows)
{
    private const int Lanes = SplitField.Lanes;

    // factors of the tridiagonal matrices: −(off-diagonal over pivot) of the row below, and 1 over the pivot
    private readonly double[] carry = new double[(stride * (rows + 1)) + (2 * Lanes)];
    private readonly double[] inverse = new double[(stride * rows) + (2 * Lanes)];

    /// <summary>Factors the columns; all arrays laid out like a half of <see cref="SplitField"/>.</summary>
    /// <param name="diagonal">Sum of conductances of each cell; 0 in the padding.</param>
    /// <param name="up">Conductance to the cell above.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Factor(double[] diagonal, double[] up)
    {
        ref var m = ref MemoryMarshal.GetArrayDataReference(carry);
        ref var w = ref MemoryMarshal.GetArrayDataReference(inverse);
        ref var d = ref MemoryMarshal.GetArrayDataReference(diagonal);
        ref var g = ref MemoryMarshal.GetArrayDataReference(up);
        for (nuint at = Lanes; at < (nuint)(Lanes + (stride * rows)); at += Lanes)
        {
            var pivot = Vector512.LoadUnsafe(ref d, at);
            if (at >= (nuint)(Lanes + stride))
            {
                var below = at - (nuint)stride;
                pivot = Vector512.FusedMultiplyAdd(
                    -Vector512.LoadUnsafe(ref m, at),
                    Vector512.LoadUnsafe(ref g, below),
                    pivot
                );
            }

            var one = Vector512.ConditionalSelect(
                Vector512.GreaterThan(pivot, Vector512<double>.Zero),
                Vector512<double>.One / pivot,
                Vector512<double>.Zero
            );
            one.StoreUnsafe(ref w, at);
            (Vector512.LoadUnsafe(ref g, at) * one).StoreUnsafe(ref m, at + (nuint)stride);
        }
    }

    /// <summary>
    /// Solves the columns for <paramref name="heat"/> and what flows in from the columns on either side.
    /// </summary>
    /// <param name="heat">Heat of each cell; null for none.</param>
    /// <param name="left">Conductance to the column on the left.</param>
    /// <param name="right">Conductance to the column on the right.</param>
    /// <param name="leftShift">Place of the left column's cell against this one's: −1 or 0. That of the right column's is one more.</param>
    /// <param name="sides">Temperatures of the other columns; null for 0.</param>
    /// <param name="into">Receives the temperatures.</param>
    public void Solve(
        double[]? heat,
        double[] left,
        double[] right,
        int leftShift,
        double[]? sides,
        double[] into
    )
    {
        Forward(heat, left, right, leftShift, sides, into);
        Backward(into);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Forward(
        double[]? heat,
        double[] left,
        double[] right,
        int leftShift,
        double[]? sides,
        double[] into
    )
    {
        ref var m = ref MemoryMarshal.GetArrayDataReference(carry);
        ref var x = ref MemoryMarshal.GetArrayDataReference(into);
        ref var l = ref MemoryMarshal.GetArrayDataReference(left);
        ref var r = ref MemoryMarshal.GetArrayDataReference(right);
        ref var b = ref MemoryMarshal.GetArrayDataReference(heat ?? into);
        ref var s = ref MemoryMarshal.GetArrayDataReference(sides ?? into);
        var end = (nuint)(Lanes + (stride * rows));
        for (nuint at = Lanes; at < end; at += Lanes)
        {
            var sum = heat is null ? Vector512<double>.Zero : Vector512.LoadUnsafe(ref b, at);
            if (sides is not null)
            {
                // conductances stand at the odd column's place: the left one of an even column a place back
                var before = (nuint)((nint)at + leftShift);
                sum = Vector512.FusedMultiplyAdd(
                    Vector512.LoadUnsafe(ref l, before),
                    Vector512.LoadUnsafe(ref s, before),
                    sum
                );
                sum = Vector512.FusedMultiplyAdd(
                    Vector512.LoadUnsafe(ref r, at),
                    Vector512.LoadUnsafe(ref s, before + 1),
                    sum
                );
            }

            if (at >= (nuint)(Lanes + stride))
            {
                sum = Vector512.FusedMultiplyAdd(
                    Vector512.LoadUnsafe(ref m, at),
                    Vector512.LoadUnsafe(ref x, at - (nuint)stride),
                    sum
                );
            }

            sum.StoreUnsafe(ref x, at);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Backward(double[] into)
    {
        ref var m = ref MemoryMarshal.GetArrayDataReference(carry);
        ref var w = ref MemoryMarshal.GetArrayDataReference(inverse);
        ref var x = ref MemoryMarshal.GetArrayDataReference(into);
        var last = (nuint)(Lanes + (stride * (rows - 1)));
        for (var at = last; at < last + (nuint)stride; at += Lanes)
        {
            (Vector512.LoadUnsafe(ref x, at) * Vector512.LoadUnsafe(ref w, at)).StoreUnsafe(
                ref x,
                at
            );
        }

        for (var at = last; at > Lanes; )
        {
            at -= Lanes;
            Vector512
                .FusedMultiplyAdd(
                    Vector512.LoadUnsafe(ref m, at + (nuint)stride),
                    Vector512.LoadUnsafe(ref x, at + (nuint)stride),
                    Vector512.LoadUnsafe(ref x, at) * Vector512.LoadUnsafe(ref w, at)
                )
                .StoreUnsafe(ref x, at);
        }
    }
}
