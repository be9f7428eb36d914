using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>Finds at which walls lines of tube shall lie, along one axis.</summary>
internal static class LatticeStops
{
    // the outermost lines count more than any wall inside
    private const double Outermost = 1e6;

    /// <summary>The lines; <paramref name="upright"/> for those that run north and south.</summary>
    public static double[] Lines(ImmutableArray<RoomPlan> rooms, double gapM, bool upright)
    {
        double Of(Spot spot) => upright ? spot.X : spot.Y;
        var stops = new List<LineStop>();
        var strips = new List<LineStrip>();
        foreach (var room in rooms)
        {
            stops.AddRange(Stops(room.Outline, counterClockwise: true, room.ClearanceM, upright));
            stops.AddRange(
                room.KeepOuts.SelectMany(one =>
                    Stops(one, counterClockwise: false, room.ClearanceM, upright)
                )
            );
            strips.AddRange(Strips(room, upright));
            stops.AddRange(Doors(room, upright));
        }

        var low = rooms.Min(room => room.Outline.Min(Of) + room.ClearanceM);
        var high = rooms.Max(room => room.Outline.Max(Of) - room.ClearanceM);
        stops.RemoveAll(stop => stop.At < low - 1e-9 || stop.At > high + 1e-9);
        stops.Add(new LineStop(low, Opens: true, Outermost));
        stops.Add(new LineStop(high, Opens: false, Outermost));
        return new LatticeLines(gapM, strips).Between(stops);
    }

    private static IEnumerable<LineStop> Stops(
        ImmutableArray<Spot> corners,
        bool counterClockwise,
        double clearance,
        bool upright
    )
    {
        foreach (var wall in Outline.Edges(Outline.Turned(corners, counterClockwise)))
        {
            var way = wall.To - wall.From;
            var (along, across) = upright ? (way.Y, way.X) : (-way.X, way.Y);
            if (Math.Abs(across) < 1e-6 * Math.Abs(along))
            {
                var at = upright ? wall.From.X : wall.From.Y;
                // the floor lies left of the wall's direction
                var opens = along < 0;
                yield return new LineStop(
                    opens ? at + clearance : at - clearance,
                    opens,
                    Math.Abs(along)
                );
            }
        }
    }

    // a pair of lines opens at the jamb, so that as many pairs as possible pass the door
    private static IEnumerable<LineStop> Doors(RoomPlan room, bool upright)
    {
        foreach (var door in room.Doors)
        {
            var wall = Outline.Edges(room.Outline).MinBy(edge => edge.Distance(door.Middle));
            var way = wall.To - wall.From;
            var (along, across) = upright ? (way.X, way.Y) : (way.Y, way.X);
            if (Math.Abs(across) < 1e-6 * Math.Abs(along))
            {
                var at = upright ? door.Middle.X : door.Middle.Y;
                yield return new LineStop(
                    at - (door.WidthM / 2) + room.ClearanceM,
                    Opens: true,
                    door.WidthM
                );
            }
        }
    }

    private static IEnumerable<LineStrip> Strips(RoomPlan room, bool upright)
    {
        if (room.EdgeSpacingM is not { } gap)
        {
            yield break;
        }

        Edge[] walls = [.. Outline.Edges(room.Outline)];
        var counterClockwise = Outline.Area(room.Outline) > 0;
        foreach (
            var wall in room.EdgeWalls.Where(i => i >= 0 && i < walls.Length).Select(i => walls[i])
        )
        {
            var way = counterClockwise ? wall.To - wall.From : wall.From - wall.To;
            var (along, across) = upright ? (way.Y, way.X) : (-way.X, way.Y);
            if (Math.Abs(across) < Math.Abs(along) * 0.1)
            {
                var at = upright ? wall.From.X : wall.From.Y;
                yield return along < 0
                    ? new LineStrip(at, at + room.EdgeWidthM, gap)
                    : new LineStrip(at - room.EdgeWidthM, at, gap);
            }
        }
    }
}
