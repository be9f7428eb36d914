using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Piping;

/// <summary>The piping as a schematic with what flows where.</summary>
public static class PlantSchematic
{
    private const double Margin = 22;

    /// <summary>Draws the plant of a design; without an answer, without figures.</summary>
    /// <param name="design">The design.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="units">Units of the figures.</param>
    /// <param name="shape">Screen or phone.</param>
    /// <param name="date">Date for the title block, as it should be read; left out, none.</param>
    public static Sheet Draw(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        SheetShape shape = SheetShape.Wide,
        string? date = null
    )
    {
        var graph = PipingGraph.Of(design, answer);
        var scale = TemperatureScale.Around(Temperatures(answer));
        var canvas = new PlantCanvas(scale);
        var words = new ItemWords(graph, units);
        if (design.Plant is { Items.Count: > 0 })
        {
            canvas = Layout(graph, words, units, shape, scale);
            NoFlow.Label(canvas);
            Unpiped.Draw(graph, canvas, words, shape == SheetShape.Narrow ? 1 : 4);
        }
        else
        {
            canvas.Over.Text(Face.Head, 0, 20, "There is no piping in this design yet.");
        }

        return Assemble(design, answer, units, shape, date, canvas);
    }

    private static IEnumerable<double> Temperatures(Answer answer) =>
        (answer.Plant?.Pipes ?? [])
            .SelectMany(pipe => new[] { pipe.InC, pipe.OutC })
            .Concat((answer.Plant?.Items ?? []).Select(item => item.TemperatureC))
            .Concat((answer.Floor?.Loops ?? []).Select(loop => loop.Running?.ReturnC))
            .OfType<double>();

    private static PlantCanvas Layout(
        PipingGraph graph,
        ItemWords words,
        UnitSystem units,
        SheetShape shape,
        TemperatureScale scale
    )
    {
        var canvas = new PlantCanvas(scale);
        if (CircuitFinder.Find(graph) is { } circuit)
        {
            CircuitLayout layout =
                shape == SheetShape.Wide
                    ? new WideLayout(graph, canvas, words, units)
                    : new NarrowLayout(graph, canvas, words, units);
            if (layout.TryDraw(circuit) && canvas.IsClear())
            {
                return canvas;
            }

            canvas = new PlantCanvas(scale);
        }

        var manifolds = new ManifoldDrawing(graph, canvas, words, units);
        new RunByRunLayout(
            graph,
            canvas,
            words,
            manifolds,
            shape == SheetShape.Wide ? 600 : NarrowLayout.Width
        ).Draw();
        return canvas;
    }

    private static Sheet Assemble(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        SheetShape shape,
        string? date,
        PlantCanvas canvas
    )
    {
        var extent = canvas
            .Over.Claims.Select(one => one.Room)
            .Concat(canvas.PipeRooms)
            .Aggregate((a, b) => a.With(b));
        var wide = shape == SheetShape.Wide;
        var width = wide ? Math.Max(930, extent.Width + (2 * Margin)) : NarrowLayout.Width;
        var left = wide ? (width - extent.Width) / 2 : Math.Min(Margin, extent.Left);
        var sheet = new Canvas();
        var (dx, dy) = (wide ? left - extent.Left : 0, Margin - extent.Top);
        sheet.Adopt(canvas.Pipes.Moved(dx, dy));
        sheet.Adopt(canvas.Over.Moved(dx, dy));
        var legend = extent.Bottom + dy + 26;
        var bottom = Legend(sheet, canvas.Scale, answer, units, legend);
        var remark = string.Join(
            " · ",
            new[]
            {
                "no scale",
                units == UnitSystem.Us ? "US units" : "SI units",
                date,
            }.OfType<string>()
        );
        var nameWidth = wide ? 340 : NarrowLayout.Width - (2 * Margin) - 24;
        bottom = wide ? bottom : bottom + 60;
        sheet.TitleBlock(
            width - Margin,
            bottom,
            Face.Head.Cut(design.Name + " · piping", nameWidth),
            Face.Soft.Cut(remark, nameWidth)
        );
        return sheet.Finish(
            "plant",
            design.Name + ": piping",
            Description(answer),
            width,
            bottom + Margin
        ) with
        {
            PipeRooms = [.. canvas.PipeRooms.Select(room => room.Moved(dx, dy))],
        };
    }

    private static double Legend(
        Canvas sheet,
        TemperatureScale scale,
        Answer answer,
        UnitSystem units,
        double y
    )
    {
        sheet.Line("plain", Margin, y + 5, Margin + 44, y + 5);
        sheet.Text(Face.Soft, Margin + 52, y + 9, "supply");
        sheet.Line("plain return", Margin, y + 27, Margin + 44, y + 27);
        sheet.Text(Face.Soft, Margin + 52, y + 31, "return");
        if (answer.Plant is not null)
        {
            sheet.Scale(scale, Margin + 120, y + 4, units);
            sheet.Text(Face.Soft, Margin + 120, y + 44, "water temperature");
        }

        return y + 48;
    }

    private static string Description(Answer answer) =>
        answer.Plant is { } plant
            ? $"Piping with {plant.Items.Length} parts, {plant.Circulators.Length} circulators and {answer.Floor?.Loops.Length ?? 0} loops; every reading is written at its part."
            : "Piping without figures, because the plant has not been answered.";
}
