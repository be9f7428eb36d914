namespace Hypocaust.Layout;

/// <summary>Which cells are given away first, and which room is farthest.</summary>
internal static class SweepOrder
{
    /// <summary>The higher, the earlier: whole columns or rows; the place across only breaks ties.</summary>
    public static double[] Rank(Lattice lattice, ManifoldPad pad, Sweep sweep)
    {
        var (rootColumn, rootRow) = lattice.Place(pad.Cells[0]);
        var found = new double[lattice.Count];
        for (var cell = 0; cell < lattice.Count; cell++)
        {
            var (column, row) = lattice.Place(cell);
            var (dx, dy) = (Math.Abs(column - rootColumn), Math.Abs(row - rootRow));
            found[cell] = sweep switch
            {
                Sweep.East => column + (dy * 1e-4),
                Sweep.West => -column + (dy * 1e-4),
                Sweep.North => row + (dx * 1e-4),
                Sweep.South => -row + (dx * 1e-4),
                _ => Math.Max(dx, dy) + (Math.Min(dx, dy) * 1e-4),
            };
        }

        return found;
    }

    /// <summary>Steps of each cell from the nearest slot; the largest number where none leads there.</summary>
    public static int[] Steps(Lattice lattice, ManifoldPad pad, bool[] free)
    {
        var found = new int[lattice.Count];
        Array.Fill(found, int.MaxValue);
        var edge = new Queue<int>();
        foreach (var (cell, _) in pad.Slots)
        {
            found[cell] = 0;
            edge.Enqueue(cell);
        }

        while (edge.TryDequeue(out var cell))
        {
            foreach (
                var next in lattice
                    .Neighbours(cell)
                    .Where(next => free[next] && found[next] == int.MaxValue)
            )
            {
                found[next] = found[cell] + 1;
                edge.Enqueue(next);
            }
        }

        return found;
    }
}
