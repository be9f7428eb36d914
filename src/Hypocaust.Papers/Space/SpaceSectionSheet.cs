using Hypocaust.Answers;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Space;

/// <summary>The section with its arrows.</summary>
internal sealed class SpaceSectionSheet(SpaceAnswer space, UnitSystem units, bool wide)
{
    private const double WidestArrow = 44;
    private const double ArrowLength = 58;

    private readonly Canvas canvas = new();
    private readonly double width = wide ? 930 : 390;
    private readonly double half = wide ? 210 : 88;

    private readonly double total = GroupLoss.Of(space).Sum(one => one.LossW) is var sum and not 0
        ? sum
        : 1;

    private double Middle => width / 2;

    private double Left => Middle - half;

    private double Right => Middle + half;

    private static double Eaves => 190;

    private static double Ground => 390;

    private double Upper => wide ? 53 : 40;

    private double Lower => wide ? 56 : 42;

    /// <summary>The sheet.</summary>
    public Sheet Draw(string design, string title, string? date)
    {
        House();
        var losses = GroupLoss.Of(space);
        var most = losses.Select(one => Math.Abs(one.LossW)).DefaultIfEmpty(1).Max();
        foreach (var loss in losses)
        {
            Arrow(loss, WidestArrow * Math.Abs(loss.LossW) / most);
        }

        var bottom = wide ? 530.0 : 590.0;
        canvas.TitleBlock(
            width - 22,
            bottom,
            Face.Head.Cut(design + " · heat loss", wide ? 400 : 320),
            string.Join(" · ", new[] { "no scale, arrows to scale", date }.OfType<string>())
        );
        var description = string.Join(
            ", ",
            losses.Select(one => $"{Name(one.Group)} {Shown.SmallHeat.Format(one.LossW, units)}")
        );
        return canvas.Finish(
            "space",
            title,
            $"Section of the building with heat leaving by {description}.",
            width,
            bottom + 20
        );
    }

    private static string Name(LossGroup group) =>
        group switch
        {
            LossGroup.Roof => "roof",
            LossGroup.Walls => "walls",
            LossGroup.Windows => "windows",
            LossGroup.Doors => "doors",
            LossGroup.Air => "air",
            LossGroup.Ground => "ground",
            _ => "floor over cold",
        };

    private void House()
    {
        var ridge = Eaves - (wide ? 86 : 56);
        canvas.Line("hair", 22, Ground, width - 22, Ground);
        for (var x = 28.0; x < width - 30; x += 16)
        {
            canvas.Line("hatch", x, Ground + 10, x + 8, Ground);
        }

        canvas.Line(
            "outline",
            new Point(Left, Ground),
            new(Left, Eaves),
            new(Middle, ridge),
            new(Right, Eaves),
            new(Right, Ground)
        );
        canvas.Line("outline", Left - 14, Eaves + (wide ? 6 : 9), Left, Eaves);
        canvas.Line("outline", Right, Eaves, Right + 14, Eaves + (wide ? 6 : 9));
        canvas.Add(new Box("body", new(Left, Ground - 8, Right, Ground + 6)));
        canvas.Add(new Box("body", new(Left - 4, Eaves + 28, Left + 4, Eaves + 78)));
        canvas.Add(new Box("body", new(Right - 4, Ground - 88, Right + 4, Ground - 8)));
        var inside = space.Zones.Select(zone => zone.IndoorC).Distinct().ToList();
        var temperature =
            inside.Count == 1
                ? Shown.Temperature.Format(inside[0], units)
                : $"{Shown.Temperature.Figure(inside.Min(), units)} to {Shown.Temperature.Format(inside.Max(), units)}";
        canvas.Text(Face.Number, Middle, Eaves + 62, temperature, Anchor.Middle);
        canvas.Text(Face.Soft, Middle, Eaves + 80, "inside", Anchor.Middle);
        canvas.Text(
            Face.Number,
            Middle,
            Eaves + 124,
            Shown.Heat.Format(space.DesignLossW, units),
            Anchor.Middle
        );
        canvas.Text(Face.Soft, Middle, Eaves + 142, "lost in all", Anchor.Middle);
        canvas.Text(Face.Number, 22, 34, Shown.Temperature.Format(space.OutdoorC, units));
        canvas.Text(Face.Soft, 22, 51, "outside, coldest day");
    }

    private void Arrow(GroupLoss loss, double thick)
    {
        var (x, y, dx, dy) = Place(loss.Group);
        // heat that comes in points inwards
        var (tx, ty) = (x + (dx * ArrowLength), y + (dy * ArrowLength));
        var inner = new Canvas();
        if (loss.LossW >= 0)
        {
            Shape(inner, x, y, dx, dy, thick);
        }
        else
        {
            Shape(inner, tx, ty, -dx, -dy, thick);
        }

        Words(inner, loss, new(x, y), new(tx, ty), dx, dy);
        var words = $"{Name(loss.Group)}: {Shown.SmallHeat.Format(loss.LossW, units)}";
        canvas.Gather(inner, "loss-" + Name(loss.Group).Replace(' ', '-'), null, words);
    }

    private (double X, double Y, double Dx, double Dy) Place(LossGroup group) =>
        group switch
        {
            LossGroup.Roof => (Middle, Eaves - (wide ? 96 : 66), 0, -1),
            LossGroup.Windows => (Left - 10, Eaves + Upper, -1, 0),
            LossGroup.Walls => (Left - 6, Ground - Lower, -1, 0),
            LossGroup.Air => (Right + 6, Eaves + Upper, 1, 0),
            LossGroup.Doors => (Right + 10, Ground - Lower, 1, 0),
            LossGroup.Ground => (Middle - (half / 2), Ground + 14, 0, 1),
            _ => (Middle + (half / 2), Ground + 14, 0, 1),
        };

    private static void Shape(Canvas canvas, double x, double y, double dx, double dy, double thick)
    {
        var (h, head) = (Math.Max(thick, 1.5) / 2, Math.Max(thick * 0.5, 5));
        Point P(double along, double aside) =>
            new(x + (dx * along) - (dy * aside), y + (dy * along) + (dx * aside));
        var neck = ArrowLength - head - 4;
        canvas.Add(
            new Stroke(
                "heat",
                [
                    P(0, -h),
                    P(neck, -h),
                    P(neck, -h - 5),
                    P(ArrowLength, 0),
                    P(neck, h + 5),
                    P(neck, h),
                    P(0, h),
                ],
                Closed: true
            )
        );
    }

    private void Words(Canvas inner, GroupLoss loss, Point from, Point tip, double dx, double dy)
    {
        var share = Shown.Share.Format(loss.LossW / total, units);
        var figure = Shown.SmallHeat.Format(loss.LossW, units);
        if (dy != 0)
        {
            var y = dy < 0 ? tip.Y + 22 : tip.Y - 22;
            inner.Text(Face.Name, from.X + 40, y, Name(loss.Group));
            inner.Text(Face.Number, from.X + 40, y + 17, $"{figure} · {share}");
        }
        else if (wide)
        {
            var anchor = dx < 0 ? Anchor.End : Anchor.Start;
            inner.Text(Face.Name, tip.X + (8 * dx), tip.Y - 4, Name(loss.Group), anchor);
            inner.Text(Face.Number, tip.X + (8 * dx), tip.Y + 13, $"{figure} · {share}", anchor);
        }
        else
        {
            var x = dx < 0 ? 14 : width - 14;
            var anchor = dx < 0 ? Anchor.Start : Anchor.End;
            inner.Text(Face.Name, x, tip.Y - 46, Name(loss.Group), anchor);
            inner.Text(Face.Number, x, tip.Y - 30, figure, anchor);
            inner.Text(Face.Soft, x, tip.Y + 38, share, anchor);
        }
    }
}
