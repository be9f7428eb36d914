using System.Collections.Immutable;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Piping;

/// <summary>What both ways of laying out circuits share.</summary>
internal abstract class CircuitLayout(
    PipingGraph graph,
    PlantCanvas canvas,
    ItemWords words,
    UnitSystem units,
    double nameWidth
)
{
    private int pens;

    /// <summary>Where the drawing is made.</summary>
    protected PlantCanvas Canvas => canvas;

    /// <summary>What is said of items.</summary>
    protected ItemWords Words => words;

    /// <summary>Draws manifolds.</summary>
    protected ManifoldDrawing Manifolds { get; } = new(graph, canvas, words, units);

    /// <summary>Draws the heater's circuit and all that hangs on it; null where this layout cannot.</summary>
    public abstract bool TryDraw(HeaterCircuit circuit);

    /// <summary>A new pen with a number of its own.</summary>
    protected Pen NewPen() => new(canvas, pens++);

    /// <summary>A placer of items.</summary>
    protected LinePlacer NewPlacer() => new(canvas, words, nameWidth);

    /// <summary>Cuts a way into what lies before its loads, the loads with what lies between them, and what lies after.</summary>
    protected static (
        ImmutableArray<Element> Before,
        ImmutableArray<Element> Loads,
        ImmutableArray<Element> After
    ) Cut(ImmutableArray<Element> way)
    {
        var first = way.ToList().FindIndex(IsLoad);
        if (first >= 0)
        {
            var last = way.ToList().FindLastIndex(IsLoad);
            return (way[..first], way[first..(last + 1)], way[(last + 1)..]);
        }

        var items = way.Where(element => element is ItemElement).ToList();
        var half = items.Count == 0 ? 0 : way.IndexOf(items[(items.Count - 1) / 2]) + 1;
        return (way[..half], [], way[half..]);
    }

    /// <summary>Whether an element needs a place of its own.</summary>
    protected static bool IsLoad(Element element) =>
        element is SpacedTeesElement or ManifoldElement or ParallelElement;

    /// <summary>Draws along placed items.</summary>
    protected static void Follow(Pen pen, IEnumerable<Element> way, LinePlacer placer)
    {
        foreach (var element in way)
        {
            switch (element)
            {
                case PipeElement pipe:
                    pen.Take(pipe);
                    break;
                case ItemElement item:
                    pen.Arrive(placer[item]);
                    break;
                default:
                    throw new InvalidOperationException("A load stands on a straight pipe.");
            }
        }
    }

    /// <summary>The heater with its words.</summary>
    protected void Heater(DrawnItem heater, Point at, Way side)
    {
        var inner = new Canvas();
        var room = Symbols.Draw(inner, heater, at, Way.Up, side);
        Glyph.Words(inner, words, heater, room, side, nameWidth);
        canvas.Over.Gather(inner, DrawingId.OfItem(heater.Name), heater.Name, words.Title(heater));
    }

    /// <summary>The flow from the first of two closely spaced tees to the second; null where unanswered.</summary>
    protected double? Between(SpacedTeesElement tees) =>
        graph.Answer?.Tees.FirstOrDefault(one => one.Item == tees.Item.Name)?.BetweenFlowM3PerS;

    /// <summary>The pipe between two closely spaced tees, as a pipe of the drawing.</summary>
    protected PipeElement BetweenPipe(SpacedTeesElement tees)
    {
        var answer = graph.Answer?.Tees.FirstOrDefault(one => one.Item == tees.Item.Name);
        var density = graph.Answer?.Fluid.DensityKgPerM3 ?? 1000;
        var temperature =
            answer is null ? null
            : answer.BetweenFlowM3PerS >= 0 ? answer.PrimaryC
            : answer.SecondaryReturnC;
        return new(
            new Piece(
                tees.Item.Name,
                "primaryIn",
                tees.Item.Name,
                "primaryOut",
                answer?.BetweenFlowM3PerS * density,
                temperature
            ),
            Forward: true
        );
    }

    /// <summary>The flow between tees as words with an arrow.</summary>
    protected List<(Face, string)> BetweenWords(SpacedTeesElement tees, string onward, string back)
    {
        List<(Face, string)> lines = [];
        if (Between(tees) is { } flow)
        {
            var arrow = flow >= 0 ? onward : back;
            lines.Add(
                Math.Abs(flow) < 1e-10
                    ? (Face.Soft, "no flow")
                    : (Face.Number, $"{Shown.Flow.Format(Math.Abs(flow), units)} {arrow}")
            );
        }

        lines.AddRange(
            Face.Soft.Lines(tees.Item.Name, nameWidth, 2).Select(text => (Face.Soft, text))
        );
        if (tees.Item.Part is Design.CloselySpacedTeesPart { Spacing.Si: > 0 } part)
        {
            lines.Add((Face.Soft, Shown.Small.Format(part.Spacing.Si, units) + " apart"));
        }

        return lines;
    }

    /// <summary>A dot where three pipes meet, with the name of the tee if it has one.</summary>
    protected void Tee(DrawnItem? tee, Point at)
    {
        var inner = new Canvas();
        inner.Add(new Ellipse("solid", at, 4.5, 4.5));
        if (tee is null)
        {
            canvas.Over.Adopt(inner);
        }
        else
        {
            inner.Claim(tee.Name, Bounds.Around(at.X, at.Y, 10, 10));
            canvas.Over.Gather(inner, DrawingId.OfItem(tee.Name), tee.Name, words.Title(tee));
        }
    }
}
