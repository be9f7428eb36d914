using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Layout;

/// <summary>Lays the tube of the rooms on one manifold.</summary>
public static class TubeLayout
{
    /// <summary>Lays the rooms; whatever cannot be laid is a problem and the rest is laid all the same.</summary>
    /// <param name="plan">The rooms and the place of their manifold; lengths in m.</param>
    public static FloorLayout Lay(FloorPlan plan)
    {
        var problems = new List<Problem>();
        ImmutableArray<RoomPlan> rooms = [.. plan.Rooms.Where(room => IsSound(room, problems))];
        var laid = new Dictionary<string, RoomLayout>(StringComparer.Ordinal);
        if (rooms.Length > 0)
        {
            var angle = Grain(rooms);
            var (cosine, sine) = (Math.Cos(angle), Math.Sin(angle));
            var turned = new FloorPlan(
                [.. rooms.Select(room => Turned(room, cosine, -sine))],
                plan.Manifold.Turned(cosine, -sine)
            );
            var outcome = new GroupLayout(turned).Lay();
            problems.AddRange(outcome.Problems);
            foreach (var room in outcome.Rooms)
            {
                laid[room.Name] = room with
                {
                    Loops = [.. room.Loops.Select(loop => Turned(loop, cosine, sine))],
                };
            }
        }

        return new FloorLayout(
            [
                .. plan.Rooms.Select(room =>
                    laid.GetValueOrDefault(room.Name) ?? new RoomLayout(room.Name, 0, 0, [], [])
                ),
            ],
            [.. problems]
        );
    }

    /// <summary>Floor of a room without its keep-outs, m².</summary>
    internal static double NetAreaM2(RoomPlan room) =>
        Math.Max(
            0,
            Math.Abs(Outline.Area(room.Outline))
                - room.KeepOuts.Sum(one => Math.Abs(Outline.Area(one)))
        );

    private static bool IsSound(RoomPlan room, List<Problem> problems)
    {
        if (
            room.Outline.Length < 3
            || !Outline.IsSimple(room.Outline)
            || Math.Abs(Outline.Area(room.Outline)) < 1e-3
        )
        {
            problems.Add(LayoutProblems.NotAnOutline(room.Name));
            return false;
        }

        if (
            room.KeepOuts.Any(one =>
                one.Length < 3 || !Outline.IsSimple(one) || Math.Abs(Outline.Area(one)) < 1e-6
            )
        )
        {
            problems.Add(LayoutProblems.BadKeepOut(room.Name));
            return false;
        }

        return true;
    }

    // the direction along which most of the walls run
    private static double Grain(ImmutableArray<RoomPlan> rooms)
    {
        var byAngle = new Dictionary<long, (double Angle, double Length)>();
        foreach (var wall in rooms.SelectMany(room => Outline.Edges(room.Outline)))
        {
            var angle = Math.Atan2(wall.To.Y - wall.From.Y, wall.To.X - wall.From.X);
            angle -= Math.Floor(angle / (Math.PI / 2) + 1e-9) * (Math.PI / 2);
            angle = Math.Abs(angle) < 1e-7 ? 0 : angle;
            var key = (long)Math.Round(angle * 1e5);
            var known = byAngle.GetValueOrDefault(key, (angle, 0));
            byAngle[key] = (known.Item1, known.Item2 + wall.Length);
        }

        var straight = byAngle.GetValueOrDefault(0).Length;
        var best = byAngle.Values.MaxBy(one => one.Length);
        return best.Length > straight * 1.01 ? best.Angle : 0;
    }

    private static RoomPlan Turned(RoomPlan room, double cosine, double sine)
    {
        ImmutableArray<Spot> Of(ImmutableArray<Spot> corners) =>
            [.. corners.Select(corner => corner.Turned(cosine, sine))];
        return room with
        {
            Outline = Of(room.Outline),
            KeepOuts = [.. room.KeepOuts.Select(Of)],
            Doors =
            [
                .. room.Doors.Select(door =>
                    door with
                    {
                        Middle = door.Middle.Turned(cosine, sine),
                    }
                ),
            ],
            Joints =
            [
                .. room.Joints.Select(joint => new Edge(
                    joint.From.Turned(cosine, sine),
                    joint.To.Turned(cosine, sine)
                )),
            ],
        };
    }

    private static LaidLoop Turned(LaidLoop loop, double cosine, double sine) =>
        loop with
        {
            Path = loop.Path.Turned(cosine, sine),
            Sleeves = [.. loop.Sleeves.Select(at => at.Turned(cosine, sine))],
        };
}
