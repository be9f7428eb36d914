namespace Hypocaust.Layout;

/// <summary>
/// Gives the cells of the floor away to loops, one after the other: the far end of what is left, the way there along the walls,
/// and what would be cut off. What remains stays in touch with the manifold, so no later loop has to cross an earlier one.
/// </summary>
internal sealed class FieldCarver
{
    // a step through open floor costs more than one along a wall or another loop, so that ways hug the edge
    private const double OpenStep = 1.4;

    private readonly Lattice lattice;
    private readonly ManifoldPad pad;
    private readonly int[] counts;
    private readonly bool[] free;
    private readonly double[] rank;
    private readonly int[] steps;
    private readonly HashSet<(int Cell, Side Facing)> slots;
    private readonly double[] cost;
    private readonly int[] from;
    private readonly int[] stamp;
    private int now;

    private FieldCarver(Lattice lattice, ManifoldPad pad, int[] counts, Sweep sweep)
    {
        (this.lattice, this.pad, this.counts) = (lattice, pad, counts);
        free = new bool[lattice.Count];
        for (var cell = 0; cell < lattice.Count; cell++)
        {
            free[cell] = lattice.RoomOf(cell) != Lattice.None;
        }

        foreach (var cell in pad.Cells)
        {
            free[cell] = false;
        }

        slots = [.. pad.Slots];
        cost = new double[lattice.Count];
        from = new int[lattice.Count];
        stamp = new int[lattice.Count];
        steps = SweepOrder.Steps(lattice, pad, free);
        rank = SweepOrder.Rank(lattice, pad, sweep);
    }

    /// <summary>The loops; a room that the manifold does not reach has none.</summary>
    /// <param name="lattice">The floor.</param>
    /// <param name="pad">The apron of the manifold.</param>
    /// <param name="counts">Loops of each room.</param>
    /// <param name="sweep">Which end of a room comes first.</param>
    public static List<LoopField> Carve(
        Lattice lattice,
        ManifoldPad pad,
        int[] counts,
        Sweep sweep
    ) => new FieldCarver(lattice, pad, counts, sweep).Carve();

    private List<LoopField> Carve()
    {
        var loops = new List<LoopField>();
        foreach (var room in Enumerable.Range(0, counts.Length).OrderByDescending(Distance))
        {
            for (var left = counts[room]; left > 0; left--)
            {
                if (Loop(room, left) is not { } loop)
                {
                    break;
                }

                foreach (var cell in loop.Cells)
                {
                    free[cell] = false;
                }

                slots.RemoveWhere(slot => loop.Cells.Contains(slot.Cell));
                loops.Add(loop);
            }
        }

        return loops;
    }

    private int Distance(int room) =>
        Enumerable
            .Range(0, lattice.Count)
            .Where(cell => lattice.RoomOf(cell) == room && free[cell])
            .Select(cell => steps[cell])
            .DefaultIfEmpty(int.MaxValue)
            .Min();

    private LoopField? Loop(int room, int left)
    {
        MarkReachable();
        List<int> own =
        [
            .. Enumerable
                .Range(0, lattice.Count)
                .Where(cell => lattice.RoomOf(cell) == room && IsMarked(cell)),
        ];
        if (own.Count == 0)
        {
            return null;
        }

        if (left == 1)
        {
            return Close(room, Largest(own), room);
        }

        var quota = own.Sum(lattice.TubeM) / left;
        var wanted = quota;
        LoopField? best = null;
        var nearest = double.PositiveInfinity;
        for (var attempt = 0; attempt < 6; attempt++)
        {
            if (Close(room, Grow(own, wanted), None) is not { } loop)
            {
                break;
            }

            // the way through other rooms is spread over the loops of this room
            var outside = loop.Cells.Where(cell => lattice.RoomOf(cell) != room).Sum(lattice.TubeM);
            var off = loop.Cells.Sum(lattice.TubeM) - outside - quota;
            if (Math.Abs(off) < nearest)
            {
                (best, nearest) = (loop, Math.Abs(off));
            }

            if (Math.Abs(off) < 0.015 * quota)
            {
                break;
            }

            wanted = Math.Max(lattice.TubeM(own[0]), wanted - (off * 0.9));
        }

        return best;
    }

    private const int None = -1;

    // the field with its way and whatever it would cut off from the manifold
    private LoopField? Close(int room, HashSet<int> field, int all)
    {
        if (Way(field) is not { } way)
        {
            return null;
        }

        var cells = new HashSet<int>(field);
        cells.UnionWith(way.Cells);
        foreach (var cell in cells)
        {
            free[cell] = false;
        }

        var taken = slots.Where(slot => cells.Contains(slot.Cell)).ToList();
        slots.ExceptWith(taken);
        MarkReachable();
        slots.UnionWith(taken);
        foreach (var cell in cells)
        {
            free[cell] = true;
        }

        if (all == None)
        {
            Absorb(room, cells, field);
        }

        return new LoopField(room, way.Root.Cell, way.Root.Facing, cells, field);
    }

    private void Absorb(int room, HashSet<int> cells, HashSet<int> field)
    {
        var edge = new Queue<int>(cells);
        while (edge.TryDequeue(out var cell))
        {
            foreach (var next in lattice.Neighbours(cell))
            {
                if (
                    free[next]
                    && lattice.RoomOf(next) == room
                    && !IsMarked(next)
                    && cells.Add(next)
                )
                {
                    field.Add(next);
                    edge.Enqueue(next);
                }
            }
        }
    }

    // from the farthest cell on, always the farthest of those that touch
    private HashSet<int> Grow(List<int> own, double tubeM)
    {
        var within = own.ToHashSet();
        var field = new HashSet<int>();
        var edge = new PriorityQueue<int, double>();
        now++;
        var start = own.MaxBy(cell => rank[cell]);
        edge.Enqueue(start, -rank[start]);
        Mark(start);
        var sum = 0.0;
        while (sum < tubeM && edge.TryDequeue(out var cell, out _))
        {
            field.Add(cell);
            sum += lattice.TubeM(cell);
            foreach (var next in lattice.Neighbours(cell))
            {
                if (within.Contains(next) && Mark(next))
                {
                    edge.Enqueue(next, -rank[next]);
                }
            }
        }

        return field;
    }

    private HashSet<int> Largest(List<int> own)
    {
        var left = own.ToHashSet();
        HashSet<int> largest = [];
        while (left.Count > 0)
        {
            var part = new HashSet<int>();
            var edge = new Queue<int>([left.First()]);
            left.Remove(edge.Peek());
            while (edge.TryDequeue(out var cell))
            {
                part.Add(cell);
                foreach (var next in lattice.Neighbours(cell).Where(left.Remove))
                {
                    edge.Enqueue(next);
                }
            }

            largest = part.Count > largest.Count ? part : largest;
        }

        return largest;
    }

    private ((int Cell, Side Facing) Root, List<int> Cells)? Way(HashSet<int> field)
    {
        now++;
        var edge = new PriorityQueue<int, double>();
        foreach (var (cell, _) in slots.Where(slot => free[slot.Cell]))
        {
            Mark(cell);
            cost[cell] = Step(cell, field);
            from[cell] = None;
            edge.Enqueue(cell, cost[cell]);
        }

        while (edge.TryDequeue(out var cell, out var at))
        {
            if (at > cost[cell])
            {
                continue;
            }

            if (field.Contains(cell))
            {
                var cells = new List<int>();
                var last = cell;
                for (var back = cell; back != None; back = from[back])
                {
                    cells.Add(back);
                    last = back;
                }

                return (slots.First(slot => slot.Cell == last), cells);
            }

            foreach (var next in lattice.Neighbours(cell))
            {
                var sum = at + Step(next, field);
                if (free[next] && (Mark(next) || sum < cost[next] - 1e-12))
                {
                    (cost[next], from[next]) = (sum, cell);
                    edge.Enqueue(next, sum);
                }
            }
        }

        return null;
    }

    private double Step(int cell, HashSet<int> field)
    {
        if (field.Contains(cell))
        {
            return 0;
        }

        var open = 0;
        foreach (var next in lattice.Neighbours(cell))
        {
            open += free[next] ? 1 : 0;
        }

        return open < 4 ? 1 : OpenStep;
    }

    // marks every free cell that some free slot reaches
    private void MarkReachable()
    {
        now++;
        var edge = new Queue<int>();
        foreach (var (cell, _) in slots.Where(slot => free[slot.Cell] && Mark(slot.Cell)))
        {
            edge.Enqueue(cell);
        }

        while (edge.TryDequeue(out var cell))
        {
            foreach (var next in lattice.Neighbours(cell))
            {
                if (free[next] && Mark(next))
                {
                    edge.Enqueue(next);
                }
            }
        }
    }

    private bool IsMarked(int cell) => stamp[cell] == now;

    private bool Mark(int cell)
    {
        var isNew = stamp[cell] != now;
        stamp[cell] = now;
        return isNew;
    }
}
