namespace Hypocaust.Layout;

/// <summary>A tree over the cells of a loop. The tube goes once round it, so supply and return lie on the two sides of each branch.</summary>
internal sealed class FieldTree
{
    private readonly Lattice lattice;
    private const int Outside = -1;

    // joined sides of each cell as bits
    private readonly int[] joined;
    private readonly int count;

    private FieldTree(Lattice lattice, LoopField field)
    {
        this.lattice = lattice;
        count = field.Cells.Count;
        joined = new int[lattice.Count];
        Array.Fill(joined, Outside);
        foreach (var cell in field.Cells)
        {
            joined[cell] = 0;
        }
    }

    /// <summary>Ends of branches, the root not counted: each is a hairpin.</summary>
    public int Ends(int root)
    {
        var ends = 0;
        for (var cell = 0; cell < joined.Length; cell++)
        {
            ends += cell != root && joined[cell] > 0 && int.PopCount(joined[cell]) == 1 ? 1 : 0;
        }

        return ends;
    }

    /// <summary>A branch that winds inwards along the edge of the field, turning to one hand wherever it can.</summary>
    public static FieldTree Spiral(Lattice lattice, LoopField field, bool rightHand)
    {
        var tree = new FieldTree(lattice, field);
        var branch = new Stack<(int Cell, Side Heading)>();
        branch.Push((field.Root, Lattice.Opposite(field.Facing)));
        while (branch.TryPeek(out var at))
        {
            var moved = false;
            for (var turn = 0; turn < 3 && !moved; turn++)
            {
                var side = Turn(at.Heading, rightHand ? turn - 1 : 1 - turn);
                if (tree.Has(at.Cell, side) && tree.IsBare(lattice.Next(at.Cell, side), field.Root))
                {
                    tree.Join(at.Cell, side);
                    branch.Push((lattice.Next(at.Cell, side), side));
                    moved = true;
                }
            }

            if (!moved)
            {
                branch.Pop();
            }
        }

        return tree;
    }

    /// <summary>Teeth in one direction, joined into a comb along the side of the root.</summary>
    public static FieldTree Comb(Lattice lattice, LoopField field, bool upright)
    {
        var tree = new FieldTree(lattice, field);
        var (ahead, across) = upright ? (Side.North, Side.East) : (Side.East, Side.North);
        var group = field.Cells.ToDictionary(cell => cell, cell => cell);
        int Top(int cell)
        {
            while (group[cell] != cell)
            {
                cell = group[cell] = group[group[cell]];
            }

            return cell;
        }

        void Unite(int cell, Side side)
        {
            var (a, b) = (Top(cell), Top(lattice.Next(cell, side)));
            if (a != b)
            {
                group[a] = b;
                tree.Join(cell, side);
            }
        }

        foreach (var cell in field.Cells.Where(cell => tree.Has(cell, ahead)))
        {
            Unite(cell, ahead);
        }

        var (rootColumn, rootRow) = lattice.Place(field.Root);
        foreach (
            var cell in field
                .Cells.Where(cell => tree.Has(cell, across))
                .OrderBy(cell =>
                {
                    var (column, row) = lattice.Place(cell);
                    return upright ? Math.Abs(row - rootRow) : Math.Abs(column - rootColumn);
                })
                .ThenBy(cell => cell)
        )
        {
            Unite(cell, across);
        }

        return tree;
    }

    /// <summary>Once round the tree, from one tube point that faces the manifold to the other, with the cell of each point.</summary>
    public List<(Spot At, int Cell)> Walk(int root, Side facing)
    {
        var walk = new List<(Spot, int)>(count * 4);
        var (cell, corner) = (root, ((int)facing + 1) % 4);
        for (var i = 0; i < count * 4; i++)
        {
            walk.Add((lattice.Corner(cell, corner), cell));
            var side = (Side)corner;
            if (Joined(cell, side))
            {
                // over to the neighbour: its corner just behind ours
                (cell, corner) = (lattice.Next(cell, side), (corner + 3) % 4);
            }
            else
            {
                corner = (corner + 1) % 4;
            }
        }

        return walk;
    }

    private static Side Turn(Side heading, int quarters) =>
        (Side)(((int)heading + quarters + 4) % 4);

    private bool Has(int cell, Side side) =>
        lattice.Linked(cell, side) && joined[lattice.Next(cell, side)] != Outside;

    private bool IsBare(int cell, int root) => cell != root && joined[cell] == 0;

    private bool Joined(int cell, Side side) => (joined[cell] & (1 << (int)side)) != 0;

    private void Join(int cell, Side side)
    {
        joined[cell] |= 1 << (int)side;
        joined[lattice.Next(cell, side)] |= 1 << (int)Lattice.Opposite(side);
    }
}
