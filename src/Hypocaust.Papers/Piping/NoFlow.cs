using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>Labels pipes in which the water stands still.</summary>
internal static class NoFlow
{
    /// <summary>Writes "no flow" once at each line that stands still, where there is room.</summary>
    public static void Label(PlantCanvas canvas)
    {
        foreach (var line in canvas.Still.GroupBy(one => one.Line))
        {
            foreach (var (from, to, _) in line.OrderByDescending(one => Length(one.From, one.To)))
            {
                if (Try(canvas, from, to))
                {
                    break;
                }
            }
        }
    }

    private static bool Try(PlantCanvas canvas, Point from, Point to)
    {
        var (x, y) = ((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        var level = from.Y == to.Y;
        Label[] places = level
            ?
            [
                new(Face.Soft, new(x, y - 8), "no flow", Anchor.Middle),
                new(Face.Soft, new(x, y + 17), "no flow", Anchor.Middle),
            ]
            :
            [
                new(Face.Soft, new(x - 8, y + 4), "no flow", Anchor.End),
                new(Face.Soft, new(x + 8, y + 4), "no flow"),
            ];
        foreach (var place in places)
        {
            if (canvas.IsFree(place.Bounds.Grown(2)))
            {
                canvas.Over.Add(place);
                return true;
            }
        }

        return false;
    }

    private static double Length(Point a, Point b) => Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y);
}
