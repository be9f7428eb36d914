using System.Collections.Immutable;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Drawing;

/// <summary>A drawing under way.</summary>
internal sealed class Canvas
{
    private readonly List<Mark> marks = [];
    private readonly List<Claim> claims = [];

    /// <summary>What has been drawn so far.</summary>
    public ImmutableArray<Mark> Marks => [.. marks];

    /// <summary>Rooms taken so far.</summary>
    public IReadOnlyList<Claim> Claims => claims;

    /// <summary>Rooms of all words drawn so far.</summary>
    public IEnumerable<Bounds> Words() => Words(marks);

    private static IEnumerable<Bounds> Words(IEnumerable<Mark> marks) =>
        marks.SelectMany(mark =>
            mark switch
            {
                Label { Words.Length: > 0 } label => [label.Bounds],
                Group group => Words(group.Marks),
                _ => Enumerable.Empty<Bounds>(),
            }
        );

    /// <summary>Draws a mark; a label also takes its room.</summary>
    public void Add(Mark mark, string owner = "text")
    {
        marks.Add(mark);
        Take(mark, owner);
    }

    /// <summary>Takes room that nothing else may enter.</summary>
    public void Claim(string owner, Bounds room) => claims.Add(new Claim(owner, room));

    /// <summary>Draws a line.</summary>
    public void Line(string style, params ReadOnlySpan<Point> points) =>
        marks.Add(new Stroke(style, [.. points]));

    /// <summary>Draws a line between two places.</summary>
    public void Line(string style, double x1, double y1, double x2, double y2) =>
        marks.Add(new Stroke(style, [new(x1, y1), new(x2, y2)]));

    /// <summary>Draws a line below all that has been drawn so far.</summary>
    public void Under(string style, params ReadOnlySpan<Point> points) =>
        marks.Insert(0, new Stroke(style, [.. points]));

    /// <summary>Writes a line of text.</summary>
    public void Text(
        Face face,
        double x,
        double y,
        string words,
        Anchor anchor = Anchor.Start,
        string owner = "text"
    ) => Add(new Label(face, new(x, y), words, anchor), owner);

    /// <summary>A thin dimension line with witness marks, its words beside or above its middle.</summary>
    public void Dimension(Point from, Point to, string words)
    {
        Line("thin", from, to);
        var upright = Math.Abs(from.X - to.X) < Math.Abs(from.Y - to.Y);
        foreach (var end in (ReadOnlySpan<Point>)[from, to])
        {
            var (dx, dy) = upright ? (5, 0) : (0, 5);
            Line("thin", end.X - dx, end.Y - dy, end.X + dx, end.Y + dy);
            Line("thin", end.X - 3, end.Y + 3, end.X + 3, end.Y - 3);
        }

        var (x, y) = ((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        if (upright)
        {
            Text(Face.Soft, x + 9, y + 4, words);
        }
        else
        {
            Text(Face.Soft, x, y - 6, words, Anchor.Middle);
        }
    }

    /// <summary>An arrow head with its point at a place, looking along a direction.</summary>
    public void Arrow(Point tip, double dx, double dy, double size = 5, string style = "arrow") =>
        marks.Add(
            new Stroke(
                style,
                [
                    tip,
                    new(
                        tip.X - (dx * size * 1.8) - (dy * size),
                        tip.Y - (dy * size * 1.8) + (dx * size)
                    ),
                    new(
                        tip.X - (dx * size * 1.8) + (dy * size),
                        tip.Y - (dy * size * 1.8) - (dx * size)
                    ),
                ],
                Closed: true
            )
        );

    /// <summary>A temperature scale of horizontal colour steps with its ends and middle labelled, 170 wide and 32 high.</summary>
    public void Scale(TemperatureScale scale, double x, double y, UnitSystem units)
    {
        const int Steps = 34;
        for (var i = 0; i < Steps; i++)
        {
            var temperature =
                scale.ColdestC + ((scale.HottestC - scale.ColdestC) * (i + 0.5) / Steps);
            marks.Add(
                new Box(
                    "",
                    new(x + (i * 5), y, x + (i * 5) + 5.2, y + 9),
                    scale.Colour(temperature)
                )
            );
        }

        marks.Add(new Box("thin", new(x, y, x + 170, y + 9)));
        claims.Add(new("scale", new(x, y, x + 170, y + 9)));
        var middle = (scale.ColdestC + scale.HottestC) / 2;
        Text(Face.Soft, x, y + 23, Shown.Temperature.Figure(scale.ColdestC, units));
        Text(Face.Soft, x + 85, y + 23, Shown.Temperature.Figure(middle, units), Anchor.Middle);
        Text(
            Face.Soft,
            x + 170,
            y + 23,
            Shown.Temperature.Format(scale.HottestC, units),
            Anchor.End
        );
    }

    /// <summary>The title block, its lower right corner at a place.</summary>
    public Bounds TitleBlock(double right, double bottom, string name, string remark)
    {
        var width = Math.Max(Face.Head.WidthOf(name), Face.Soft.WidthOf(remark)) + 24;
        var room = new Bounds(right - width, bottom - 46, right, bottom);
        marks.Add(new Box("thin", room));
        Line("hair", room.Left, room.Top + 24, room.Right, room.Top + 24);
        Text(Face.Head, room.Left + 12, room.Top + 17, name);
        Text(Face.Soft, room.Left + 12, room.Top + 39, remark);
        return room;
    }

    /// <summary>Gathers what was drawn elsewhere into a group here.</summary>
    public void Gather(Canvas inner, string? id, string? item, string? title, string style = "")
    {
        marks.Add(new Group(style, inner.Marks, id, item, title));
        claims.AddRange(inner.claims);
    }

    /// <summary>Takes over all that was drawn and claimed elsewhere.</summary>
    public void Adopt(Canvas other)
    {
        marks.AddRange(other.marks);
        claims.AddRange(other.claims);
    }

    /// <summary>The same drawing elsewhere.</summary>
    public Canvas Moved(double dx, double dy)
    {
        var moved = new Canvas();
        moved.marks.AddRange(marks.Select(mark => mark.Moved(dx, dy)));
        moved.claims.AddRange(claims.Select(one => one with { Room = one.Room.Moved(dx, dy) }));
        return moved;
    }

    /// <summary>The finished sheet on its ground.</summary>
    public Sheet Finish(
        string name,
        string title,
        string description,
        double width,
        double height
    ) =>
        new(
            name,
            title,
            description,
            width,
            height,
            [new Box("ground", new(0, 0, width, height)), .. marks]
        )
        {
            Claims = [.. claims],
            IdPrefix = width <= 390 ? "narrow-" : "",
        };

    private void Take(Mark mark, string owner)
    {
        if (mark is Label label && label.Words.Length > 0)
        {
            claims.Add(new Claim(owner, label.Bounds));
        }
    }
}
