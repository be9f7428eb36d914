namespace Hypocaust.Papers.Drawing;

/// <summary>A point on a sheet, in sheet units (CSS pixels at full size), y downwards.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downwards.</param>
public readonly record struct Point(double X, double Y);

/// <summary>An upright rectangle on a sheet.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Bottom">Lower edge.</param>
public readonly record struct Bounds(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width.</summary>
    public double Width => Right - Left;

    /// <summary>Height.</summary>
    public double Height => Bottom - Top;

    /// <summary>A rectangle around a middle.</summary>
    public static Bounds Around(double x, double y, double width, double height) =>
        new(x - (width / 2), y - (height / 2), x + (width / 2), y + (height / 2));

    /// <summary>Whether two rectangles share area; touching edges do not count.</summary>
    public bool Overlaps(Bounds other) =>
        Left < other.Right - 1e-9
        && other.Left < Right - 1e-9
        && Top < other.Bottom - 1e-9
        && other.Top < Bottom - 1e-9;

    /// <summary>Whether another rectangle lies within.</summary>
    public bool Holds(Bounds other) => With(other) == this;

    /// <summary>The rectangle grown on all sides.</summary>
    public Bounds Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    /// <summary>The rectangle moved.</summary>
    public Bounds Moved(double dx, double dy) => new(Left + dx, Top + dy, Right + dx, Bottom + dy);

    /// <summary>The smallest rectangle around both.</summary>
    public Bounds With(Bounds other) =>
        new(
            Math.Min(Left, other.Left),
            Math.Min(Top, other.Top),
            Math.Max(Right, other.Right),
            Math.Max(Bottom, other.Bottom)
        );
}
