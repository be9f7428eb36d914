namespace Hypocaust.Layout;

/// <summary>Looks whether any tube crosses another or itself, piece by piece.</summary>
internal static class CrossingCheck
{
    private const double SquareM = 0.5;

    /// <summary>The first crossing, or null.</summary>
    public static Spot? Find(IReadOnlyList<TubePath> paths)
    {
        var squares = new Dictionary<(int, int), List<(int Path, int Index, Edge Edge)>>();
        for (var path = 0; path < paths.Count; path++)
        {
            var points = paths[path].Points();
            for (var i = 0; i + 1 < points.Length; i++)
            {
                var edge = new Edge(points[i], points[i + 1]);
                foreach (var square in Squares(edge))
                {
                    if (!squares.TryGetValue(square, out var there))
                    {
                        squares[square] = there = [];
                    }

                    foreach (var (otherPath, other, otherEdge) in there)
                    {
                        var adjacent = otherPath == path && i - other <= 1;
                        if (!adjacent && edge.Meets(otherEdge))
                        {
                            return edge.From;
                        }
                    }

                    there.Add((path, i, edge));
                }
            }
        }

        return null;
    }

    private static IEnumerable<(int, int)> Squares(Edge edge)
    {
        static int Of(double value) => (int)Math.Floor(value / SquareM);
        var (left, right) = (
            Of(Math.Min(edge.From.X, edge.To.X)),
            Of(Math.Max(edge.From.X, edge.To.X))
        );
        var (low, high) = (
            Of(Math.Min(edge.From.Y, edge.To.Y)),
            Of(Math.Max(edge.From.Y, edge.To.Y))
        );
        for (var x = left; x <= right; x++)
        {
            for (var y = low; y <= high; y++)
            {
                yield return (x, y);
            }
        }
    }
}
