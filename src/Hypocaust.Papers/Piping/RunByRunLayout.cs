using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>The plant run by run, for piping that is not made of circuits from a heater and back: parts with several ports stand above, each run is a line with the names of its ends.</summary>
internal sealed class RunByRunLayout(
    PipingGraph graph,
    PlantCanvas canvas,
    ItemWords words,
    ManifoldDrawing manifolds,
    double width
)
{
    private readonly HashSet<string> drawn = new(StringComparer.Ordinal);
    private double bottom;
    private double left = 20;

    /// <summary>Draws everything that is piped.</summary>
    public void Draw()
    {
        var piped = graph
            .Pieces.SelectMany(piece => (string[])[piece.FromItem, piece.ToItem])
            .ToHashSet(StringComparer.Ordinal);
        foreach (var item in graph.InOrder.Where(item => piped.Contains(item.Name) && IsEnd(item)))
        {
            drawn.Add(item.Name);
            NextColumn();
            bottom = item.Kind == SymbolKind.Manifold ? Manifold(item) : Part(item);
        }

        foreach (var chain in Chains())
        {
            NextColumn();
            Run(chain);
        }
    }

    // On a wide sheet the runs stand side by side
    private void NextColumn()
    {
        if (width > NarrowLayout.Width && bottom > 420)
        {
            (bottom, left) = (0, left + 300);
        }
    }

    private static bool IsEnd(DrawnItem item) =>
        item.Kind
            is SymbolKind.Heater
                or SymbolKind.Manifold
                or SymbolKind.SpacedTees
                or SymbolKind.Tee;

    private double Manifold(DrawnItem item)
    {
        var end = manifolds.Draw(item, left, bottom + 34, bottom + 46, 150);
        return end + 16;
    }

    private double Part(DrawnItem item)
    {
        var inner = new Canvas();
        var at = new Point(left + 18, bottom + (item.Kind == SymbolKind.Heater ? 46 : 28));
        var room = Symbols.Draw(inner, item, at, Way.Up, Way.Right);
        Glyph.Words(inner, words, item, room, Way.Right, 200);
        canvas.Over.Gather(inner, DrawingId.OfItem(item.Name), item.Name, words.Title(item));
        return inner.Claims.Max(one => one.Room.Bottom) + 6;
    }

    // Pipes that follow one another through parts of one way
    private IEnumerable<List<Piece>> Chains()
    {
        List<Piece> chain = [];
        foreach (var piece in graph.Pieces)
        {
            var joins =
                chain.Count > 0
                && chain[^1].ToItem == piece.FromItem
                && !IsEnd(graph.Items[piece.FromItem])
                && (chain[^1].ToPort != piece.FromPort || graph.Items[piece.FromItem].IsTapped);
            if (!joins && chain.Count > 0)
            {
                yield return chain;
                chain = [];
            }

            chain.Add(piece);
        }

        if (chain.Count > 0)
        {
            yield return chain;
        }
    }

    private void Run(List<Piece> chain)
    {
        var start = bottom + 34;
        canvas.Over.Text(
            Face.Soft,
            left,
            start,
            "from " + Ending(chain[0].FromItem, chain[0].FromPort, Math.Min(width, 330) - 60)
        );
        var pen = new Pen(canvas, chain.GetHashCode());
        var x = left + 6;
        var placer = new LinePlacer(canvas, words, Math.Min(180, width - 150));
        var y = start + 10;
        pen.MoveTo(new(x, y));
        foreach (var (piece, i) in chain.Select((piece, i) => (piece, i)))
        {
            if (i == 0 && drawn.Add(piece.FromItem))
            {
                y = Stand(placer, pen, piece.FromItem, piece.FromPort != "in", x, y);
            }

            pen.Take(new PipeElement(piece, Forward: true));
            if (drawn.Add(piece.ToItem))
            {
                y = Stand(placer, pen, piece.ToItem, piece.ToPort != "out", x, y);
            }
        }

        pen.Arrive(new(x, y + 24));
        canvas.Pipes.Arrow(new(x, y + 28), 0, 1, 5);
        canvas.Over.Text(
            Face.Soft,
            left,
            y + 46,
            "to " + Ending(chain[^1].ToItem, chain[^1].ToPort, Math.Min(width, 330) - 60)
        );
        bottom = y + 50;
    }

    private double Stand(LinePlacer placer, Pen pen, string name, bool forward, double x, double y)
    {
        var element = new ItemElement(graph.Items[name], forward, []);
        var reach = placer.Place([element], new(x, y), Way.Down, Way.Down, Way.Right);
        pen.Arrive(placer[element]);
        return y + reach;
    }

    private static string Ending(string item, string port, double width) =>
        Face.Soft.Cut($"{item} · {port}", width);
}
