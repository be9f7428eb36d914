using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Pumps;

/// <summary>The diagram of one running circulator.</summary>
internal sealed class PumpCurveSheet(CirculatorAnswer pump, UnitSystem units, double width)
{
    private const double Height = 360;
    private const int Steps = 48;

    private readonly Canvas canvas = new();
    private readonly double endM3PerS = Math.Max(
        Math.Max(pump.CurveEndM3PerS, pump.FlowM3PerS * 1.1),
        1e-6
    );

    /// <summary>The sheet.</summary>
    public Sheet Draw(string name, string title, string? date)
    {
        var across = Axis.Over(0, endM3PerS, Shown.Flow.UnitIn(units), 62, width - 24);
        var top = Math.Max(HighestHead() * 1.12, 0.1);
        var up = Axis.Over(Math.Min(0, pump.HeadM), top, Shown.Length.UnitIn(units), 262, 40, 44);
        Grid(across, up);
        Curve("curve", across, up, flow => PumpCurve.HeadM(pump.CurveCoefficients, flow));
        if (pump.FlowM3PerS > 0 && pump.HeadM > 0)
        {
            Curve("curve dash fine", across, up, flow => System(flow, 1.75));
            Curve("curve dash fine", across, up, flow => System(flow, 2));
        }

        Point(across, up);
        Words(date);
        return canvas.Finish(name, title, Description(), width, Height + 24);
    }

    private double System(double flow, double exponent) =>
        pump.HeadM * Math.Pow(flow / pump.FlowM3PerS, exponent);

    private double HighestHead() =>
        Enumerable
            .Range(0, Steps + 1)
            .Max(i => PumpCurve.HeadM(pump.CurveCoefficients, pump.CurveEndM3PerS * i / Steps));

    private void Grid(Axis across, Axis up)
    {
        foreach (var (x, words) in across.Ticks())
        {
            canvas.Line("hair", x, up.Start, x, up.End);
            canvas.Text(Face.Soft, x, up.Start + 18, words, Anchor.Middle);
        }

        foreach (var (y, words) in up.Ticks())
        {
            canvas.Line("hair", across.Start, y, across.End, y);
            canvas.Text(Face.Soft, across.Start - 8, y + 4, words, Anchor.End);
        }

        canvas.Line(
            "thin",
            new Point(across.Start, up.End),
            new(across.Start, up.Start),
            new(across.End, up.Start)
        );
        canvas.Text(
            Face.Soft,
            across.End,
            up.Start + 36,
            "flow, " + Shown.Flow.UnitIn(units).Symbol,
            Anchor.End
        );
        canvas.Text(
            Face.Soft,
            across.Start - 34,
            up.End - 16,
            "head, " + Shown.Length.UnitIn(units).Symbol
        );
    }

    // Cut where it leaves the diagram
    private void Curve(string style, Axis across, Axis up, Func<double, double> head)
    {
        var points = ImmutableArray.CreateBuilder<Point>();
        var end = style == "curve" ? pump.CurveEndM3PerS : endM3PerS;
        for (var i = 0; i <= Steps; i++)
        {
            var flow = end * i / Steps;
            var at = head(flow);
            if (at < up.LowSi || at > up.HighSi)
            {
                if (points.Count > 1)
                {
                    break;
                }

                points.Clear();
                continue;
            }

            points.Add(new(across.At(flow), up.At(at)));
        }

        if (points.Count > 1)
        {
            canvas.Line(style, points.ToArray());
        }
    }

    private void Point(Axis across, Axis up)
    {
        var (x, y) = (across.At(Math.Max(pump.FlowM3PerS, 0)), up.At(pump.HeadM));
        canvas.Line("mark dash", across.Start, y, x, y);
        canvas.Line("mark dash", x, y, x, up.Start);
        canvas.Add(new Ellipse("heat", new(x, y), 5.5, 5.5));
    }

    private void Words(string? date)
    {
        var point =
            $"{Shown.Flow.Format(pump.FlowM3PerS, units)} at {Shown.Length.Format(pump.HeadM, units)}";
        var y = Height - 42.0;
        canvas.Add(new Ellipse("heat", new(30, y - 4), 5, 5));
        canvas.Text(Face.Number, 44, y, point);
        canvas.Line("curve dash fine", 22, y + 16, 38, y + 16);
        canvas.Text(Face.Soft, 44, y + 20, "piping, about: head ∝ flow^1.75 to flow²");
        var warning = pump.OutsideCurve ? "outside the given points of the curve" : null;
        string?[] parts = [pump.Item, $"speed {pump.Speed} of {pump.Speeds}", date, warning];
        var caption = string.Join(" · ", parts.OfType<string>());
        canvas.Text(Face.Head, 22, y + 44, Face.Head.Cut(caption, width - 44));
    }

    private string Description() =>
        $"The pump curve falls with flow, the system curve rises; they meet at {Shown.Flow.Format(pump.FlowM3PerS, units)} and {Shown.Length.Format(pump.HeadM, units)}.";
}
