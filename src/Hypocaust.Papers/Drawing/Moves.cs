namespace Hypocaust.Papers.Drawing;

/// <summary>Moves marks on a sheet.</summary>
internal static class Moves
{
    /// <summary>The same mark elsewhere.</summary>
    public static Mark Moved(this Mark mark, double dx, double dy) =>
        mark switch
        {
            Group group => group with { Marks = [.. group.Marks.Select(one => one.Moved(dx, dy))] },
            Stroke stroke => stroke with
            {
                Points = [.. stroke.Points.Select(point => point.Moved(dx, dy))],
            },
            Label label => label with { At = label.At.Moved(dx, dy) },
            Ellipse ellipse => ellipse with { Centre = ellipse.Centre.Moved(dx, dy) },
            Box box => box with { Bounds = box.Bounds.Moved(dx, dy) },
            _ => throw new NotSupportedException($"Mark {mark.GetType().Name} cannot be moved."),
        };

    private static Point Moved(this Point point, double dx, double dy) =>
        new(point.X + dx, point.Y + dy);
}
