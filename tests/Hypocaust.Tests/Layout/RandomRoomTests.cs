using System.Collections.Immutable;
using Hypocaust.Layout;

namespace Hypocaust.Tests.Layout;

/// <summary>What must hold of the tube in any room, on a thousand rooms of a fixed seed. The measures are the tests' own (<see cref="LaidOut"/>).</summary>
public sealed class RandomRoomTests
{
    private const int Rooms = 1000;
    private const int Seed = 20261125;

    private static readonly ImmutableArray<(FloorPlan Plan, FloorLayout Laid)> All =
    [
        .. RandomRooms.Make(Rooms, Seed).Select(plan => (plan, TubeLayout.Lay(plan))),
    ];

    private static readonly ImmutableArray<Measured> Laid =
    [
        .. All.Where(one => !one.Laid.Rooms[0].Loops.IsEmpty)
            .Select(one => Measure(one.Plan.Rooms[0], one.Laid.Rooms[0])),
    ];

    private sealed record Measured(
        RoomPlan Plan,
        RoomLayout Room,
        int Crossings,
        double ClosestM,
        double FromWallsM
    );

    private static Measured Measure(RoomPlan plan, RoomLayout room)
    {
        var laid = new LaidOut(room.Loops, 1.1 * plan.SpacingM);
        var (crossings, closest) = laid.Measure((1.5 * Math.PI * plan.SpacingM) + 0.5);
        return new Measured(plan, room, crossings, closest, laid.FromWalls(Walls(plan)));
    }

    [Fact]
    public void Nearly_every_room_is_laid_and_every_other_has_a_problem()
    {
        All.Count(one => !one.Laid.Rooms[0].Loops.IsEmpty).ShouldBeGreaterThanOrEqualTo(990);
        All.Where(one => one.Laid.Rooms[0].Loops.IsEmpty)
            .ShouldAllBe(one => !one.Laid.Problems.IsEmpty);
    }

    [Fact]
    public void No_tube_crosses_another_or_itself() =>
        Laid.Count(one => one.Crossings > 0).ShouldBe(0);

    // A hairpin may be wider than its legs by what the tube's own radius asks, on both sides of the gap beside it.
    [Fact]
    public void Tubes_keep_the_spacing_off_the_apron()
    {
        foreach (var (plan, room, _, closest, _) in Laid)
        {
            var bulge = Math.Max(0, plan.BendRadiusM - (plan.SpacingM / 2));
            var least = plan.SpacingM - (2 * bulge) - 1e-9;
            closest.ShouldBeGreaterThan(least);
            room.Loops.Min(loop => loop.ClosestM).ShouldBeGreaterThan(least);
        }
    }

    [Fact]
    public void Tubes_keep_the_clearance_from_walls_and_keep_outs()
    {
        foreach (var (plan, room, _, _, fromWalls) in Laid)
        {
            fromWalls.ShouldBeGreaterThan(plan.ClearanceM - 1e-6, room.Name);
        }
    }

    // Lines stand at every wall along the axes; elsewhere a cell of two by two spacings may not fit, and a line may be spread by one gap.
    [Fact]
    public void The_tube_reaches_all_but_a_strip_along_the_walls()
    {
        var binding = 0;
        foreach (var (plan, room, _, _, _) in Laid)
        {
            var edge = Walls(plan).Sum(wall => wall.From.To(wall.To));
            var least = room.AreaM2 - (edge * (plan.ClearanceM + (2 * plan.SpacingM)));
            binding += least > 0 ? 1 : 0;
            room.CoveredM2.ShouldBeInRange(least, room.AreaM2 * (1 + 1e-9));
            room.CoverageShare.ShouldBeGreaterThan(0.5);
        }

        binding.ShouldBeGreaterThan(400);
        var shares = Laid.Select(one => one.Room.CoverageShare).Order().ToList();
        shares[shares.Count / 20].ShouldBeGreaterThan(0.78);
        shares[shares.Count / 2].ShouldBeGreaterThan(0.93);
    }

    [Fact]
    public void The_length_is_that_of_the_drawn_path()
    {
        foreach (var room in Laid.Select(one => one.Room))
        {
            foreach (var loop in room.Loops)
            {
                var pieces = loop.Path.Pieces;
                pieces.Sum(Drawn).ShouldBe(loop.LengthM, 1e-9);
                for (var i = 1; i < pieces.Length; i++)
                {
                    pieces[i].From.To(pieces[i - 1].To).ShouldBeLessThan(1e-9);
                }
            }
        }
    }

    [Fact]
    public void No_loop_is_longer_than_it_may_be_unless_a_problem_says_so()
    {
        foreach (var (plan, laid) in All)
        {
            var tooLong = laid.Rooms[0]
                .Loops.Any(loop => loop.LengthM > plan.Rooms[0].MaximumLoopM);
            tooLong.ShouldBe(laid.Problems.Any(problem => problem.Code == "loop-too-long"));
        }
    }

    [Fact]
    public void Loops_of_a_room_are_about_equally_long()
    {
        var uneven = Laid.Where(one => one.Room.Loops.Length > 1)
            .Select(one =>
                one.Room.Loops.Max(loop => loop.LengthM)
                / one.Room.Loops.Average(loop => loop.LengthM)
            )
            .Order()
            .ToList();
        uneven[uneven.Count / 2].ShouldBeLessThan(1.05);
        uneven[uneven.Count * 9 / 10].ShouldBeLessThan(1.2);
    }

    [Fact]
    public void The_same_room_is_laid_the_same_way_again()
    {
        foreach (var (plan, laid) in All.Take(30))
        {
            TubeLayout
                .Lay(plan)
                .Rooms[0]
                .Loops.Select(loop => loop.LengthM)
                .ShouldBe(laid.Rooms[0].Loops.Select(loop => loop.LengthM));
        }
    }

    // chord and sagitta give the arc once more, without its angle
    private static double Drawn(TubePiece piece)
    {
        var chord = piece.From.To(piece.To);
        if (piece.Centre is not { } centre)
        {
            return chord;
        }

        var radius = centre.To(piece.To);
        var half = Math.Asin(Math.Min(1, chord / (2 * radius)));
        return radius * (Math.Abs(piece.SweepRad) > Math.PI ? 2 * (Math.PI - half) : 2 * half);
    }

    private static List<(Spot From, Spot To)> Walls(RoomPlan plan) =>
        [
            .. plan
                .KeepOuts.Append(plan.Outline)
                .SelectMany(corners =>
                    corners.Select((corner, i) => (corner, corners[(i + 1) % corners.Length]))
                ),
        ];
}
