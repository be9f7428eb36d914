using System.Collections.Immutable;
using Hypocaust.Layout;

namespace Hypocaust.Tests.Layout;

public sealed class TubeLayoutTests
{
    private static RoomPlan Room(double width, double depth) =>
        new()
        {
            Name = "room",
            Outline = RandomRooms.Rectangle(0, 0, width, depth),
            SpacingM = 0.15,
            BendRadiusM = 0.07,
            MaximumLoopM = 200,
        };

    private static FloorLayout Lay(RoomPlan room, double x = 1, double y = 0) =>
        TubeLayout.Lay(new FloorPlan([room], new Spot(x, y)));

    // Counted by hand on paper. Lines 0.1 m off the walls: 32 upright in 31 gaps of 4.8/31 m, 26 level in 25 gaps of 3.8/25 m, in pairs
    // 16 × 13 cells; the corner cell is the apron, so 207. Fifteen teeth of 13 cells and one of 12 hang on a comb's back of 15 links.
    // Each cell has 2(a+b) of sides; a link trades two sides for two steps: 191 upright ones 2(b−a), 15 level ones 2(a−b). Less the side
    // at the manifold. Bends of 0.075 m: 30 at the tooth ends, 28 between teeth, 6 round the first tooth, 1 in the far corner, each
    // shorter by (2 − π/2)·r. Two tails to outlets 50 mm apart round 0.2 m: one straight, one aslant with a bend.
    [Fact]
    public void Lay_SerpentineOfFourByFiveMetres_HasTheLengthCountedByHand()
    {
        var (a, b, r) = (4.8 / 31, 3.8 / 25, 0.075);
        var cells = (207 * 2 * (a + b)) + (191 * 2 * (b - a)) + (15 * 2 * (a - b)) - b;
        var root = 0.1 + (2 * a);
        var straight = root - 0.225;
        var (dx, dy) = (root - 0.175, b);
        var aslant = Math.Sqrt((dx * dx) + (dy * dy));
        var turn = Math.Atan2(dx, dy);
        var saved = (65 * (2 - (Math.PI / 2)) * r) + (r * ((2 * Math.Tan(turn / 2)) - turn));

        var laid = Lay(Room(5, 4) with { Pattern = LayingPattern.Serpentine }, 0.2);

        laid.Problems.ShouldBeEmpty();
        laid.Rooms[0].Loops.Length.ShouldBe(1);
        laid.Rooms[0].Loops[0].LengthM.ShouldBe(cells + straight + aslant - saved, 1e-9);
    }

    // area over spacing is the trade's rule of thumb (EN 1264-2: a metre of tube serves its spacing in width)
    [Theory]
    [InlineData(LayingPattern.Counterflow)]
    [InlineData(LayingPattern.Serpentine)]
    public void Lay_AnyPattern_ComesCloseToAreaOverSpacing(LayingPattern pattern)
    {
        var loop = Lay(Room(5, 4) with { Pattern = pattern }).Rooms[0].Loops[0];
        loop.LengthM.ShouldBe(20 / 0.15, 20 / 0.15 * 0.1);
        loop.AreaM2.ShouldBeInRange(19, 20);
        loop.SpacingM.ShouldBeInRange(0.15, 0.16);
    }

    // In a counterflow field supply and return lie side by side: the mean of the places along the tube is about one half everywhere.
    [Fact]
    public void Lay_Counterflow_PutsSupplyBesideReturn()
    {
        var points = Lay(Room(5, 4)).Rooms[0].Loops[0].Path.Points();
        var along = new double[points.Length];
        for (var i = 1; i < points.Length; i++)
        {
            along[i] = along[i - 1] + points[i].To(points[i - 1]);
        }

        double MeanWhere(Func<Spot, bool> where)
        {
            var (sum, length) = (0.0, 0.0);
            for (var i = 1; i < points.Length; i++)
            {
                var middle = (points[i] + points[i - 1]) * 0.5;
                var piece = along[i] - along[i - 1];
                if (where(middle))
                {
                    sum += piece * (along[i] + along[i - 1]) / 2 / along[^1];
                    length += piece;
                }
            }

            return sum / length;
        }

        MeanWhere(spot => spot.X < 2.5).ShouldBe(0.5, 0.1);
        MeanWhere(spot => spot.X > 2.5).ShouldBe(0.5, 0.1);
        MeanWhere(spot => spot.Y > 2).ShouldBe(0.5, 0.1);
    }

    [Fact]
    public void Lay_EdgeZone_HasMoreTubeAlongItsWall()
    {
        var room = Room(6, 5) with { EdgeSpacingM = 0.1, EdgeWalls = [1] };
        double Tube(RoomPlan plan) =>
            Lay(plan)
                .Rooms[0]
                .Loops.SelectMany(loop => loop.Path.Points())
                .Where(spot => spot.X > 5.05)
                .DistinctBy(spot => Math.Round(spot.X, 3))
                .Count();
        Tube(room).ShouldBeGreaterThan(Tube(Room(6, 5)));
        Lay(room).Rooms[0].Loops.Min(loop => loop.SpacingM).ShouldBeLessThan(0.155);
    }

    [Fact]
    public void Lay_TwoRoomsOnOneManifold_GoesThroughTheDoor()
    {
        var first = Room(5, 4) with { Name = "first", Doors = [new(new(5, 2), 0.9)] };
        var second = Room(4, 4) with
        {
            Name = "second",
            Outline = RandomRooms.Rectangle(5.12, 0, 4, 4),
        };
        var laid = TubeLayout.Lay(new FloorPlan([first, second], new Spot(1, 0)));
        laid.Problems.ShouldBeEmpty();
        laid.Rooms.ShouldAllBe(room => room.CoverageShare > 0.9);
        var loops = laid.Rooms.SelectMany(room => room.Loops).ToList();
        new LaidOut(loops).Measure(1).Crossings.ShouldBe(0);
        foreach (var spot in loops.SelectMany(loop => loop.Path.Points()))
        {
            if (spot.X is > 4.95 and < 5.17)
            {
                spot.Y.ShouldBeInRange(1.65, 2.35);
            }
        }
    }

    [Fact]
    public void Lay_NoDoorBetweenRooms_SaysThatNoWayLeadsThere()
    {
        var second = Room(4, 4) with
        {
            Name = "second",
            Outline = RandomRooms.Rectangle(5.12, 0, 4, 4),
        };
        var laid = TubeLayout.Lay(new FloorPlan([Room(5, 4), second], new Spot(1, 0)));
        laid.Problems.ShouldHaveSingleItem().Code.ShouldBe("room-not-reached");
        laid.Rooms[0].Loops.ShouldNotBeEmpty();
    }

    [Fact]
    public void Lay_ARoomTurnedOnThePlan_IsLaidAsIfStraight()
    {
        var straight = Room(5, 4);
        var (cosine, sine) = (Math.Cos(0.5), Math.Sin(0.5));
        var turned = straight with
        {
            Outline = [.. straight.Outline.Select(spot => spot.Turned(cosine, sine))],
        };
        var manifold = new Spot(1, 0).Turned(cosine, sine);
        var length = TubeLayout.Lay(new FloorPlan([turned], manifold)).Rooms[0].Loops[0].LengthM;
        length.ShouldBe(Lay(straight).Rooms[0].Loops[0].LengthM, 0.01 * length);
    }

    [Fact]
    public void Lay_AJointAcrossTheRoom_HasASleeveWhereverTubeCrossesIt()
    {
        var joint = new Edge(new Spot(2.53, 0), new Spot(2.53, 4));
        var loop = Lay(Room(5, 4) with { Joints = [joint] }).Rooms[0].Loops[0];
        loop.Sleeves.ShouldNotBeEmpty();
        loop.Sleeves.ShouldAllBe(spot => Math.Abs(spot.X - 2.53) < 1e-9);
        // a closed walk crosses a line that parts the room an even number of times
        (loop.Sleeves.Length % 2).ShouldBe(0);
    }

    [Theory]
    [InlineData(0.3, "room-too-narrow")]
    public void Lay_TooNarrow_SaysSo(double width, string code) =>
        Lay(Room(width, 4), width / 2).Problems.ShouldContain(problem => problem.Code == code);

    [Fact]
    public void Lay_KeepOutOnTheManifold_SaysSo()
    {
        var room = Room(5, 4) with { KeepOuts = [RandomRooms.Rectangle(-0.5, -0.5, 3.4, 3.4)] };
        Lay(room).Problems.ShouldHaveSingleItem().Code.ShouldBe("manifold-blocked");
    }

    public static TheoryData<string, double[]> Broken =>
        new()
        {
            { "bow tie", [0, 0, 4, 4, 4, 0, 0, 4] },
            { "two corners", [0, 0, 4, 4] },
            { "no area", [0, 0, 4, 0, 8, 0] },
            { "spike", [0, 0, 4, 0, 4, 4, 4, 1, 0, 4] },
            { "one point", [1, 1, 1, 1, 1, 1] },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Lay_NoPlainShape_SaysSo(string what, double[] corners)
    {
        ImmutableArray<Spot> outline =
        [
            .. Enumerable
                .Range(0, corners.Length / 2)
                .Select(i => new Spot(corners[2 * i], corners[(2 * i) + 1])),
        ];
        Lay(Room(1, 1) with { Outline = outline })
            .Problems.ShouldHaveSingleItem(what)
            .Code.ShouldBe("room-not-simple");
    }
}
