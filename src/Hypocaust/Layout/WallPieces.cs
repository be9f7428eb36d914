using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>A piece of wall with the distance that tube keeps from it.</summary>
internal readonly record struct WallPiece(Edge Edge, double ClearanceM);

/// <summary>The walls of all rooms with their doors cut out, and the passages through these doors.</summary>
internal sealed class WallPieces
{
    // two rooms are joined by a door when their walls stand at most this far apart
    private const double ThickestWallM = 0.6;

    private WallPieces(
        ImmutableArray<WallPiece> walls,
        ImmutableArray<ImmutableArray<Spot>> passages
    )
    {
        Walls = walls;
        Passages = passages;
    }

    public ImmutableArray<WallPiece> Walls { get; }

    /// <summary>Floor inside walls, between the two faces of a doorway.</summary>
    public ImmutableArray<ImmutableArray<Spot>> Passages { get; }

    public static WallPieces Of(ImmutableArray<RoomPlan> rooms)
    {
        List<WallPiece> walls =
        [
            .. rooms.SelectMany(room =>
                Outline.Edges(room.Outline).Select(edge => new WallPiece(edge, room.ClearanceM))
            ),
        ];
        var passages = ImmutableArray.CreateBuilder<ImmutableArray<Spot>>();
        foreach (var door in rooms.SelectMany(room => room.Doors))
        {
            Cut(walls, door, passages);
        }

        walls.AddRange(
            rooms.SelectMany(room =>
                room.KeepOuts.SelectMany(Outline.Edges)
                    .Select(edge => new WallPiece(edge, room.ClearanceM))
            )
        );
        return new WallPieces([.. walls], passages.ToImmutable());
    }

    // the door opens its own wall and any wall right behind; with no wall behind it leads out and nothing is cut
    private static void Cut(
        List<WallPiece> walls,
        DoorPlan door,
        ImmutableArray<ImmutableArray<Spot>>.Builder passages
    )
    {
        var own = walls
            .Where(wall => wall.Edge.Length > 1e-6)
            .MinBy(wall => wall.Edge.Distance(door.Middle));
        if (own.Edge.Length < 1e-6)
        {
            return;
        }

        var along = (own.Edge.To - own.Edge.From) * (1 / own.Edge.Length);
        var half = door.WidthM / 2;
        double Across(Spot point) => Math.Abs(along.Cross(point - door.Middle));
        List<WallPiece> opened =
        [
            .. walls.Where(wall =>
            {
                var way = (wall.Edge.To - wall.Edge.From) * (1 / Math.Max(1e-9, wall.Edge.Length));
                var (low, high) = Span(wall.Edge, along, door.Middle);
                return Math.Abs(way.Cross(along)) < 1e-3
                    && Across(wall.Edge.From) <= ThickestWallM
                    && low < half
                    && high > -half;
            }),
        ];
        if (opened.Count < 2)
        {
            return;
        }

        foreach (var wall in opened)
        {
            walls.Remove(wall);
            var sign = (wall.Edge.To - wall.Edge.From).Dot(along) > 0 ? 1 : -1;
            Spot Jamb(double at)
            {
                var off = along.Cross(wall.Edge.From - door.Middle);
                return door.Middle + (along * at) + (new Spot(-along.Y, along.X) * off);
            }

            var (first, second) = (Jamb(-half * sign), Jamb(half * sign));
            Keep(walls, wall, new Edge(wall.Edge.From, first), wall.Edge);
            Keep(walls, wall, new Edge(second, wall.Edge.To), wall.Edge);
        }

        var across = new Spot(-along.Y, along.X);
        List<double> offs = [.. opened.Select(wall => along.Cross(wall.Edge.From - door.Middle))];
        var (near, far) = (offs.Min() - 1e-6, offs.Max() + 1e-6);
        Spot Corner(double a, double b) => door.Middle + (along * a) + (across * b);
        passages.Add([
            Corner(-half, near),
            Corner(half, near),
            Corner(half, far),
            Corner(-half, far),
        ]);
        walls.Add(new WallPiece(new Edge(Corner(-half, near), Corner(-half, far)), own.ClearanceM));
        walls.Add(new WallPiece(new Edge(Corner(half, near), Corner(half, far)), own.ClearanceM));
    }

    private static (double Low, double High) Span(Edge edge, Spot along, Spot origin)
    {
        var (a, b) = ((edge.From - origin).Dot(along), (edge.To - origin).Dot(along));
        return (Math.Min(a, b), Math.Max(a, b));
    }

    private static void Keep(List<WallPiece> walls, WallPiece of, Edge rest, Edge whole)
    {
        if ((rest.To - rest.From).Dot(whole.To - whole.From) > 1e-9)
        {
            walls.Add(of with { Edge = rest });
        }
    }
}
