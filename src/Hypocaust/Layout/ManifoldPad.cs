namespace Hypocaust.Layout;

/// <summary>
/// The apron in front of the manifold: a block of cells at its wall where the tubes bunch from the outlets to the cells around.
/// Each cell around it on three sides is a slot from which one loop may start.
/// </summary>
internal sealed record ManifoldPad(
    IReadOnlyList<int> Cells,
    IReadOnlyList<(int Cell, Side Facing)> Slots,
    Side Wall,
    Spot WallFrom,
    Spot WallTo
)
{
    // common practice, no source: a manifold stands within a short reach of the floor that it feeds
    private const double FarthestM = 1.5;
    private const int MostCells = 8;

    /// <summary>The pad with enough slots that lies nearest to the manifold; null where none is.</summary>
    public static ManifoldPad? Find(Lattice lattice, Spot manifold, int loops, int rooms)
    {
        List<(int Cell, double Far)> cells =
        [
            .. Enumerable
                .Range(0, lattice.Count)
                .Where(cell => lattice.RoomOf(cell) != Lattice.None && lattice.RoomOf(cell) < rooms)
                .Select(cell => (cell, lattice.Middle(cell).To(manifold))),
        ];
        var nearest = cells.Select(one => one.Far).DefaultIfEmpty(double.PositiveInfinity).Min();
        if (nearest > FarthestM)
        {
            return null;
        }

        ManifoldPad? best = null;
        var least = double.PositiveInfinity;
        foreach (var (cell, far) in cells.Where(one => one.Far < nearest + FarthestM))
        {
            foreach (var wall in Enum.GetValues<Side>().Where(side => !lattice.Linked(cell, side)))
            {
                var pad = Smallest(lattice, cell, wall, loops);
                if (pad is null)
                {
                    continue;
                }

                var cost =
                    new Edge(pad.WallFrom, pad.WallTo).Distance(manifold)
                    + (0.3 * ((pad.WallFrom + pad.WallTo) * 0.5).To(manifold))
                    + (0.05 * pad.Cells.Count)
                    + (1e-6 * far);
                (best, least) = cost < least ? (pad, cost) : (best, least);
            }
        }

        return best;
    }

    private static ManifoldPad? Smallest(Lattice lattice, int start, Side wall, int loops)
    {
        for (var size = 1; size <= MostCells * 2; size++)
        {
            for (var deep = 1; deep <= size; deep++)
            {
                if (
                    size % deep == 0
                    && size / deep <= MostCells
                    && size / deep >= deep
                    && (size / deep) + (2 * deep) >= loops
                    && Block(lattice, start, wall, size / deep, deep) is { } pad
                    && pad.Slots.Count >= loops
                )
                {
                    return pad;
                }
            }
        }

        return null;
    }

    // a block from a corner cell at the wall: so many cells along the wall, so many away from it
    private static ManifoldPad? Block(Lattice lattice, int start, Side wall, int along, int deep)
    {
        var right = (Side)(((int)wall + 1) % 4);
        var away = Lattice.Opposite(wall);
        var left = Lattice.Opposite(right);
        var cells = new List<int>();
        var slots = new List<(int, Side)>();
        var row = start;
        for (var d = 0; d < deep; d++)
        {
            var cell = row;
            for (var a = 0; a < along; a++)
            {
                cells.Add(cell);
                if (d == 0 && lattice.Linked(cell, wall))
                {
                    return null;
                }

                if (a + 1 < along)
                {
                    if (!lattice.Linked(cell, right))
                    {
                        return null;
                    }

                    cell = lattice.Next(cell, right);
                }
            }

            Slot(lattice, slots, row, left);
            Slot(lattice, slots, cell, right);
            if (d + 1 < deep)
            {
                if (!lattice.Linked(row, away))
                {
                    return null;
                }

                row = lattice.Next(row, away);
            }
        }

        foreach (var cell in cells.Skip(cells.Count - along))
        {
            Slot(lattice, slots, cell, away);
        }

        // every block of two by two must be linked all round, or a wall stands in it
        var within = cells.ToHashSet();
        if (cells.Any(cell => !WellLinked(lattice, cell, within)))
        {
            return null;
        }

        return new ManifoldPad(
            cells,
            slots,
            wall,
            lattice.Corner(start, (int)wall),
            lattice.Corner(cells[along - 1], ((int)wall + 1) % 4)
        );
    }

    private static bool WellLinked(Lattice lattice, int cell, HashSet<int> within)
    {
        var (column, row) = lattice.Place(cell);
        int[] beside =
        [
            lattice.At(column, row - 1),
            lattice.At(column + 1, row),
            lattice.At(column, row + 1),
            lattice.At(column - 1, row),
        ];
        return Enumerable
            .Range(0, 4)
            .All(i => !within.Contains(beside[i]) || lattice.Linked(cell, (Side)i));
    }

    private static void Slot(Lattice lattice, List<(int, Side)> slots, int cell, Side towards)
    {
        if (lattice.Linked(cell, towards))
        {
            slots.Add((lattice.Next(cell, towards), Lattice.Opposite(towards)));
        }
    }
}
