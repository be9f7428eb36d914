using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Piping;

/// <summary>Draws a manifold: supply bar, return bar beside it, a loop a row.</summary>
internal sealed class ManifoldDrawing(
    PipingGraph graph,
    PlantCanvas canvas,
    ItemWords words,
    UnitSystem units
)
{
    /// <summary>Distance from the supply bar to the return bar.</summary>
    public const double BarDistance = 24;

    private const double FirstRow = 22;
    private const double RowPitch = 38;
    private const double TurnAt = 112;

    /// <summary>Draws it with the upper end of the supply bar at a place.</summary>
    /// <returns>The y of the lower end of the return bar.</returns>
    public double Draw(DrawnItem item, double x, double y, double returnTop, double textWidth)
    {
        var loops = LoopsOf(graph.Design, item.Name);
        var inner = new Canvas();
        var last = y + FirstRow + (Math.Max(loops.Count, 1) * RowPitch) - 8;
        inner.Line("bar", x, y, x, last - 18);
        inner.Line("bar", x + BarDistance, returnTop, x + BarDistance, last);
        inner.Claim(item.Name, new(x - 5, y - 5, x + 5, last - 13));
        inner.Claim(
            item.Name,
            new(x + BarDistance - 5, returnTop - 5, x + BarDistance + 5, last + 5)
        );
        inner.Text(
            Face.Soft,
            x + BarDistance + 12,
            y + 6,
            Face.Soft.Cut(item.Name, textWidth + 60),
            owner: item.Name
        );
        if (loops.Count == 0)
        {
            inner.Text(Face.Soft, x + TurnAt + 10, y + FirstRow + 10, "no loops yet");
        }

        for (var i = 0; i < loops.Count; i++)
        {
            Loop(inner, loops[i], x, y + FirstRow + (i * RowPitch), textWidth);
        }

        canvas.Over.Gather(inner, DrawingId.OfItem(item.Name), item.Name, words.Title(item));
        return last;
    }

    /// <summary>Loops that hang on a manifold.</summary>
    private static List<LoopDesign> LoopsOf(HeatingDesign design, string manifold)
    {
        var loops = design.Floor?.Loops ?? default;
        var parts = new PartLookup(design);
        return loops.IsDefault
            ? []
            :
            [
                .. loops.Where(loop =>
                    LoopManifold.Of(loop, design.Plant!, parts.Find) == manifold
                ),
            ];
    }

    private void Loop(Canvas canvas, LoopDesign loop, double x, double y, double textWidth)
    {
        var inner = new Canvas();
        var answer = graph.Floor?.Loops.FirstOrDefault(one => one.Name == loop.Name);
        var running = answer?.Running;
        var turn = x + TurnAt;
        var back = x + BarDistance;
        Point[] out_ = [new(x + 4, y), new(turn, y), new(turn, y + 6)];
        Point[] home = [new(turn, y + 6), new(turn, y + 12), new(back + 4, y + 12)];
        Leg(inner, out_, running, running?.SupplyC, "");
        Leg(inner, home, running, running?.ReturnC, " return");
        // the leg from the supply bar passes behind the return bar
        inner.Line("bar", back, y - 6, back, y + 6);
        Valve(inner, x + BarDistance + 18, y, loop.Shut);
        inner.Claim(loop.Name, new(back + 8, y - 7, turn + 3, y + 15));
        inner.Text(
            Face.Name,
            turn + 10,
            y + 2,
            Face.Name.Cut(loop.Name, textWidth),
            owner: loop.Name
        );
        var figures = Figures(loop, answer, running);
        inner.Text(
            Face.Soft,
            turn + 10,
            y + 17,
            Face.Soft.Cut(figures, textWidth),
            owner: loop.Name
        );
        canvas.Gather(
            inner,
            DrawingId.OfLoop(loop.Name),
            loop.Name,
            $"{loop.Name}: {Title(figures, running)}",
            "loop"
        );
    }

    private static void Valve(Canvas canvas, double x, double y, bool shut) =>
        canvas.Add(
            new Stroke(
                shut ? "body solid" : "body",
                [new(x - 6, y - 4), new(x + 6, y + 4), new(x + 6, y - 4), new(x - 6, y + 4)],
                Closed: true
            )
        );

    private void Leg(
        Canvas inner,
        Point[] points,
        LoopRunning? running,
        double? temperatureC,
        string role
    )
    {
        var flowing = running is { } run && Math.Abs(run.FlowKgPerS) > PlantCanvas.StillKgPerS;
        if (flowing && temperatureC is { } t)
        {
            inner.Line("case fine" + role, points);
            inner.Add(new Stroke("water fine" + role, [.. points], Colour: canvas.Scale.Colour(t)));
        }
        else
        {
            inner.Line((running is null ? "thin" : "still") + role, points);
        }
    }

    private string Figures(LoopDesign loop, LoopAnswer? answer, LoopRunning? running)
    {
        List<string> parts = [];
        if ((answer?.LengthM ?? loop.Length?.Si) is { } length)
        {
            parts.Add(Shown.Length.Format(length, units));
        }

        if (loop.Shut)
        {
            parts.Add("shut");
        }
        else if (running is not null)
        {
            parts.Add(
                Math.Abs(running.FlowKgPerS) > PlantCanvas.StillKgPerS
                    ? Shown.Flow.Format(running.FlowM3PerS, units)
                    : "no flow"
            );
        }

        return string.Join(" · ", parts);
    }

    private string Title(string figures, LoopRunning? running) =>
        running is { SupplyC: { } supply, ReturnC: { } back }
            ? $"{figures}, {Shown.Temperature.Format(supply, units)} to {Shown.Temperature.Format(back, units)}, {Shown.SmallHeat.Format(running.HeatUpW, units)} up"
            : figures;
}
