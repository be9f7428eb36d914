using System.Collections.Immutable;

namespace Hypocaust.Papers.Drawing;

/// <summary>Something drawn on a sheet.</summary>
/// <param name="Style">CSS classes, from <see cref="SheetStyle"/>.</param>
public abstract record Mark(string Style);

/// <summary>A line through points.</summary>
/// <param name="Style">CSS classes.</param>
/// <param name="Points">Two points or more.</param>
/// <param name="Closed">Whether it returns to its first point.</param>
/// <param name="Colour">Stroke colour as <c>#rrggbb</c>, or null for the colour of the class.</param>
/// <param name="Width">Stroke width, or null for the width of the class.</param>
/// <param name="Fill">Fill colour as <c>#rrggbb</c>, or null for that of the class.</param>
public sealed record Stroke(
    string Style,
    ImmutableArray<Point> Points,
    bool Closed = false,
    string? Colour = null,
    double? Width = null,
    string? Fill = null
) : Mark(Style);

/// <summary>A circle.</summary>
/// <param name="Style">CSS classes.</param>
/// <param name="Centre">Its centre.</param>
/// <param name="RadiusX">Half its width.</param>
/// <param name="RadiusY">Half its height.</param>
public sealed record Ellipse(string Style, Point Centre, double RadiusX, double RadiusY)
    : Mark(Style);

/// <summary>A rectangle.</summary>
/// <param name="Style">CSS classes.</param>
/// <param name="Bounds">Where it lies.</param>
/// <param name="Fill">Fill colour as <c>#rrggbb</c>, or null for the colour of the class.</param>
public sealed record Box(string Style, Bounds Bounds, string? Fill = null) : Mark(Style);

/// <summary>On which side of its point a text stands.</summary>
public enum Anchor
{
    /// <summary>The text starts at the point.</summary>
    Start,

    /// <summary>The text is centred on the point.</summary>
    Middle,

    /// <summary>The text ends at the point.</summary>
    End,
}

/// <summary>A line of text on its base line.</summary>
/// <param name="Face">How it is set.</param>
/// <param name="At">Where its base line starts, is centred or ends.</param>
/// <param name="Words">The text, unescaped.</param>
/// <param name="Anchor">Which of these.</param>
public sealed record Label(Face Face, Point At, string Words, Anchor Anchor = Anchor.Start)
    : Mark(Face.Style)
{
    /// <summary>The room it takes, by a careful estimate of the letter widths.</summary>
    public Bounds Bounds
    {
        get
        {
            var width = Face.WidthOf(Words);
            var left = Anchor switch
            {
                Anchor.Start => At.X,
                Anchor.Middle => At.X - (width / 2),
                _ => At.X - width,
            };
            return new(left, At.Y - (0.8 * Face.Size), left + width, At.Y + (0.24 * Face.Size));
        }
    }
}

/// <summary>Marks that belong together.</summary>
/// <param name="Style">CSS classes; may be empty.</param>
/// <param name="Marks">What is in it.</param>
/// <param name="Id">Its id in the page, or null.</param>
/// <param name="Item">Name of the item of the design that it shows, or null.</param>
/// <param name="Title">What a pointer resting on it tells, or null.</param>
public sealed record Group(
    string Style,
    ImmutableArray<Mark> Marks,
    string? Id = null,
    string? Item = null,
    string? Title = null
) : Mark(Style);
