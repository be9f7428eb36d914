using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Floor.Section;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Floor;

/// <summary>The section of one loop's floor.</summary>
internal sealed class FloorSectionSheet(
    LoopDesign loop,
    FloorBuildUp section,
    double tubeM,
    LoopAnswer? answer,
    SectionField? field,
    UnitSystem units,
    double width
)
{
    private const double Top = 118;
    private const double Insulation = 46;
    private const double Earth = 40;

    private readonly Canvas canvas = new();

    private readonly SlabTemperatures? temperatures = field is null
        ? null
        : new SlabTemperatures(field, loop.Spacing.Si);

    private TemperatureScale Scale =>
        temperatures?.Range is var (coldest, warmest)
            ? TemperatureScale.Around([coldest, warmest])
            : TemperatureScale.Around([]);

    private bool Wide => width > 400;

    private double Left => 22;

    private double Right => Wide ? width - 330 : width - 22;

    // three tubes and a little across, but never so large that the slab fills the page
    private double PerMetre => Math.Min((Right - Left) / (3.3 * loop.Spacing.Si), 190 / SlabM);

    private double SlabM => section.Cover.Si + tubeM + section.SlabBelow.Si;

    private double SlabBottom => Top + (SlabM * PerMetre);

    /// <summary>The sheet.</summary>
    public Sheet Draw(string design, string title, string? date)
    {
        var tubes = TubePlaces();
        Layers(tubes[0].X);
        Tubes(tubes);
        Dimensions(tubes);
        var below = SlabBottom + Insulation + Earth;
        var bottom = Wide
            ? Math.Max(Temperatures(Right + 26, Top - 60), below + 20)
            : Temperatures(Left, below + 34);
        if (temperatures is not null)
        {
            canvas.Scale(Scale, Wide ? Right + 26 : Left, bottom + 8, units);
            canvas.Text(
                Face.Soft,
                Wide ? Right + 26 : Left,
                bottom + 50,
                $"at the loop's mean water; a line every {Shown.Difference.Format(temperatures.StepK, units)}"
            );
            bottom += 56;
        }

        ScaleBar(bottom + 18);
        bottom += Wide ? 52 : 96;
        canvas.TitleBlock(
            width - 22,
            bottom,
            Face.Head.Cut($"{design} · floor, {loop.Name}", Wide ? 420 : 320),
            string.Join(" · ", new[] { "concrete and tube to scale", date }.OfType<string>())
        );
        return canvas.Finish(
            "floor-section",
            title,
            $"Tube every {Shown.Small.Format(loop.Spacing.Si, units)} under {Shown.Small.Format(section.Cover.Si, units)} of concrete.",
            width,
            bottom + 20
        );
    }

    private void Layers(double firstTubeX)
    {
        var (slab, cold) = (SlabBottom, SlabBottom + Insulation);
        if (section.Covering.Si > 0)
        {
            canvas.Add(new Box("body", new(Left, Top - 9, Right, Top)));
        }

        canvas.Add(new Box("body", new(Left, Top, Right, slab)));
        if (temperatures is null)
        {
            Speckle(slab);
        }
        else
        {
            var room = new Bounds(Left, Top, Right, slab);
            temperatures.Paint(canvas, room, firstTubeX, PerMetre, Scale);
            canvas.Add(new Box("thin", room));
        }

        canvas.Add(new Box("body", new(Left, slab, Right, cold)));
        for (var x = Left; x + 24 <= Right; x += 24)
        {
            canvas.Line("hatch", new Point(x, cold), new(x + 12, slab), new(x + 24, cold));
        }

        for (var x = Left; x + 10 <= Right; x += 18)
        {
            canvas.Line("hatch", x, cold + 12, x + 10, cold);
        }

        canvas.Text(
            Face.Soft,
            Right,
            Top - 18,
            section.Covering.Si > 0
                ? "covering, " + Shown.Resistance.Format(section.Covering.Si, units)
                : "no covering",
            Anchor.End
        );
        canvas.Text(
            Face.Soft,
            Left,
            cold + 30,
            Face.Soft.Cut(
                $"below the tube, {Shown.Resistance.Format(section.Below.Si, units)} in all (not to scale)",
                Right - Left
            )
        );
    }

    // Dots of concrete on a fixed pattern, clear of nothing but themselves
    private void Speckle(double slab)
    {
        var i = 0;
        for (var y = Top + 10; y < slab - 6; y += 13)
        {
            for (var x = Left + 8 + (i % 3 * 7); x < Right - 6; x += 29)
            {
                canvas.Add(new Ellipse("speck", new(x, y), 0.9, 0.9));
            }

            i++;
        }
    }

    private List<Point> TubePlaces()
    {
        var radius = tubeM * PerMetre / 2;
        var pitch = loop.Spacing.Si * PerMetre;
        var y = Top + ((section.Cover.Si * PerMetre) + radius);
        var count = Math.Max(2, (int)((Right - Left - (2 * radius) - 20) / pitch) + 1);
        var first = ((Left + Right) / 2) - (pitch * (count - 1) / 2);
        return [.. Enumerable.Range(0, count).Select(i => new Point(first + (i * pitch), y))];
    }

    private void Tubes(List<Point> at)
    {
        var radius = tubeM * PerMetre / 2;
        foreach (var middle in at)
        {
            canvas.Add(new Ellipse("body", middle, radius, radius));
            canvas.Add(new Ellipse("wash", middle, radius * 0.75, radius * 0.75));
        }
    }

    private void Dimensions(List<Point> tubes)
    {
        var y = Top - 52;
        canvas.Line("hair", tubes[0].X, y - 4, tubes[0].X, tubes[0].Y);
        canvas.Line("hair", tubes[1].X, y - 4, tubes[1].X, tubes[1].Y);
        canvas.Dimension(
            new(tubes[0].X, y),
            new(tubes[1].X, y),
            Shown.Small.Format(loop.Spacing.Si, units)
        );
        var x = tubes[^1].X - Math.Min(60, loop.Spacing.Si * PerMetre / 2);
        var tubeTop = tubes[0].Y - (tubeM * PerMetre / 2);
        var cover = Shown.Small.Format(section.Cover.Si, units);
        if (temperatures is not null)
        {
            // the words stand on paper, not on dark colours
            var words = new Label(Face.Soft, new(x + 9, ((Top + tubeTop) / 2) + 4), cover);
            canvas.Add(new Box("ground", words.Bounds.Grown(3)));
        }

        canvas.Dimension(new(x, Top), new(x, tubeTop), cover);
    }

    private double Temperatures(double x, double y)
    {
        (string Words, double? Value)[] rows =
        [
            ("room", answer?.IndoorC),
            ("surface, warmest spot", answer?.Running?.SurfaceWarmestC),
            ("surface, mean", answer?.Running?.SurfaceMeanC),
            ("surface, between tubes", BetweenTubes()),
            ("surface, at most", answer?.SurfaceLimitC),
            ("water in", answer?.Running?.SupplyC),
            ("water out", answer?.Running?.ReturnC),
            ("below", answer?.BelowC),
        ];
        canvas.Text(Face.Name, x, y, Face.Name.Cut(loop.Name, 280));
        foreach (var (words, value) in rows)
        {
            y += 22;
            canvas.Line("hair", x, y + 6, x + 282, y + 6);
            canvas.Text(Face.Soft, x, y, words);
            canvas.Text(
                Face.Number,
                x + 282,
                y,
                value is { } t ? Shown.Temperature.Format(t, units) : "—",
                Anchor.End
            );
        }

        return y + 10;
    }

    // midway between tubes, at the mean flux of the loop
    private double? BetweenTubes() =>
        answer is { Section: { } solved, Running: { } run }
            ? answer.IndoorC + (solved.ColdestShare * (run.SurfaceMeanC - answer.IndoorC))
            : null;

    private void ScaleBar(double y)
    {
        var unit = units == UnitSystem.Us ? 0.1016 : 0.1;
        var length = unit * PerMetre;
        canvas.Line("thin", Left, y, Left + length, y);
        canvas.Line("thin", Left, y - 5, Left, y + 5);
        canvas.Line("thin", Left + length, y - 5, Left + length, y + 5);
        canvas.Text(
            Face.Soft,
            Left + length + 8,
            y + 4,
            units == UnitSystem.Us ? "4 in" : "100 mm"
        );
    }
}
