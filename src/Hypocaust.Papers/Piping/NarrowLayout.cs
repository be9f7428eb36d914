using System.Collections.Immutable;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Piping;

/// <summary>Circuits stacked from top to bottom for a phone: supply down the left side, return up the right.</summary>
internal sealed class NarrowLayout(
    PipingGraph graph,
    PlantCanvas canvas,
    ItemWords words,
    UnitSystem units
) : CircuitLayout(graph, canvas, words, units, nameWidth: 92)
{
    /// <summary>Width of the sheet.</summary>
    public const double Width = 390;

    private const double Left = 34;
    private const double Right = 356;

    /// <inheritdoc/>
    public override bool TryDraw(HeaterCircuit circuit)
    {
        if (!Fits(circuit.Way, 0))
        {
            return false;
        }

        Heater(circuit.Heater, new((Left + Right) / 2, 0), Way.Down);
        var pen = NewPen();
        pen.MoveTo(new(((Left + Right) / 2) - 32, 0));
        pen.Corner(new(Left, 0));
        _ = Draw(circuit.Way, pen, 24, Left, Right, Canvas.Over.Claims.Max(one => one.Room.Bottom));
        pen.Corner(new(Right, 0));
        pen.Arrive(new(((Left + Right) / 2) + 32, 0));
        return true;
    }

    // A second load in one line, or branches within branches within branches, find no room here
    private static bool Fits(ImmutableArray<Element> way, int depth) =>
        way.Count(IsLoad) <= 1
        && way.All(element =>
            element switch
            {
                SpacedTeesElement tees => Fits(tees.Secondary, depth),
                ParallelElement parallel => depth < 3
                    && parallel.Branches.All(branch => Fits(branch, depth + 1)),
                _ => true,
            }
        );

    /// <summary>Draws a circuit; the pen comes down its left side and ends going up its right side.</summary>
    /// <returns>How far down it reaches.</returns>
    private double Draw(
        ImmutableArray<Element> way,
        Pen pen,
        double top,
        double left,
        double right,
        double clear
    )
    {
        var (before, loads, after) = Cut(way);
        var placer = NewPlacer();
        Canvas.Keep.Add(new(left - 6, top - 30, right + 6, top + 3));
        var down = placer.Place(
            before.OfType<ItemElement>(),
            new(left, top),
            Way.Down,
            Way.Down,
            Way.Right
        );
        var up = placer.Place(
            after.OfType<ItemElement>().Reverse(),
            new(right, top),
            Way.Down,
            Way.Up,
            Way.Left
        );
        var y = Math.Max(clear, top + Math.Max(Math.Max(down, up), 20) + 16);
        Follow(pen, before, placer);
        var end = loads switch
        {
            [SpacedTeesElement tees] => SpacedTees(tees, pen, y, left, right),
            [ManifoldElement manifold] => Manifold(manifold, pen, y, left, right),
            [ParallelElement parallel] => Parallel(parallel, pen, y, left, right),
            _ => Turn(pen, y, left, right),
        };
        pen.Return = true;
        Follow(pen, after, placer);
        return end;
    }

    private static double Turn(Pen pen, double y, double left, double right)
    {
        pen.Corner(new(left, y));
        pen.Corner(new(right, y));
        return y;
    }

    private double Manifold(ManifoldElement manifold, Pen pen, double y, double left, double right)
    {
        var level = y + 26;
        pen.Arrive(new(left, level));
        var bar = left + ManifoldDrawing.BarDistance;
        var end = Manifolds.Draw(manifold.Item, left, level, y + 6, right - left - 130);
        pen.MoveTo(new(bar, y + 6));
        pen.Return = true;
        pen.Corner(new(right, y + 6));
        return end + 10;
    }

    private double SpacedTees(SpacedTeesElement tees, Pen pen, double y, double left, double right)
    {
        var middle = (left + right) / 2;
        var (a, b) = (middle - 66, middle + 66);
        var level = y + 22;
        pen.Corner(new(left, level));
        pen.Arrive(new(a, level));
        var between = NewPen();
        between.MoveTo(new(a, level));
        between.Take(BetweenPipe(tees));
        between.Arrive(new(b, level));
        var inner = new Canvas();
        inner.Add(new Ellipse("solid", new(a, level), 5, 5));
        inner.Add(new Ellipse("solid", new(b, level), 5, 5));
        inner.Claim(tees.Item.Name, new(a - 6, level - 6, b + 6, level + 6));
        var lines = BetweenWords(tees, "→", "←");
        Glyph.Stack(inner, lines, new(a, level - 4, b, level + 6), Way.Down, tees.Item.Name);
        Canvas.Over.Gather(
            inner,
            DrawingId.OfItem(tees.Item.Name),
            tees.Item.Name,
            Words.Title(tees.Item)
        );
        pen.MoveTo(new(b, level));
        pen.Return = true;
        pen.Corner(new(right, level));
        if (tees.Secondary.IsEmpty)
        {
            return level + 24 + (lines.Count * 15.5);
        }

        var second = NewPen();
        var turn = level + 24 + (lines.Count * 15.5);
        second.MoveTo(new(a, level));
        second.Corner(new(a, turn));
        second.Corner(new(left, turn));
        var end = Draw(tees.Secondary, second, turn, left, right, 0);
        second.Corner(new(right, turn));
        second.Corner(new(b, turn));
        second.Arrive(new(b, level));
        return end;
    }

    private double Parallel(ParallelElement parallel, Pen pen, double y, double left, double right)
    {
        pen.Arrive(new(left, y));
        Tee(parallel.Split, new(left, y));
        Tee(parallel.Join, new(right, y));
        var level = y;
        for (var i = 0; i < parallel.Branches.Length; i++)
        {
            var last = i == parallel.Branches.Length - 1;
            var branch = NewPen();
            branch.MoveTo(new(left, last ? y : level));
            branch.Corner(new(left, level));
            branch.Corner(new(left + 18, level));
            var end = Draw(parallel.Branches[i], branch, level + 4, left + 18, right - 18, 0);
            branch.Corner(new(right - 18, level));
            branch.Corner(new(right, level));
            branch.Arrive(new(right, last ? y : level));
            level = end + 34;
        }

        pen.MoveTo(new(right, y));
        pen.Return = true;
        return level - 34;
    }
}
