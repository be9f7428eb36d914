using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>Parts in place that no run meets yet, below the piping.</summary>
internal static class Unpiped
{
    private const double Column = 210;

    /// <summary>Draws them in rows.</summary>
    public static void Draw(PipingGraph graph, PlantCanvas canvas, ItemWords words, int columns)
    {
        var piped = graph
            .Pieces.SelectMany(piece => (string[])[piece.FromItem, piece.ToItem])
            .ToHashSet(StringComparer.Ordinal);
        var items = graph.InOrder.Where(item => !piped.Contains(item.Name)).ToList();
        if (items.Count == 0)
        {
            return;
        }

        var rooms = canvas.Over.Claims.Select(one => one.Room).Concat(canvas.PipeRooms).ToList();
        var (left, y) =
            rooms.Count == 0
                ? (20, 0)
                : (
                    Math.Max(rooms.Min(one => one.Left), 20 - 200),
                    rooms.Max(one => one.Bottom) + 40
                );
        left = columns == 1 ? 20 : left;
        canvas.Over.Text(Face.Name, left, y, "Not piped yet");
        y += 12;
        foreach (var row in items.Chunk(columns))
        {
            var low = y;
            for (var i = 0; i < row.Length; i++)
            {
                low = Math.Max(
                    low,
                    One(row[i], canvas, words, new(left + 34 + (i * Column), y + 36))
                );
            }

            y = low + 10;
        }
    }

    private static double One(DrawnItem item, PlantCanvas canvas, ItemWords words, Point at)
    {
        var inner = new Canvas();
        var room =
            item.Kind == SymbolKind.Manifold
                ? Bars(inner, item, at)
                : Symbols.Draw(
                    inner,
                    item,
                    item.IsTapped ? new(at.X - 24, at.Y) : at,
                    Way.Right,
                    Way.Right
                );
        Glyph.Words(inner, words, item, room, Way.Right, 106);
        canvas.Over.Gather(inner, DrawingId.OfItem(item.Name), item.Name, words.Title(item));
        return inner.Claims.Max(one => one.Room.Bottom);
    }

    private static Bounds Bars(Canvas canvas, DrawnItem item, Point at)
    {
        canvas.Line("bar", at.X - 12, at.Y - 22, at.X - 12, at.Y + 22);
        canvas.Line("bar", at.X + 12, at.Y - 22, at.X + 12, at.Y + 22);
        var room = Bounds.Around(at.X, at.Y, 36, 54);
        canvas.Claim(item.Name, room);
        return room;
    }
}
