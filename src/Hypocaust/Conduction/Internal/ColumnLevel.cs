using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Hypocaust.Conduction.Internal;

/// <summary>One level of the multigrid: odd columns between even columns; the even ones are the columns of the next level.</summary>
internal sealed class ColumnLevel
{
    private const int Lanes = SplitField.Lanes;

    private readonly int columns;
    private readonly int rows;
    private readonly ColumnSet odd;
    private readonly ColumnSet even;
    private readonly SplitField diagonal;
    private readonly SplitField up;
    private readonly SplitField links;
    private readonly SplitField work;

    public ColumnLevel(int columns, int rows)
    {
        (this.columns, this.rows) = (columns, rows);
        (diagonal, up) = (new(columns, rows), new(columns, rows));
        (links, work) = (new(columns, rows), new(columns, rows));
        Heat = new SplitField(columns, rows);
        odd = new ColumnSet(links.Stride, rows);
        even = new ColumnSet(links.Stride, rows);
    }

    /// <summary>Heat that the level is asked to balance.</summary>
    public SplitField Heat { get; }

    /// <summary>Conductances from each odd column to its left and to its right.</summary>
    public (double[] Left, double[] Right) Links => (links.Odd, links.Even);

    /// <summary>Temperatures of the even columns before the last sweep over them.</summary>
    public double[] EvenBeforeLast => work.Even;

    public int Columns => columns;

    /// <summary>Takes the conductances of a level and gives those of the next.</summary>
    public void Prepare(FivePointSystem fine, FivePointSystem? coarse)
    {
        for (var row = 0; row < rows; row++)
        {
            Split(fine, row);
        }

        odd.Factor(diagonal.Odd, up.Odd);
        even.Factor(diagonal.Even, up.Even);
        if (coarse is not null)
        {
            for (var row = 0; row < rows; row++)
            {
                Coarsen(fine, coarse, row);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Split(FivePointSystem fine, int row)
    {
        var start = diagonal.Start(row);
        var first = row * columns;
        var right = fine.Right.AsSpan(first, columns);
        var above = fine.Up.AsSpan(first, columns);
        var below = row > 0 ? fine.Up.AsSpan(first - columns, columns) : default;
        var sink = fine.Sink.AsSpan(first, columns);
        for (var column = 0; column < columns; column++)
        {
            var left = column > 0 ? right[column - 1] : 0;
            var sum =
                left
                + right[column]
                + above[column]
                + (below.IsEmpty ? 0 : below[column])
                + sink[column];
            var at = start + (column / 2);
            if (column % 2 == 1)
            {
                (diagonal.Odd[at], up.Odd[at]) = (sum, above[column]);
                (links.Odd[at], links.Even[at]) = (left, right[column]);
            }
            else
            {
                (diagonal.Even[at], up.Even[at]) = (sum, above[column]);
            }
        }
    }

    // An odd column is shared out to its neighbours by their conductances, as if no heat flowed along it: exact across the columns,
    // and along them each neighbour takes over its share of the conductance.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Coarsen(FivePointSystem fine, FivePointSystem coarse, int row)
    {
        var first = row * columns;
        var into = row * coarse.Columns;
        for (var column = 0; column < columns; column += 2)
        {
            coarse.Up[into + (column / 2)] = fine.Up[first + column];
            coarse.Sink[into + (column / 2)] = fine.Sink[first + column];
            coarse.Right[into + (column / 2)] = 0;
        }

        for (var column = 1; column < columns; column += 2)
        {
            var cell = first + column;
            var (left, right, sink) = (fine.Right[cell - 1], fine.Right[cell], fine.Sink[cell]);
            var share = 1 / (left + right + sink);
            var at = into + (column / 2);
            coarse.Right[at] = left * right * share;
            coarse.Sink[at] += left * sink * share;
            coarse.Up[at] += left * share * fine.Up[cell];
            if (column + 1 < columns)
            {
                coarse.Sink[at + 1] += right * sink * share;
                coarse.Up[at + 1] += right * share * fine.Up[cell];
            }
        }
    }

    /// <summary>First half of a cycle from temperatures of 0: even columns, then odd ones; the imbalance left goes down as heat.</summary>
    public void Descend(double[] heatOdd, double[] heatEven, SplitField coarseHeat)
    {
        even.Solve(heatEven, links.Even, links.Odd, -1, null, work.Even);
        odd.Solve(heatOdd, links.Odd, links.Even, 0, work.Even, work.Odd);
        for (var row = 0; row < rows; row++)
        {
            Restrict(row, coarseHeat);
        }
    }

    // all that is out of balance is what the odd columns have sent to the even ones since those were solved
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Restrict(int row, SplitField coarse)
    {
        var (from, into) = (links.Start(row), coarse.Start(row));
        var (left, right, x) = (links.Odd, links.Even, work.Odd);
        for (var column = 0; column < coarse.Columns; column++)
        {
            var at = from + column;
            var heat = (left[at] * x[at]) + (right[at - 1] * x[at - 1]);
            (column % 2 == 1 ? coarse.Odd : coarse.Even)[into + (column / 2)] = heat;
        }
    }

    /// <summary>Second half: the coarse level's correction, then odd columns, then even ones.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Ascend(
        double[] heatOdd,
        double[] heatEven,
        SplitField coarse,
        double[] intoOdd,
        double[] intoEven
    )
    {
        for (var row = 0; row < rows; row++)
        {
            var (into, from) = (links.Start(row), coarse.Start(row));
            for (var column = 0; column < coarse.Columns; column++)
            {
                work.Even[into + column] += (column % 2 == 1 ? coarse.Odd : coarse.Even)[
                    from + (column / 2)
                ];
            }
        }

        odd.Solve(heatOdd, links.Odd, links.Even, 0, work.Even, intoOdd);
        even.Solve(heatEven, links.Even, links.Odd, -1, intoOdd, intoEven);
    }

    /// <summary>Solves the only column of the coarsest level.</summary>
    public void SolveLast(double[] heatEven, double[] intoEven)
    {
        even.Solve(heatEven, links.Even, links.Odd, -1, null, intoEven);
        intoEven.CopyTo(work.Even, 0);
    }

    /// <summary>
    /// Heat that the temperatures of the cycle just run really balance, in the odd columns: what was asked, and what the last sweep
    /// over the even ones changed. In the even columns it is just what was asked.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void BalancedOdd(double[] heatOdd, double[] even, double[] into)
    {
        ref var l = ref MemoryMarshal.GetArrayDataReference(links.Odd);
        ref var r = ref MemoryMarshal.GetArrayDataReference(links.Even);
        ref var before = ref MemoryMarshal.GetArrayDataReference(work.Even);
        ref var after = ref MemoryMarshal.GetArrayDataReference(even);
        ref var b = ref MemoryMarshal.GetArrayDataReference(heatOdd);
        ref var y = ref MemoryMarshal.GetArrayDataReference(into);
        for (nuint at = Lanes; at < (nuint)(Lanes + (links.Stride * rows)); at += Lanes)
        {
            var sum = Vector512.FusedMultiplyAdd(
                Vector512.LoadUnsafe(ref l, at),
                Vector512.LoadUnsafe(ref before, at) - Vector512.LoadUnsafe(ref after, at),
                Vector512.LoadUnsafe(ref b, at)
            );
            Vector512
                .FusedMultiplyAdd(
                    Vector512.LoadUnsafe(ref r, at),
                    Vector512.LoadUnsafe(ref before, at + 1)
                        - Vector512.LoadUnsafe(ref after, at + 1),
                    sum
                )
                .StoreUnsafe(ref y, at);
        }
    }
}
