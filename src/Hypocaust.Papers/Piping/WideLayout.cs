using System.Collections.Immutable;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Piping;

/// <summary>Circuits as rectangles from left to right: supply above, return below, loads on the right side.</summary>
internal sealed class WideLayout(
    PipingGraph graph,
    PlantCanvas canvas,
    ItemWords words,
    UnitSystem units
) : CircuitLayout(graph, canvas, words, units, NameWidth)
{
    private const double NameWidth = 86;
    private const double TeeDistance = 46;
    private const double ReturnOffset = 44;
    private const double LoopText = 150;

    /// <inheritdoc/>
    public override bool TryDraw(HeaterCircuit circuit)
    {
        var top = new Point(0, 0);
        var pen = NewPen();
        Heater(circuit.Heater, new(0, 130), Way.Left);
        Canvas.Keep.Add(new(-6, -6, 6, 9000));
        pen.MoveTo(new(0, 98));
        pen.Corner(top);
        var bottom = Draw(circuit.Way, pen, top, 0, 260, 430);
        pen.Corner(new(0, bottom));
        pen.Arrive(new(0, 162));
        return true;
    }

    /// <summary>Draws a circuit; the pen comes from its upper left corner and ends on its lower line.</summary>
    /// <param name="way">The circuit.</param>
    /// <param name="pen">At the upper left corner.</param>
    /// <param name="start">That corner.</param>
    /// <param name="returnX">Where the lower line ends.</param>
    /// <param name="height">Least height.</param>
    /// <param name="room">Width after which items go down the right side.</param>
    /// <returns>The y of the lower line.</returns>
    private double Draw(
        ImmutableArray<Element> way,
        Pen pen,
        Point start,
        double returnX,
        double height,
        double room
    )
    {
        var (before, loads, after) = Cut(way);
        var placer = NewPlacer();
        var list = before.OfType<ItemElement>().ToList();
        var down = ItemsDown(list, room);
        var lineStart = new Point(Math.Max(start.X, returnX), start.Y);
        var reach = placer.Place(
            list.Take(list.Count - down),
            lineStart,
            Way.Right,
            Way.Right,
            Way.Up,
            Way.Down
        );
        var back = after.OfType<ItemElement>().Reverse().ToList();
        var (width, above) = Trial(back, Way.Left, Way.Down, Way.Up);
        var side = Math.Max(lineStart.X + reach, returnX + width);
        side = Math.Max(side + 18, Math.Max(start.X, returnX) + Inside(loads, list, down));
        Canvas.Keep.Add(new(side - 5, start.Y - 4, side + 5, start.Y + 60));
        var y = start.Y;
        if (down > 0)
        {
            y +=
                placer.Place(
                    list.Skip(list.Count - down),
                    new(side, y + 14),
                    Way.Down,
                    Way.Down,
                    Way.Left
                ) + 8;
        }

        Follow(pen, before, placer, new(side, start.Y), down);
        pen.Corner(new(side, start.Y));
        y = Loads(loads, pen, side, y, start.Y);
        pen.Return = true;
        var clear = Canvas
            .Over.Claims.Where(one => one.Room.Left < side && one.Room.Right > returnX)
            .Where(one => one.Room.Top >= start.Y - 90)
            .Select(one => one.Room.Bottom)
            .DefaultIfEmpty(y)
            .Max();
        var below = clear + above + 10;
        var bottom = loads is [ManifoldElement]
            ? Math.Max(y, back.Count > 0 ? below : y)
            : Math.Max(y + 44, Math.Max(start.Y + height, below));
        placer.Place(back, new(returnX, bottom), Way.Right, Way.Left, Way.Down, Way.Up);
        pen.Corner(new(pen.At.X, bottom));
        Follow(pen, after, placer);
        return bottom;
    }

    // Words of parts on the right side stand inside the rectangle
    private static double Inside(ImmutableArray<Element> loads, List<ItemElement> items, int down)
    {
        var beside = loads.OfType<ItemElement>().Concat(items.TakeLast(down)).ToList();
        return beside.Exists(one => !one.Stubs.IsEmpty) ? 330
            : beside.Count > 0 || loads.Any(one => one is SpacedTeesElement) ? 200
            : 60;
    }

    // How far items reach along a line that starts at an upright pipe, and how far they stand above it
    private (double Along, double Above) Trial(
        IEnumerable<ItemElement> items,
        Way flow,
        params ImmutableArray<Way> sides
    )
    {
        var trial = new PlantCanvas(Canvas.Scale);
        trial.Keep.Add(new(-6, -2000, 6, 2000));
        var along = new LinePlacer(trial, Words, NameWidth).Place(
            items,
            default,
            Way.Right,
            flow,
            sides
        );
        return (along, -trial.Over.Claims.Select(one => one.Room.Top).DefaultIfEmpty(-20).Min());
    }

    // As many of the last items go down the right side as keep the upper line within its room
    private int ItemsDown(List<ItemElement> items, double room)
    {
        for (var down = 0; down < 5; down++)
        {
            var (reach, _) = Trial(items.Take(items.Count - down), Way.Right, Way.Up, Way.Down);
            if (reach <= room || items.Count - down <= 2)
            {
                return down;
            }
        }

        return 4;
    }

    private static void Follow(
        Pen pen,
        ImmutableArray<Element> way,
        LinePlacer placer,
        Point corner,
        int down
    )
    {
        var items = way.Count(one => one is ItemElement);
        var cut = items - down;
        var seen = 0;
        foreach (var element in way)
        {
            if (element is ItemElement && seen++ == cut)
            {
                pen.Corner(corner);
            }

            Follow(pen, [element], placer);
        }
    }

    private double Loads(ImmutableArray<Element> loads, Pen pen, double x, double y, double top)
    {
        var placer = NewPlacer();
        for (var i = 0; i < loads.Length; i++)
        {
            var element = loads[i];
            switch (element)
            {
                case PipeElement pipe:
                    pen.Take(pipe);
                    break;
                case ItemElement item:
                    y += placer.Place([item], new(x, y), Way.Down, Way.Down, Way.Left) + 8;
                    pen.Arrive(placer[item]);
                    break;
                case SpacedTeesElement tees:
                    y = SpacedTees(tees, pen, x, Math.Max(y + 30, top + 84));
                    break;
                case ParallelElement parallel:
                    y = Parallel(parallel, pen, x, y > top ? y + 40 : y);
                    break;
                case ManifoldElement manifold:
                    y = Manifold(manifold, pen, x, y, alone: loads.Length == 1 && y == top);
                    break;
                default:
                    throw new InvalidOperationException("An element without a drawing.");
            }

            if (IsLoad(element) && loads[(i + 1)..].Any(IsLoad))
            {
                // what follows stands below all that hangs on this one
                y = Math.Max(y, Canvas.Over.Claims.Max(one => one.Room.Bottom) + 120);
            }
        }

        return y;
    }

    private double Manifold(ManifoldElement manifold, Pen pen, double x, double y, bool alone)
    {
        var bar = alone ? x : x + 30;
        var level = alone ? y : y + 30;
        pen.Corner(new(x, level));
        pen.Arrive(new(bar, level));
        var end = Manifolds.Draw(manifold.Item, bar, level, level + 12, LoopText);
        pen.MoveTo(new(bar + ManifoldDrawing.BarDistance, end));
        pen.Return = true;
        if (alone)
        {
            return end;
        }

        pen.Corner(new(x, end));
        return end;
    }

    private double SpacedTees(SpacedTeesElement tees, Pen pen, double x, double y)
    {
        var inner = TeesGlyph(tees, x, y);
        while (inner.Claims.Any(one => !Canvas.IsFree(one.Room.Grown(3))))
        {
            y += 6;
            inner = TeesGlyph(tees, x, y);
        }

        var low = y + TeeDistance;
        pen.Arrive(new(x, y));
        var between = NewPen();
        between.MoveTo(new(x, y));
        between.Take(BetweenPipe(tees));
        between.Arrive(new(x, low));
        Canvas.Over.Gather(
            inner,
            DrawingId.OfItem(tees.Item.Name),
            tees.Item.Name,
            Words.Title(tees.Item)
        );
        pen.MoveTo(new(x, low));
        pen.Return = true;
        return tees.Secondary.IsEmpty ? low : Secondary(tees, x, y, low);
    }

    private Canvas TeesGlyph(SpacedTeesElement tees, double x, double y)
    {
        var low = y + TeeDistance;
        var inner = new Canvas();
        inner.Add(new Ellipse("solid", new(x, y), 5, 5));
        inner.Add(new Ellipse("solid", new(x, low), 5, 5));
        inner.Line("thin", x - 10, y, x - 22, y);
        inner.Line("thin", x - 10, low, x - 22, low);
        inner.Line("thin", x - 18, y, x - 18, low);
        inner.Claim(tees.Item.Name, new(x - 24, y - 6, x + 6, low + 6));
        Glyph.Stack(
            inner,
            BetweenWords(tees, "↓", "↑"),
            new(x - 24, y, x, low),
            Way.Left,
            tees.Item.Name
        );
        return inner;
    }

    private double Secondary(SpacedTeesElement tees, double x, double y, double low)
    {
        var second = NewPen();
        second.MoveTo(new(x, y));
        var inset = x + ReturnOffset;
        Canvas.Keep.Add(new(inset - 6, low - 6, inset + 6, low + 500));
        var bottom = Draw(tees.Secondary, second, new(x, y), inset, 190, 260);
        second.Corner(new(inset, bottom));
        second.Corner(new(inset, low));
        second.Arrive(new(x, low));
        return low;
    }

    private double Parallel(ParallelElement parallel, Pen pen, double x, double y)
    {
        var (supplyX, returnX) = (x + 34, x);
        pen.Corner(new(x, y));
        pen.Arrive(new(supplyX, y));
        Tee(parallel.Split, new(supplyX, y));
        List<(Pen Pen, double Bottom)> ends = [];
        var next = y;
        for (var i = 0; i < parallel.Branches.Length; i++)
        {
            var branch = NewPen();
            branch.MoveTo(new(supplyX, i == parallel.Branches.Length - 1 ? y : next));
            branch.Corner(new(supplyX, next));
            Canvas.Keep.Add(new(supplyX - 6, next - 6, supplyX + 6, next + 900));
            var bottom = Draw(parallel.Branches[i], branch, new(supplyX, next), supplyX, 120, 300);
            ends.Add((branch, bottom));
            if (i + 1 < parallel.Branches.Length)
            {
                var (before, _, _) = Cut(parallel.Branches[i + 1]);
                var (_, above) = Trial(before.OfType<ItemElement>(), Way.Right, Way.Up, Way.Down);
                next =
                    Math.Max(Canvas.Over.Claims.Max(one => one.Room.Bottom), bottom) + above + 20;
            }
        }

        var end = ends[^1].Bottom;
        foreach (var (branch, bottom) in ends)
        {
            if (bottom < end)
            {
                // the return passes behind the supply header
                Canvas.Pipes.Line("gap", supplyX - 6, bottom, supplyX + 6, bottom);
            }

            branch.Corner(new(returnX, bottom));
            branch.Arrive(new(returnX, branch == ends[0].Pen ? end : bottom));
        }

        Tee(parallel.Join, new(returnX, end));
        pen.MoveTo(new(returnX, end));
        pen.Return = true;
        return end;
    }
}
