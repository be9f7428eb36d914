namespace Hypocaust.Hydraulics.Internal;

/// <summary>
/// Order of elimination by least degree (a node with the fewest remaining neighbours goes next; among equals the one that waits
/// for the shortest row of others, so that the processor can overlap them) and the fill it makes.
/// Pipe networks are chains, ladders and a few loops: there it makes next to no fill.
/// </summary>
internal sealed class EliminationPattern
{
    private EliminationPattern(int[] orderOf, int[][] below)
    {
        OrderOf = orderOf;
        Below = below;
    }

    public int Count => Below.Length;

    /// <summary>Place in the order of elimination of each vertex.</summary>
    public int[] OrderOf { get; }

    /// <summary>For each place the later places it is coupled with, rising.</summary>
    public int[][] Below { get; }

    public static EliminationPattern Of(int count, IEnumerable<(int First, int Second)> edges)
    {
        var neighbours = new HashSet<int>[count];
        for (var v = 0; v < count; v++)
        {
            neighbours[v] = [];
        }

        foreach (var (first, second) in edges)
        {
            neighbours[first].Add(second);
            neighbours[second].Add(first);
        }

        var orderOf = new int[count];
        var below = new int[count][];
        var depth = new int[count];
        var remaining = Enumerable.Range(0, count).ToList();
        for (var k = 0; k < count; k++)
        {
            var next = remaining.MinBy(v => (neighbours[v].Count, depth[v]));
            remaining.Remove(next);
            orderOf[next] = k;
            below[k] = [.. neighbours[next]];
            foreach (var v in below[k])
            {
                depth[v] = Math.Max(depth[v], depth[next] + 1);
                neighbours[v].Remove(next);
                neighbours[v].UnionWith(below[k]);
                neighbours[v].Remove(v);
            }
        }

        foreach (var column in below)
        {
            for (var a = 0; a < column.Length; a++)
            {
                column[a] = orderOf[column[a]];
            }

            Array.Sort(column);
        }

        return new(orderOf, below);
    }
}
