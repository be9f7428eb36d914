using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>Makes the tube of one loop from its cells.</summary>
internal static class LoopBuilder
{
    /// <summary>How far floor beside the outermost tube counts as covered, m.</summary>
    public static double Reach(RoomPlan room) => Math.Min(room.SpacingM / 2, room.ClearanceM);

    /// <summary>The loop.</summary>
    /// <param name="lattice">The floor.</param>
    /// <param name="rooms">The rooms.</param>
    /// <param name="field">The cells of the loop.</param>
    /// <param name="tail">The outlets of the manifold: where the walk starts and where it ends.</param>
    /// <param name="apronM2">Share of the apron that counts as the loop's area.</param>
    public static LaidLoop Build(
        Lattice lattice,
        ImmutableArray<RoomPlan> rooms,
        LoopField field,
        (Spot First, Spot Last) tail,
        double apronM2
    )
    {
        var room = rooms[field.Room];
        var walk = Tree(lattice, field, room.Pattern).Walk(field.Root, field.Facing);
        List<Spot> path = [tail.First, .. walk.Select(one => one.At), tail.Last];
        var bent = BendRounding.Round(
            path,
            room.BendRadiusM,
            Math.Min(room.SpacingM / 2, room.ClearanceM)
        );
        var least = LeastGap(walk);
        var reach = Reach(room);
        var area =
            apronM2
            + field
                .Cells.Where(cell => lattice.RoomOf(cell) == field.Room)
                .Sum(cell => lattice.AreaM2(cell, room, reach));
        return new LaidLoop(
            "",
            bent.Path,
            Leader(path, walk, field),
            area,
            (area - apronM2) / Math.Max(1e-9, Own(path, walk, lattice, field.Room)),
            bent.TightestM,
            least - (2 * bent.BulgeM),
            Sleeves(bent.Path, rooms)
        );
    }

    private static FieldTree Tree(Lattice lattice, LoopField field, LayingPattern pattern)
    {
        FieldTree[] trees =
            pattern == LayingPattern.Counterflow
                ?
                [
                    FieldTree.Spiral(lattice, field, rightHand: true),
                    FieldTree.Spiral(lattice, field, rightHand: false),
                ]
                :
                [
                    FieldTree.Comb(lattice, field, upright: true),
                    FieldTree.Comb(lattice, field, upright: false),
                ];
        return trees.MinBy(tree => tree.Ends(field.Root))!;
    }

    private static double Length(List<Spot> path) =>
        path.Skip(1).Select((spot, i) => spot.To(path[i])).Sum();

    // tube in the room that the loop serves, the tails left out
    private static double Own(
        List<Spot> path,
        List<(Spot At, int Cell)> walk,
        Lattice lattice,
        int room
    )
    {
        var sum = 0.0;
        for (var i = 1; i < walk.Count; i++)
        {
            sum += lattice.RoomOf(walk[i].Cell) == room ? path[i + 1].To(path[i]) : 0;
        }

        return sum;
    }

    private static double LeastGap(List<(Spot At, int Cell)> walk) =>
        walk.Skip(1).Select((one, i) => one.At.To(walk[i].At)).DefaultIfEmpty(0).Min();

    // from the outlet to the first point of the field, and from its last point back
    private static double Leader(List<Spot> path, List<(Spot At, int Cell)> walk, LoopField field)
    {
        var first = walk.FindIndex(one => field.Field.Contains(one.Cell));
        var last = walk.FindLastIndex(one => field.Field.Contains(one.Cell));
        return Length(path.GetRange(0, first + 2))
            + Length(path.GetRange(last + 1, path.Count - last - 1));
    }

    private static ImmutableArray<Spot> Sleeves(TubePath path, ImmutableArray<RoomPlan> rooms)
    {
        Edge[] joints = [.. rooms.SelectMany(room => room.Joints)];
        if (joints.Length == 0)
        {
            return [];
        }

        var points = path.Points();
        var found = ImmutableArray.CreateBuilder<Spot>();
        for (var i = 0; i + 1 < points.Length; i++)
        {
            var edge = new Edge(points[i], points[i + 1]);
            foreach (var joint in joints.Where(joint => joint.Meets(edge)))
            {
                var (r, s) = (edge.To - edge.From, joint.To - joint.From);
                var cross = r.Cross(s);
                var at =
                    Math.Abs(cross) < 1e-12
                        ? edge.From
                        : edge.From + (r * ((joint.From - edge.From).Cross(s) / cross));
                if (found.Count == 0 || found[^1].To(at) > 1e-6)
                {
                    found.Add(at);
                }
            }
        }

        return found.ToImmutable();
    }
}
