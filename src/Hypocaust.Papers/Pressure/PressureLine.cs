using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Papers.Piping;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Pressure;

/// <summary>The pressure along the circuits, from part to part in the order in which the water meets them.</summary>
public static class PressureLine
{
    private const double RowHeight = 30;

    /// <summary>Draws the heater's circuit and the one through the loop with the largest drop.</summary>
    /// <param name="design">The design.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="units">Units of the axis.</param>
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
        var title = design.Name + ": pressure along the circuit";
        var ways = PressureWays.Find(PipingGraph.Of(design, answer));
        if (answer.Plant is null || ways.Count == 0)
        {
            return Blank.Sheet(
                "pressure",
                title,
                "There are no answered pressures to draw yet.",
                shape
            );
        }

        var wide = shape == SheetShape.Wide;
        var width = wide ? 930.0 : 390.0;
        var across = wide && ways.Count > 1 ? 2 : 1;
        var panel = (width - 22) / across;
        var relief = answer.Plant.Fill.ReliefPa;
        var canvas = new Canvas();
        var (bottom, row) = (0.0, 0.0);
        for (var i = 0; i < ways.Count; i++)
        {
            row = i % across == 0 ? bottom : row;
            var left = 22 + (panel * (i % across));
            bottom = Math.Max(
                bottom,
                Panel(canvas, ways[i], relief, units, new(left, row + 26), panel - 22)
            );
        }

        canvas.Line("mark", 22, bottom + 22, 46, bottom + 22);
        canvas.Text(
            Face.Soft,
            54,
            bottom + 26,
            relief is null ? "no relief valve" : "relief valve opens"
        );
        canvas.Add(new Ellipse("heat", new(34, bottom + 42), 5, 5));
        canvas.Text(Face.Soft, 54, bottom + 46, "expansion vessel joins here");
        bottom += wide ? 56 : 112;
        var remark = string.Join(" · ", new[] { "gauge pressure", date }.OfType<string>());
        canvas.TitleBlock(
            width - 22,
            bottom,
            Face.Head.Cut(design.Name + " · pressure", wide ? 400 : 320),
            remark
        );
        return canvas.Finish(
            "pressure",
            title,
            $"Gauge pressure at each part along {ways.Count} circuits, in flow order from top to bottom.",
            width,
            bottom + 20
        );
    }

    private static double Panel(
        Canvas canvas,
        PressureWay way,
        double? reliefPa,
        UnitSystem units,
        Point at,
        double width
    )
    {
        var names = Math.Min(150, width * 0.36);
        var all = way.Stops.SelectMany(stop => new[] { stop.InPa, stop.OutPa });
        var axis = Axis.Over(
            Math.Min(0, all.Min()),
            Math.Max(all.Max(), reliefPa ?? 0),
            Shown.Gauge.UnitIn(units),
            at.X + names + 8,
            at.X + width - 20
        );
        var (top, bottom) = (at.Y + 40, at.Y + 40 + (way.Stops.Count * RowHeight));
        canvas.Text(Face.Head, at.X, at.Y, Face.Head.Cut(way.Title, width));
        foreach (var (x, words) in axis.Ticks())
        {
            canvas.Line("hair", x, top, x, bottom);
            canvas.Text(Face.Soft, x, top - 8, words, Anchor.Middle);
        }

        canvas.Text(Face.Soft, at.X, top - 8, Shown.Gauge.UnitIn(units).Symbol);
        if (reliefPa is { } opens)
        {
            canvas.Line("mark", axis.At(opens), top, axis.At(opens), bottom);
        }

        Stops(canvas, way, axis, units, at.X, names, top);
        return bottom;
    }

    private static void Stops(
        Canvas canvas,
        PressureWay way,
        Axis axis,
        UnitSystem units,
        double left,
        double names,
        double top
    )
    {
        var points = new List<Point>();
        for (var i = 0; i < way.Stops.Count; i++)
        {
            var stop = way.Stops[i];
            var (y, next) = (top + (i * RowHeight), top + ((i + 1) * RowHeight));
            canvas.Line("hair", left, next, axis.End, next);
            canvas.Text(Face.Soft, left, y + 19, Face.Soft.Cut(stop.Name, names));
            points.Add(new(axis.At(stop.InPa), y + 7));
            points.Add(new(axis.At(stop.OutPa), next - 7));
        }

        canvas.Line("curve", points.ToArray());
        for (var i = 0; i < way.Stops.Count; i++)
        {
            var stop = way.Stops[i];
            var (x, y) = (axis.At(stop.OutPa), top + (i * RowHeight) + 15);
            if (stop.IsVessel)
            {
                canvas.Add(new Ellipse("heat", new(axis.At(stop.InPa), y), 5, 5));
            }

            var most = Math.Max(axis.At(stop.InPa), x);
            var least = Math.Min(axis.At(stop.InPa), x);
            var words = Shown.Gauge.Figure(stop.OutPa, units);
            var fits = most + 10 + Face.Soft.WidthOf(words) < axis.End + 20;
            canvas.Text(
                Face.Soft,
                fits ? most + 9 : least - 9,
                y + 4,
                words,
                fits ? Anchor.Start : Anchor.End
            );
        }
    }
}
