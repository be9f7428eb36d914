using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>Symbols of the parts, drawn by us after the manner of ISO 14617.</summary>
internal static class Symbols
{
    /// <summary>Draws a symbol and takes its room.</summary>
    /// <param name="canvas">Where.</param>
    /// <param name="item">What.</param>
    /// <param name="at">Point of the pipe at which it stands.</param>
    /// <param name="flow">Direction from its inlet to its outlet.</param>
    /// <param name="side">Side of the pipe to which a tapped part stands.</param>
    /// <returns>The room of the symbol.</returns>
    public static Bounds Draw(Canvas canvas, DrawnItem item, Point at, Way flow, Way side)
    {
        var room = item.IsTapped ? Tapped(canvas, item, at, side) : Inline(canvas, item, at, flow);
        canvas.Claim(item.Name, room);
        return room;
    }

    private static Bounds Inline(Canvas c, DrawnItem item, Point at, Way flow)
    {
        Point P(double along, double aside) => flow.From(at, along, aside);
        switch (item.Kind)
        {
            case SymbolKind.Circulator:
                c.Add(new Ellipse("body", at, 17, 17));
                Shape(c, "thin", P(-10, -13.5), P(17, 0), P(-10, 13.5));
                return Bounds.Around(at.X, at.Y, 36, 36);
            case SymbolKind.ShutOff or SymbolKind.Purge:
                Shape(
                    c,
                    item.Item.Shut ? "body solid" : "body",
                    P(-15, -9),
                    P(15, 9),
                    P(15, -9),
                    P(-15, 9)
                );
                if (item.Kind == SymbolKind.Purge)
                {
                    c.Line("thin", at, P(0, 13));
                    Shape(c, "body", P(-4, 13), P(4, 13), P(0, 18));
                    Shape(c, "body", P(-4, 23), P(4, 23), P(0, 18));
                }

                return Room(flow, at, 16, item.Kind == SymbolKind.Purge ? 24 : 10);
            case SymbolKind.Check:
                Shape(c, "body", P(-12, -10), P(9, 0), P(-12, 10));
                c.Line("thin", P(10, -11), P(10, 11));
                return Room(flow, at, 14, 12);
            case SymbolKind.Strainer:
                Shape(c, "body", P(-16, -11), P(16, -11), P(16, 11), P(-16, 11));
                c.Line("thin dash", P(-16, -11), P(16, 11));
                return Room(flow, at, 17, 12);
            case SymbolKind.AirSeparator or SymbolKind.DirtSeparator:
                c.Add(new Box("body", Bounds.Around(at.X, at.Y, 32, 32)));
                return Separator(c, item.Kind == SymbolKind.AirSeparator ? -1 : 1, at);
            case SymbolKind.FlowMeter:
                c.Add(new Ellipse("body", at, 14, 14));
                c.Text(Face.Name, at.X, at.Y + 4.5, "F", Anchor.Middle, item.Name);
                return Bounds.Around(at.X, at.Y, 30, 30);
            case SymbolKind.FlowSwitch:
                c.Add(new Box("body", Bounds.Around(at.X, at.Y, 28, 26)));
                c.Text(Face.Name, at.X, at.Y + 4.5, "FS", Anchor.Middle, item.Name);
                return Bounds.Around(at.X, at.Y, 30, 28);
            case SymbolKind.Tee or SymbolKind.SpacedTees:
                c.Add(new Ellipse("solid", at, 4.5, 4.5));
                return Bounds.Around(at.X, at.Y, 10, 10);
            case SymbolKind.Heater:
                c.Add(new Box("body", Bounds.Around(at.X, at.Y, 64, 64)));
                Coil(c, at);
                return Bounds.Around(at.X, at.Y, 66, 66);
            default:
                c.Add(new Box("body", Bounds.Around(at.X, at.Y, 28, 24)));
                c.Text(Face.Name, at.X, at.Y + 4.5, "?", Anchor.Middle, item.Name);
                return Bounds.Around(at.X, at.Y, 30, 26);
        }
    }

    private static void Coil(Canvas c, Point at) =>
        c.Line(
            "thin",
            new(at.X - 18, at.Y + 20),
            new(at.X - 18, at.Y - 20),
            new(at.X - 6, at.Y - 20),
            new(at.X - 6, at.Y + 20),
            new(at.X + 6, at.Y + 20),
            new(at.X + 6, at.Y - 20),
            new(at.X + 18, at.Y - 20),
            new(at.X + 18, at.Y + 20)
        );

    private static Bounds Separator(Canvas c, int up, Point at)
    {
        c.Line("thin", at.X, at.Y + (16 * up), at.X, at.Y + (25 * up));
        c.Line("thin", at.X - 5, at.Y + (25 * up), at.X + 5, at.Y + (25 * up));
        foreach (var (dx, dy) in (ReadOnlySpan<(double, double)>)[(-6, 6), (0, -2), (6, 4)])
        {
            c.Add(new Ellipse("thin", new(at.X + dx, at.Y - (dy * up)), 2, 2));
        }

        return Bounds.Around(at.X, at.Y, 34, 34).With(Bounds.Around(at.X, at.Y + (26 * up), 12, 2));
    }

    private static Bounds Tapped(Canvas c, DrawnItem item, Point at, Way side)
    {
        Point P(double out_, double aside) => side.From(at, out_, aside);
        switch (item.Kind)
        {
            case SymbolKind.Thermometer or SymbolKind.Gauge:
                c.Line("thin", P(0, 0), P(18, 0));
                var middle = P(31, 0);
                c.Add(new Ellipse("body", middle, 13, 13));
                var letter = item.Kind == SymbolKind.Thermometer ? "T" : "P";
                c.Text(Face.Name, middle.X, middle.Y + 4.5, letter, Anchor.Middle, item.Name);
                return Room(side, P(23, 0), 22, 14);
            case SymbolKind.Vessel:
                c.Line("thin", P(0, 0), P(18, 0));
                var belly = P(42, 0);
                c.Add(
                    side.IsLevel
                        ? new Ellipse("body", belly, 24, 18)
                        : new Ellipse("body", belly, 18, 24)
                );
                c.Line("thin", P(42, -18), P(42, 18));
                return Room(side, P(34, 0), 33, 19);
            case SymbolKind.Relief:
                c.Line("thin", P(0, 0), P(16, 0));
                Shape(c, "body", P(30, -8), P(30, 8), P(16, 0));
                Shape(c, "body", P(8, 15), P(24, 15), P(16, 0));
                c.Line("thin", P(30, 0), P(33, -5), P(37, 5), P(41, -5), P(45, 5), P(47, 0));
                return Room(side, P(24, 3), 24, 13);
            case SymbolKind.AirVent:
                c.Line("thin", P(0, 0), P(14, 0));
                Shape(c, "body", P(14, -7), P(30, -7), P(30, 7), P(14, 7));
                c.Line("thin", P(30, 0), P(36, 0));
                c.Line("thin", P(36, -5), P(36, 5));
                return Room(side, P(20, 0), 18, 9);
            default:
                c.Line("thin", P(0, 0), P(12, 0));
                Shape(c, "body", P(12, -8), P(32, 8), P(32, -8), P(12, 8));
                c.Line("thin", P(32, 0), P(40, 0));
                if (item.Kind == SymbolKind.Fill)
                {
                    Shape(c, "solid", P(33, 0), P(40, -4), P(40, 4));
                }
                else
                {
                    c.Line("thin", P(40, -6), P(40, 6));
                }

                return Room(side, P(22, 0), 20, 10);
        }
    }

    private static void Shape(Canvas c, string style, params ReadOnlySpan<Point> points) =>
        c.Add(new Stroke(style, [.. points], Closed: true));

    private static Bounds Room(Way flow, Point at, double along, double aside) =>
        flow.IsLevel
            ? Bounds.Around(at.X, at.Y, 2 * along, 2 * aside)
            : Bounds.Around(at.X, at.Y, 2 * aside, 2 * along);
}
