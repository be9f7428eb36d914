using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>What is asked of a polygon.</summary>
internal static class Outline
{
    /// <summary>Signed area, m²; positive counter-clockwise.</summary>
    public static double Area(ImmutableArray<Spot> corners)
    {
        var twice = 0.0;
        for (var i = 0; i < corners.Length; i++)
        {
            twice += corners[i].Cross(corners[(i + 1) % corners.Length]);
        }

        return twice / 2;
    }

    /// <summary>The walls in order.</summary>
    public static IEnumerable<Edge> Edges(ImmutableArray<Spot> corners)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            yield return new Edge(corners[i], corners[(i + 1) % corners.Length]);
        }
    }

    /// <summary>Area of the part inside an upright rectangle, m² (cut side by side after Sutherland and Hodgman).</summary>
    public static double AreaWithin(ImmutableArray<Spot> corners, Spot low, Spot high)
    {
        IReadOnlyList<Spot> left = corners;
        left = Cut(left, spot => spot.X - low.X);
        left = Cut(left, spot => high.X - spot.X);
        left = Cut(left, spot => spot.Y - low.Y);
        left = Cut(left, spot => high.Y - spot.Y);
        return Math.Abs(Area([.. left]));
    }

    private static List<Spot> Cut(IReadOnlyList<Spot> corners, Func<Spot, double> inside)
    {
        var kept = new List<Spot>(corners.Count + 4);
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            var (from, to) = (inside(a), inside(b));
            if (from >= 0)
            {
                kept.Add(a);
            }

            if (from >= 0 != to >= 0)
            {
                kept.Add(a + ((b - a) * (from / (from - to))));
            }
        }

        return kept;
    }

    /// <summary>Whether a point lies inside.</summary>
    public static bool Holds(ImmutableArray<Spot> corners, Spot point)
    {
        var inside = false;
        foreach (var (a, b) in Edges(corners))
        {
            if (a.Y > point.Y != b.Y > point.Y)
            {
                var x = a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
                inside ^= point.X < x;
            }
        }

        return inside;
    }

    /// <summary>Whether no two walls meet except at their common corner.</summary>
    public static bool IsSimple(ImmutableArray<Spot> corners)
    {
        Edge[] walls = [.. Edges(corners)];
        for (var i = 0; i < walls.Length; i++)
        {
            if (walls[i].Length < 1e-6)
            {
                return false;
            }

            for (var j = i + 1; j < walls.Length; j++)
            {
                var neighbours = j == i + 1 || (i == 0 && j == walls.Length - 1);
                if (neighbours ? FoldsBack(walls[i], walls[j]) : walls[i].Meets(walls[j]))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Counter-clockwise, or clockwise.</summary>
    public static ImmutableArray<Spot> Turned(
        ImmutableArray<Spot> corners,
        bool counterClockwise
    ) => Area(corners) > 0 == counterClockwise ? corners : [.. corners.Reverse()];

    private static bool FoldsBack(Edge a, Edge b)
    {
        var (r, s) = (a.To - a.From, b.To - b.From);
        return Math.Abs(r.Cross(s)) < 1e-12 * r.Norm * s.Norm && r.Dot(s) < 0;
    }
}
