using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>The four sides of a cell; the numbers go round counter-clockwise.</summary>
internal enum Side
{
    South,
    East,
    North,
    West,
}

/// <summary>
/// The floor as cells of two by two tube points. A cell is there where all of it keeps the clearance; two cells are linked where
/// the way between does. Any path over linked cells can be walked round by one tube, out on one side and back on the other.
/// </summary>
internal sealed class Lattice
{
    public const int None = -1;

    private readonly double[] xs;
    private readonly double[] ys;
    private readonly int columns;
    private readonly int[] rooms;
    private readonly bool[] links;
    private readonly int[][] neighbours;
    private readonly double?[] areas;

    private Lattice(double[] xs, double[] ys)
    {
        (this.xs, this.ys) = (xs, ys);
        columns = xs.Length / 2;
        Count = columns * (ys.Length / 2);
        rooms = new int[Count];
        links = new bool[Count * 4];
        neighbours = new int[Count][];
        areas = new double?[Count];
        Array.Fill(rooms, None);
    }

    /// <summary>Cells in all, those outside the floor included.</summary>
    public int Count { get; }

    /// <summary>Room of a cell: its index, the number of rooms for a doorway, or <see cref="None"/>.</summary>
    public int RoomOf(int cell) => rooms[cell];

    /// <summary>Whether tube may pass from a cell to its neighbour.</summary>
    public bool Linked(int cell, Side side) => links[(cell * 4) + (int)side];

    /// <summary>The neighbour; only where linked or known to be there.</summary>
    public int Next(int cell, Side side) =>
        side switch
        {
            Side.South => cell - columns,
            Side.East => cell + 1,
            Side.North => cell + columns,
            _ => cell - 1,
        };

    /// <summary>The cells linked with a cell.</summary>
    public int[] Neighbours(int cell) => neighbours[cell];

    public static Side Opposite(Side side) => (Side)(((int)side + 2) % 4);

    public (int Column, int Row) Place(int cell) => (cell % columns, cell / columns);

    /// <summary>The cell in a column and row, or <see cref="None"/>.</summary>
    public int At(int column, int row) =>
        column < 0 || row < 0 || column >= columns || row >= ys.Length / 2
            ? None
            : (row * columns) + column;

    /// <summary>A tube point of a cell: corner 0 south-west, then counter-clockwise.</summary>
    public Spot Corner(int cell, int corner)
    {
        var (column, row) = Place(cell);
        return new Spot(
            xs[(2 * column) + (corner is 1 or 2 ? 1 : 0)],
            ys[(2 * row) + (corner is 2 or 3 ? 1 : 0)]
        );
    }

    public Spot Middle(int cell) => (Corner(cell, 0) + Corner(cell, 2)) * 0.5;

    /// <summary>Tube that a cell takes, m, about: a step along and half a step across for each pair of its four points.</summary>
    public double TubeM(int cell)
    {
        var (a, b) = (Corner(cell, 0), Corner(cell, 2));
        return 2 * ((b.X - a.X) + (b.Y - a.Y));
    }

    /// <summary>Floor of a room within half a gap of the tube points of a cell, and within a reach beyond the outermost, m².</summary>
    public double AreaM2(int cell, RoomPlan room, double reachM) =>
        areas[cell] ??= Area(cell, room, reachM);

    private double Area(int cell, RoomPlan room, double reachM)
    {
        var (a, b) = (Corner(cell, 0), Corner(cell, 2));
        var (column, row) = Place(cell);
        double Half(Side side, double gap, int next) =>
            Linked(cell, side) ? gap / 2
            : next != None && rooms[next] != None ? Math.Min(reachM, gap / 2)
            : reachM;
        var west = Half(
            Side.West,
            column > 0 ? a.X - xs[(2 * column) - 1] : 0,
            At(column - 1, row)
        );
        var south = Half(Side.South, row > 0 ? a.Y - ys[(2 * row) - 1] : 0, At(column, row - 1));
        var east = Half(
            Side.East,
            (2 * column) + 2 < xs.Length ? xs[(2 * column) + 2] - b.X : 0,
            At(column + 1, row)
        );
        var north = Half(
            Side.North,
            (2 * row) + 2 < ys.Length ? ys[(2 * row) + 2] - b.Y : 0,
            At(column, row + 1)
        );
        var (low, high) = (new Spot(a.X - west, a.Y - south), new Spot(b.X + east, b.Y + north));
        return Outline.AreaWithin(room.Outline, low, high)
            - room.KeepOuts.Sum(one => Outline.AreaWithin(one, low, high));
    }

    public static Lattice Of(ImmutableArray<RoomPlan> plans, WallPieces walls, double gapM)
    {
        var lattice = new Lattice(
            LatticeStops.Lines(plans, gapM, upright: true),
            LatticeStops.Lines(plans, gapM, upright: false)
        );
        for (var cell = 0; cell < lattice.Count; cell++)
        {
            lattice.rooms[cell] = lattice.Clear(walls, cell, cell)
                ? RoomAt(plans, walls, lattice.Middle(cell))
                : None;
        }

        for (var cell = 0; cell < lattice.Count; cell++)
        {
            var (column, row) = lattice.Place(cell);
            lattice.Link(walls, cell, Side.East, lattice.At(column + 1, row));
            lattice.Link(walls, cell, Side.North, lattice.At(column, row + 1));
        }

        for (var cell = 0; cell < lattice.Count; cell++)
        {
            lattice.neighbours[cell] =
            [
                .. Enum.GetValues<Side>()
                    .Where(side => lattice.Linked(cell, side))
                    .Select(side => lattice.Next(cell, side)),
            ];
        }

        return lattice;
    }

    private void Link(WallPieces walls, int cell, Side side, int next)
    {
        if (next != None && rooms[cell] != None && rooms[next] != None && Clear(walls, cell, next))
        {
            links[(cell * 4) + (int)side] = true;
            links[(next * 4) + (int)Opposite(side)] = true;
        }
    }

    private static int RoomAt(ImmutableArray<RoomPlan> plans, WallPieces walls, Spot at)
    {
        for (var i = 0; i < plans.Length; i++)
        {
            if (
                Outline.Holds(plans[i].Outline, at)
                && !plans[i].KeepOuts.Any(one => Outline.Holds(one, at))
            )
            {
                return i;
            }
        }

        return walls.Passages.Any(passage => Outline.Holds(passage, at)) ? plans.Length : None;
    }

    // whether the rectangle from one cell's first tube point to another's last keeps its distance from every wall
    private bool Clear(WallPieces walls, int first, int last)
    {
        var (a, b) = (Corner(first, 0), Corner(last, 2));
        foreach (var (edge, clearance) in walls.Walls)
        {
            if (
                Math.Min(edge.From.X, edge.To.X) < b.X + clearance
                && Math.Max(edge.From.X, edge.To.X) > a.X - clearance
                && Math.Min(edge.From.Y, edge.To.Y) < b.Y + clearance
                && Math.Max(edge.From.Y, edge.To.Y) > a.Y - clearance
                && Distance(edge, a, b) < clearance - 1e-7
            )
            {
                return false;
            }
        }

        return true;
    }

    private static double Distance(Edge edge, Spot a, Spot b)
    {
        bool Within(Spot p) => p.X >= a.X && p.X <= b.X && p.Y >= a.Y && p.Y <= b.Y;
        if (Within(edge.From) || Within(edge.To))
        {
            return 0;
        }

        var (east, west) = (new Spot(b.X, a.Y), new Spot(a.X, b.Y));
        return Math.Min(
            Math.Min(edge.Distance(new Edge(a, east)), edge.Distance(new Edge(east, b))),
            Math.Min(edge.Distance(new Edge(b, west)), edge.Distance(new Edge(west, a)))
        );
    }
}
