using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Floor;

/// <summary>The loops as bars: as long as the tube, coloured by the water along it.</summary>
public static class LoopBars
{
    private const double RowHeight = 66;

    /// <summary>Draws all loops of an answer.</summary>
    /// <param name="design">The design.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="units">Units of the figures.</param>
    /// <param name="shape">Screen or phone.</param>
    /// <param name="date">Date for the title block; left out, none.</param>
    public static Sheet Draw(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        SheetShape shape = SheetShape.Wide,
        string? date = null
    )
    {
        var title = design.Name + ": loops";
        if (answer.Floor is not { Loops.IsEmpty: false } floor)
        {
            return Blank.Sheet("loops", title, "There is no answered loop to draw yet.", shape);
        }

        var width = shape == SheetShape.Wide ? 930.0 : 390.0;
        var canvas = new Canvas();
        var scale = TemperatureScale.Around(
            floor.Loops.SelectMany(loop =>
                new[] { loop.Running?.SupplyC, loop.Running?.ReturnC }.OfType<double>()
            )
        );
        var longest = floor.Loops.Max(loop => loop.LengthM);
        var y = 26.0;
        foreach (var loop in floor.Loops)
        {
            var inner = new Canvas();
            Row(inner, loop, scale, units, y, (width - 160) * loop.LengthM / longest);
            canvas.Gather(inner, DrawingId.OfLoop(loop.Name), loop.Name, Title(loop, units));
            y += RowHeight;
        }

        canvas.Scale(scale, 22, y + 6, units);
        canvas.Text(Face.Soft, 22, y + 46, "water along the tube");
        var bottom = shape == SheetShape.Wide ? y + 52 : y + 112;
        var remark = string.Join(" · ", new[] { "bars to scale of length", date }.OfType<string>());
        canvas.TitleBlock(
            width - 22,
            bottom,
            Face.Head.Cut(design.Name + " · loops", shape == SheetShape.Wide ? 500 : 320),
            remark
        );
        return canvas.Finish(
            "loops",
            title,
            $"{floor.Loops.Length} loops, each a bar as long as its tube, coloured from supply to return temperature.",
            width,
            bottom + 20
        );
    }

    /// <summary>Temperature along a loop: the excess over the room falls exponentially from supply to return.</summary>
    /// <param name="supplyC">Water in, °C.</param>
    /// <param name="returnC">Water out, °C.</param>
    /// <param name="indoorC">Room, °C.</param>
    /// <param name="share">How far along, 0 to 1.</param>
    internal static double AlongC(double supplyC, double returnC, double indoorC, double share)
    {
        var (first, last) = (supplyC - indoorC, returnC - indoorC);
        return first > 0 && last > 0
            ? indoorC + (first * Math.Pow(last / first, share))
            : supplyC + ((returnC - supplyC) * share);
    }

    private static void Row(
        Canvas canvas,
        LoopAnswer loop,
        TemperatureScale scale,
        UnitSystem units,
        double y,
        double length
    )
    {
        const double Left = 78;
        const double BarHeight = 12;
        canvas.Text(Face.Name, 22, y, Face.Name.Cut(loop.Name, 200));
        var lengthWords = Shown.Length.Format(loop.LengthM, units);
        canvas.Text(
            Face.Soft,
            30 + Face.Name.WidthOf(Face.Name.Cut(loop.Name, 200)),
            y,
            lengthWords
        );
        var bar = new Bounds(Left, y + 9, Left + length, y + 9 + BarHeight);
        if (loop.Running is { SupplyC: { } supply, ReturnC: { } back } running)
        {
            var steps = Math.Max(40, (int)(length / 8));
            for (var i = 0; i < steps; i++)
            {
                var t = AlongC(supply, back, loop.IndoorC, (i + 0.5) / steps);
                var (from, to) = (
                    bar.Left + (length * i / steps),
                    bar.Left + (length * (i + 1) / steps)
                );
                canvas.Add(new Box("", new(from, bar.Top, to + 0.6, bar.Bottom), scale.Colour(t)));
            }

            canvas.Text(
                Face.Number,
                Left - 6,
                y + 20,
                Shown.Temperature.Figure(supply, units),
                Anchor.End
            );
            canvas.Text(Face.Number, bar.Right + 6, y + 20, Shown.Temperature.Format(back, units));
            canvas.Text(Face.Soft, Left, y + 36, Figures(loop, running, units));
        }
        else
        {
            canvas.Text(Face.Soft, Left, y + 36, loop.Running is null ? "not answered" : "no flow");
        }

        canvas.Add(new Box("thin", bar));
    }

    private static string Figures(LoopAnswer loop, LoopRunning running, UnitSystem units)
    {
        var over = running.SurfaceWarmestC > loop.SurfaceLimitC;
        return $"{Shown.Flow.Format(running.FlowM3PerS, units)} · {Shown.SmallHeat.Format(running.HeatUpW, units)} up · surface {Shown.Temperature.Figure(running.SurfaceWarmestC, units)} {(over ? "▲ over" : "of")} {Shown.Temperature.Format(loop.SurfaceLimitC, units)}";
    }

    private static string Title(LoopAnswer loop, UnitSystem units) =>
        loop.Running is { } running
            ? $"{loop.Name}: {Shown.Length.Format(loop.LengthM, units)}, {Shown.Flow.Format(running.FlowM3PerS, units)}, drop {Shown.Drop.Format(running.DropPa, units)}, {Shown.Flux.Format(running.FluxWPerM2, units)} up"
            : $"{loop.Name}: {Shown.Length.Format(loop.LengthM, units)}";
}
