namespace Hypocaust.Hydraulics.Internal;

/// <summary>Connected parts of a graph (disjoint sets with path halving); the smallest member names the part.</summary>
internal sealed class Parts
{
    private readonly int[] parent;

    public Parts(int count)
    {
        parent = new int[count];
        Reset();
    }

    public void Reset()
    {
        for (var i = 0; i < parent.Length; i++)
        {
            parent[i] = i;
        }
    }

    public int Of(int member)
    {
        while (parent[member] != member)
        {
            parent[member] = parent[parent[member]];
            member = parent[member];
        }

        return member;
    }

    public void Join(int first, int second)
    {
        var a = Of(first);
        var b = Of(second);
        parent[Math.Max(a, b)] = Math.Min(a, b);
    }
}
