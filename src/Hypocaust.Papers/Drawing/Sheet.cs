using System.Collections.Immutable;

namespace Hypocaust.Papers.Drawing;

/// <summary>For which screen or paper a drawing is laid out.</summary>
public enum SheetShape
{
    /// <summary>A screen or sheet of paper, about 930 units wide.</summary>
    Wide,

    /// <summary>A phone, 390 units wide, as tall as it takes.</summary>
    Narrow,
}

/// <summary>How a drawing leaves the program.</summary>
public enum SvgForm
{
    /// <summary>An <c>svg</c> element for a page that carries <see cref="SheetStyle.Css"/> itself.</summary>
    Inline,

    /// <summary>A file of its own: XML declaration, size and style inside.</summary>
    StandAlone,
}

/// <summary>A finished drawing.</summary>
/// <param name="Name">Short kebab-case name, for files and ids.</param>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="Description">What it shows, in a sentence or two for someone who cannot see it.</param>
/// <param name="Width">Width, sheet units (CSS pixels at full size).</param>
/// <param name="Height">Height.</param>
/// <param name="Marks">What is drawn, the lowest first.</param>
public sealed record Sheet(
    string Name,
    string Title,
    string Description,
    double Width,
    double Height,
    ImmutableArray<Mark> Marks
)
{
    /// <summary>Put before every id of the drawing, so that a page can hold two shapes of the same drawing: empty, or <c>narrow-</c>.</summary>
    public string IdPrefix { get; init; } = "";

    /// <summary>Rooms that nothing else may enter, for the layout and its tests.</summary>
    internal ImmutableArray<Claim> Claims { get; init; } = [];

    /// <summary>Rooms of pipes, which words must keep clear of.</summary>
    internal ImmutableArray<Bounds> PipeRooms { get; init; } = [];

    /// <summary>The drawing as SVG text; the same sheet always gives the same text.</summary>
    public string ToSvg(SvgForm form = SvgForm.Inline) => SvgWriter.Write(this, form);
}

/// <summary>Room taken on a sheet.</summary>
/// <param name="Owner">Of what it is the room.</param>
/// <param name="Room">Where it is.</param>
internal readonly record struct Claim(string Owner, Bounds Room);
