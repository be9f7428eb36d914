using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>One of the four directions of a sheet.</summary>
internal readonly record struct Way(int Dx, int Dy)
{
    public static readonly Way Right = new(1, 0);
    public static readonly Way Left = new(-1, 0);
    public static readonly Way Down = new(0, 1);
    public static readonly Way Up = new(0, -1);

    public bool IsLevel => Dx != 0;

    public Way Opposite => new(-Dx, -Dy);

    /// <summary>A point so far along this direction and so far to its right hand.</summary>
    public Point From(Point origin, double along, double aside = 0) =>
        new(origin.X + (along * Dx) - (aside * Dy), origin.Y + (along * Dy) + (aside * Dx));
}
