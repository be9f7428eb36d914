using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Layout;

/// <summary>Lays the rooms of one manifold whose walls mostly run along the axes.</summary>
internal sealed class GroupLayout
{
    private const int MostAttempts = 8;

    // the ways over the apron and the odd cell come on top
    private const double WithTails = 1.02;

    private readonly ImmutableArray<RoomPlan> rooms;
    private readonly Spot manifold;
    private readonly Lattice lattice;
    private readonly List<Problem> problems = [];
    private readonly int cells;

    public GroupLayout(FloorPlan plan)
    {
        rooms = [.. plan.Rooms.Select(Distanced)];
        manifold = plan.Manifold;
        lattice = Lattice.Of(rooms, WallPieces.Of(rooms), rooms.Min(room => room.SpacingM));
        cells = Enumerable.Range(0, rooms.Length).Sum(room => CellsOf(room).Count());
    }

    // a hairpin may bulge towards a wall, and a bend cuts the corner round a pillar: with this much more, neither comes too near
    private static RoomPlan Distanced(RoomPlan room) =>
        room with
        {
            ClearanceM = Math.Max(
                room.ClearanceM + Math.Max(0, room.BendRadiusM - (room.SpacingM / 2)),
                room.BendRadiusM
            ),
        };

    private sealed record Candidate(
        ManifoldPad Pad,
        List<LoopField> Fields,
        List<(LoopField Field, LaidLoop Loop)> Loops,
        double Cost
    );

    public FloorLayout Lay()
    {
        var counts = Counts();
        var best = Best(counts);
        for (var attempt = 0; attempt < MostAttempts && best is not null; attempt++)
        {
            var longer = TooLong(best);
            if (longer.Count == 0)
            {
                break;
            }

            foreach (var room in longer)
            {
                counts[room]++;
            }

            // more loops may not fit round the manifold or through a door; then what is laid stands, with its problem
            if (Best(counts) is not { } next || next.Loops.Count <= best.Loops.Count)
            {
                break;
            }

            best = next;
        }

        if (best is null)
        {
            if (problems.Count == 0)
            {
                problems.Add(LayoutProblems.ManifoldBlocked(counts.Sum()));
            }

            return new FloorLayout([.. rooms.Select((_, i) => Room(i, null))], [.. problems]);
        }

        ReportMissing(best);
        ImmutableArray<RoomLayout> laid = [.. rooms.Select((_, i) => Room(i, best))];
        if (
            CrossingCheck.Find([
                .. laid.SelectMany(room => room.Loops).Select(loop => loop.Path),
            ]) is
            { } crossing
        )
        {
            problems.Add(LayoutProblems.Crosses(crossing));
            laid = [.. rooms.Select((_, i) => Room(i, null))];
        }

        return new FloorLayout(laid, [.. problems]);
    }

    private int[] Counts()
    {
        var counts = new int[rooms.Length];
        for (var room = 0; room < rooms.Length; room++)
        {
            var tube = CellsOf(room).Sum(lattice.TubeM);
            if (tube == 0)
            {
                problems.Add(
                    LayoutProblems.TooNarrow(
                        rooms[room].Name,
                        rooms[room].SpacingM,
                        rooms[room].ClearanceM
                    )
                );
            }

            counts[room] = (int)Math.Ceiling(tube * WithTails / rooms[room].MaximumLoopM);
        }

        return counts;
    }

    private IEnumerable<int> CellsOf(int room) =>
        Enumerable.Range(0, lattice.Count).Where(cell => lattice.RoomOf(cell) == room);

    private Candidate? Best(int[] counts)
    {
        if (
            counts.Sum() == 0
            || ManifoldPad.Find(lattice, manifold, counts.Sum(), rooms.Length) is not { } pad
        )
        {
            return null;
        }

        return Enum.GetValues<Sweep>()
            .Select(sweep => Try(pad, counts, sweep))
            .MinBy(candidate => candidate.Cost);
    }

    private Candidate Try(ManifoldPad pad, int[] counts, Sweep sweep)
    {
        var fields = FieldCarver.Carve(lattice, pad, counts, sweep);
        var tails = ManifoldTails.Of(lattice, pad, fields, manifold);
        var here = rooms[lattice.RoomOf(pad.Cells[0])];
        var apron =
            pad.Cells.Sum(cell => lattice.AreaM2(cell, here, LoopBuilder.Reach(here)))
            / Math.Max(1, fields.Count(field => rooms[field.Room] == here));
        List<(LoopField, LaidLoop)> loops =
        [
            .. fields.Select(
                (field, i) =>
                    (
                        field,
                        LoopBuilder.Build(
                            lattice,
                            rooms,
                            field,
                            tails[i],
                            rooms[field.Room] == here ? apron : 0
                        )
                    )
            ),
        ];
        return new Candidate(pad, fields, loops, Cost(counts, loops));
    }

    // bare floor weighs most, then loops over their length, uneven loops, and bends, which are work
    private double Cost(int[] counts, List<(LoopField Field, LaidLoop Loop)> loops)
    {
        var covered = loops.Sum(one => one.Field.Cells.Count);
        var cost = 10.0 * (cells - covered) / Math.Max(1, cells);
        cost += 3.0 * (counts.Sum() - loops.Count);
        foreach (var own in loops.GroupBy(one => one.Field.Room))
        {
            var lengths = own.Select(one => one.Loop.LengthM).ToList();
            cost += 2 * ((lengths.Max() / lengths.Average()) - 1);
            cost += lengths.Count(length => length > rooms[own.Key].MaximumLoopM) * 0.5;
        }

        var metres = loops.Sum(one => one.Loop.LengthM);
        var bends = loops.Sum(one => one.Loop.Path.Pieces.Count(piece => piece.Centre is not null));
        return cost + (0.5 * bends / Math.Max(1, metres));
    }

    private List<int> TooLong(Candidate candidate) =>
        [
            .. candidate
                .Loops.Where(one => one.Loop.LengthM > rooms[one.Field.Room].MaximumLoopM)
                .Select(one => one.Field.Room)
                .Distinct(),
        ];

    private void ReportMissing(Candidate candidate)
    {
        for (var room = 0; room < rooms.Length; room++)
        {
            var own = candidate.Loops.Where(one => one.Field.Room == room).ToList();
            if (own.Count == 0 && CellsOf(room).Any())
            {
                problems.Add(LayoutProblems.NotReached(rooms[room].Name));
            }

            if (own.Count > 0 && own.Max(one => one.Loop.LengthM) > rooms[room].MaximumLoopM)
            {
                problems.Add(
                    LayoutProblems.TooLong(
                        rooms[room].Name,
                        own.Max(one => one.Loop.LengthM),
                        rooms[room].MaximumLoopM
                    )
                );
            }
        }
    }

    private RoomLayout Room(int room, Candidate? candidate)
    {
        var plan = rooms[room];
        var own = candidate?.Loops.Where(one => one.Field.Room == room).ToList() ?? [];
        ImmutableArray<LaidLoop> loops =
        [
            .. own.OrderBy(one => one.Loop.Path.Pieces[0].From.X)
                .ThenBy(one => one.Loop.Path.Pieces[0].From.Y)
                .Select((one, i) => one.Loop with { Name = $"{plan.Name} {i + 1}" }),
        ];
        var covered = candidate is null
            ? 0
            : candidate
                .Fields.SelectMany(field => field.Cells)
                .Concat(candidate.Pad.Cells)
                .Where(cell => lattice.RoomOf(cell) == room)
                .Sum(cell => lattice.AreaM2(cell, plan, LoopBuilder.Reach(plan)));
        var layout = new RoomLayout(plan.Name, TubeLayout.NetAreaM2(plan), covered, loops, []);
        return layout with { Notes = RoomNotes.Of(plan, layout, rooms) };
    }
}
