using Hypocaust.Answers;
using Hypocaust.Cli.Terminal;
using Hypocaust.Quantities;
using Hypocaust.Verdicts;
using Spectre.Console;

namespace Hypocaust.Cli.Solve;

/// <summary>Prints an answer as verdicts and tables for a terminal of 80 columns.</summary>
internal sealed class AnswerPrinter(IAnsiConsole console, Answer answer, UnitSystem units)
{
    private const string None = "–";

    public void Print()
    {
        console.MarkupLineInterpolated($"[bold]{answer.Name}[/]");
        Chapter("Space", VerdictBook.Space(answer, units));
        Space();
        Chapter("Floor", VerdictBook.Floor(answer, units));
        Loops();
        Chapter("Plant", VerdictBook.Plant(answer, units));
        Plant();
        Chapter("Review", VerdictBook.Review(answer, units));
        foreach (
            var finding in answer.Review.Findings.Where(finding =>
                finding.Severity != Severity.Note
            )
        )
        {
            console.WriteLine($"  {SeverityWords.Mark(finding.Severity)} {finding.What}");
        }
    }

    private void Chapter(string name, Verdict verdict)
    {
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{name}[/]");
        console.WriteLine(verdict.Text);
    }

    private void Space()
    {
        if (answer.Space is not { } space)
        {
            return;
        }

        var table = Grid(
            Left("loses heat"),
            Head("area", Shown.Area),
            Head("U", Shown.Transmittance),
            Head("loss", Shown.SmallHeat),
            Right("share")
        );
        foreach (var zone in space.Zones)
        {
            var of = space.Zones.Length > 1 ? $"{zone.Name}: " : "";
            foreach (var element in zone.Elements)
            {
                Row(
                    table,
                    of + element.Name,
                    Shown.Area.Figure(element.AreaM2, units),
                    Shown.Transmittance.Figure(element.TransmittanceWPerM2K, units),
                    Shown.SmallHeat.Figure(element.LossW, units),
                    Share(element.LossW, space.DesignLossW)
                );
            }

            Row(
                table,
                of + "outside air",
                "",
                "",
                Shown.SmallHeat.Figure(zone.VentilationW, units),
                Share(zone.VentilationW, space.DesignLossW)
            );
        }

        console.Write(table);
    }

    private string Share(double part, double whole) =>
        whole > 0 ? Shown.Share.Format(part / whole, units) : None;

    private void Loops()
    {
        if (answer.Floor is not { Loops.IsEmpty: false } floor)
        {
            return;
        }

        var table = Grid(
            Left("loop"),
            Head("length", Shown.Length),
            Head("flow", Shown.Flow),
            Head("drop", Shown.Drop),
            Head("in", Shown.Temperature),
            Head("out", Shown.Temperature),
            Head("surface", Shown.Temperature),
            Head("heat", Shown.SmallHeat)
        );
        foreach (var loop in floor.Loops)
        {
            var run = loop.Running;
            Row(
                table,
                loop.Name,
                Shown.Length.Figure(loop.LengthM, units),
                Figure(run?.FlowM3PerS, Shown.Flow),
                Figure(run?.DropPa, Shown.Drop),
                Figure(run?.SupplyC, Shown.Temperature),
                Figure(run?.ReturnC, Shown.Temperature),
                Figure(run?.SurfaceMeanC, Shown.Temperature),
                Figure(run?.HeatUpW, Shown.SmallHeat)
            );
        }

        console.Write(table);
    }

    private void Plant()
    {
        if (answer.Plant is not { } plant)
        {
            return;
        }

        var pumps = Grid(
            Left("circulator"),
            Right("speed"),
            Head("flow", Shown.Flow),
            Head("head", Shown.Head),
            Head("inlet", Shown.Gauge)
        );
        foreach (var pump in plant.Circulators)
        {
            Row(
                pumps,
                pump.Item,
                pump.Running ? $"{pump.Speed} of {pump.Speeds}" : "off",
                Shown.Flow.Figure(pump.FlowM3PerS, units),
                Shown.Head.Figure(pump.HeadM, units),
                Figure(pump.InletPa, Shown.Gauge)
            );
        }

        console.Write(pumps);
        var items = Grid(
            Left("what the instruments show"),
            Head("water", Shown.Temperature),
            Head("pressure", Shown.Gauge),
            Left("what it is")
        );
        foreach (
            var item in plant.Items.Where(item =>
                item.Kind is "thermometer" or "pressure gauge" or "heater" or "manifold"
            )
        )
        {
            Row(
                items,
                item.Id,
                Figure(item.TemperatureC, Shown.Temperature),
                Figure(item.PressurePa, Shown.Gauge),
                item.Kind
            );
        }

        console.Write(items);
        foreach (var note in plant.Notes)
        {
            console.WriteLine(note);
        }
    }

    private string Figure(double? si, Shown shown) =>
        si is { } value ? shown.Figure(value, units) : None;

    private static TableColumn Left(string name) => new(name.EscapeMarkup());

    private static TableColumn Right(string name) =>
        new TableColumn(name.EscapeMarkup()).RightAligned().NoWrap();

    private TableColumn Head(string name, Shown shown) =>
        Right($"{name}\n{shown.UnitIn(units).Symbol}");

    private static Table Grid(params TableColumn[] columns)
    {
        var table = new Table().Border(TableBorder.Simple);
        table.AddColumns(columns);
        return table;
    }

    private static void Row(Table table, params string[] cells) =>
        table.AddRow([.. cells.Select(cell => cell.EscapeMarkup())]);
}
