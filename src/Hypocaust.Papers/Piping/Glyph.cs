using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>A symbol with its words, as one group of the drawing.</summary>
internal static class Glyph
{
    /// <summary>Draws an item at a point of a pipe.</summary>
    /// <param name="words">What to say of it.</param>
    /// <param name="element">The item and its stubs.</param>
    /// <param name="at">Where the pipe meets it.</param>
    /// <param name="way">Direction in which the drawing goes along the pipe.</param>
    /// <param name="side">Side for tapped parts and words.</param>
    /// <param name="nameWidth">Widest line of its name.</param>
    public static Canvas Draw(
        ItemWords words,
        ItemElement element,
        Point at,
        Way way,
        Way side,
        double nameWidth
    )
    {
        var item = element.Item;
        var canvas = new Canvas();
        var inner = new Canvas();
        var room = Symbols.Draw(inner, item, at, element.Forward ? way : way.Opposite, side);
        var stubbed = !element.Stubs.IsEmpty;
        var textSide = stubbed && !side.IsLevel ? side.Opposite : side;
        var textRoom =
            stubbed && side.IsLevel
                ? room.With(Bounds.Around(side.From(at, 26).X, at.Y, 2, 2))
                : room;
        Words(inner, words, item, textRoom, textSide, nameWidth);
        canvas.Gather(inner, DrawingId.OfItem(item.Name), item.Name, words.Title(item));
        var next = 0.0;
        foreach (var stub in element.Stubs)
        {
            next = Stub(canvas, words, stub, at, side, next, nameWidth);
        }

        return canvas;
    }

    /// <summary>Writes figures and name beside a symbol.</summary>
    public static void Words(
        Canvas canvas,
        ItemWords words,
        DrawnItem item,
        Bounds room,
        Way side,
        double nameWidth
    )
    {
        List<(Face Face, string Text)> lines = [];
        foreach (var line in words.Figures(item))
        {
            var face = lines.Count == 0 ? Face.Number : Face.Soft;
            lines.AddRange(face.Lines(line, nameWidth + 40, 2).Select(text => (face, text)));
        }

        lines.AddRange(Face.Soft.Lines(item.Name, nameWidth, 3).Select(text => (Face.Soft, text)));
        if (ItemWords.Remark(item) is { } remark)
        {
            lines.Add((Face.Soft, remark));
        }

        Stack(canvas, lines, room, side, item.Name);
    }

    /// <summary>Stacks lines of text beside a room.</summary>
    public static void Stack(
        Canvas canvas,
        List<(Face Face, string Text)> lines,
        Bounds room,
        Way side,
        string owner
    )
    {
        const double Pitch = 15.5;
        var (middleX, middleY) = ((room.Left + room.Right) / 2, (room.Top + room.Bottom) / 2);
        var firstY =
            side == Way.Up ? room.Top - 6 - ((lines.Count - 1) * Pitch)
            : side == Way.Down ? room.Bottom + 14
            : middleY + 4.5 - ((lines.Count - 1) * Pitch / 2);
        var (x, anchor) =
            side == Way.Right ? (room.Right + 6, Anchor.Start)
            : side == Way.Left ? (room.Left - 6, Anchor.End)
            : (middleX, Anchor.Middle);
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Text(lines[i].Face, x, firstY + (i * Pitch), lines[i].Text, anchor, owner);
        }
    }

    // A blind branch stands away from the pipe, its parts one after the other, their words beside them
    private static double Stub(
        Canvas canvas,
        ItemWords words,
        IEnumerable<Element> way,
        Point at,
        Way side,
        double offset,
        double nameWidth
    )
    {
        var along = side.IsLevel ? Way.Down : side;
        var textSide = side.IsLevel ? side : Way.Right;
        var start = side.IsLevel ? side.From(at, 24 + offset) : new Point(at.X + offset, at.Y);
        var (reach, widest) = (18.0, 0.0);
        foreach (var element in way.OfType<ItemElement>())
        {
            var glyph = StubPart(
                words,
                element.Item,
                along.From(start, reach),
                along,
                textSide,
                nameWidth
            );
            while (Meets(glyph, canvas))
            {
                reach += 4;
                glyph = StubPart(
                    words,
                    element.Item,
                    along.From(start, reach),
                    along,
                    textSide,
                    nameWidth
                );
            }

            canvas.Adopt(glyph);
            reach += 44;
            widest = Math.Max(
                widest,
                glyph.Claims.Max(one => Math.Max(one.Room.Right - start.X, start.X - one.Room.Left))
            );
        }

        canvas.Under("thin", at, start, along.From(start, Math.Max(18, reach - 38)));
        return offset + widest + 24;
    }

    private static bool Meets(Canvas glyph, Canvas canvas) =>
        glyph.Claims.Any(one => canvas.Claims.Any(other => other.Room.Overlaps(one.Room.Grown(3))));

    private static Canvas StubPart(
        ItemWords words,
        DrawnItem item,
        Point at,
        Way along,
        Way textSide,
        double nameWidth
    )
    {
        var inner = new Canvas();
        var place = along.From(at, 20);
        var room = item.IsTapped
            ? Symbols.Draw(inner, item, along.From(place, -18), along, along)
            : Symbols.Draw(inner, item, place, along, Way.Right);
        Words(inner, words, item, room, textSide, nameWidth);
        var outer = new Canvas();
        outer.Gather(inner, DrawingId.OfItem(item.Name), item.Name, words.Title(item));
        return outer;
    }
}
