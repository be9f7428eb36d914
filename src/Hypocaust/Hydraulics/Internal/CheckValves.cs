namespace Hypocaust.Hydraulics.Internal;

/// <summary>
/// Decides which check valves hold back. Between rounds of Newton steps an open one with backward flow closes, and a closed one
/// opens where the pressure across it exceeds what it needs. Parts of the network cut off by closed valves have a free level each;
/// the closed valves fit if levels exist that press none of them open (a system of difference constraints, Bellman–Ford).
/// </summary>
internal sealed class CheckValves(
    Network network,
    BranchOrder order,
    NodalEquations nodes,
    NewtonStep step,
    BranchLaws laws
)
{
    /// <summary>Rounds in which all wrong valves change together; later ones change one at a time, which cannot circle.</summary>
    private const int RoundsTogether = 4;

    private readonly int[] valves =
    [
        .. Enumerable
            .Range(0, order.Count)
            .Where(l => network.Branches[order.Public[l]].IsCheckValve),
    ];
    private readonly Parts parts = new(nodes.Slot.Length);
    private readonly double[] level = new double[nodes.Slot.Length];
    private readonly int[] openedBy = new int[nodes.Slot.Length];
    private readonly int[] anchors = new int[nodes.Slot.Length];
    private readonly bool[] held = new bool[nodes.Slot.Length];
    private int anchorCount;

    /// <summary>Whether each branch, in solver order, is a check valve that holds back.</summary>
    public bool[] Closed { get; } = new bool[order.Count];

    /// <summary>More rounds than this means that no arrangement fits.</summary>
    public int RoundLimit => RoundsTogether + (4 * valves.Length) + 1;

    /// <summary>One slot of each part without given pressure.</summary>
    public ReadOnlySpan<int> Anchors => anchors.AsSpan(0, anchorCount);

    /// <summary>Whether the pressure of a slot is determined.</summary>
    public bool IsDetermined(int slot) => anchorCount == 0 || held[parts.Of(slot)];

    /// <summary>Sets which branches are open and finds the parts that are cut off.</summary>
    public void Arrange(ReadOnlySpan<bool> shut)
    {
        var anyClosed = false;
        for (var l = 0; l < order.Count; l++)
        {
            var isClosed = shut[order.Public[l]] || Closed[l];
            anyClosed |= isClosed;
            step.Open[l] = isClosed ? 0 : 1;
            if (isClosed)
            {
                step.Flow[l] = 0;
            }
        }

        anchorCount = 0;
        if (anyClosed)
        {
            FindParts();
        }
    }

    /// <summary>Changes valves that are wrong after a converged round. True where all were right.</summary>
    /// <param name="round">Rounds before this one.</param>
    /// <param name="shut">Which branches are shut by hand, in the network's order.</param>
    /// <param name="tolerancePa">Pressures nearer than this are the same.</param>
    /// <param name="negligibleKgPerS">Backward flow that is rounding: it is set to zero, and the valve may be called either.</param>
    public bool AllRight(
        int round,
        ReadOnlySpan<bool> shut,
        double tolerancePa,
        double negligibleKgPerS
    )
    {
        if (valves.Length == 0)
        {
            return true;
        }

        var oneOnly = round >= RoundsTogether;
        foreach (var l in valves)
        {
            if (Closed[l] || step.Flow[l] >= 0 || shut[order.Public[l]])
            {
                continue;
            }

            if (step.Flow[l] > -negligibleKgPerS)
            {
                step.Flow[l] = 0;
            }
            else
            {
                Closed[l] = true;
                if (oneOnly)
                {
                    return false;
                }
            }
        }

        var closing = false;
        foreach (var l in valves)
        {
            closing |= Closed[l] && step.Open[l] > 0;
        }

        return !closing && !OpenPressed(shut, tolerancePa, oneOnly);
    }

    private void FindParts()
    {
        parts.Reset();
        for (var l = 0; l < order.Count; l++)
        {
            if (step.Open[l] > 0)
            {
                parts.Join(nodes.From[l], nodes.To[l]);
            }
        }

        Array.Clear(held);
        for (var slot = nodes.FreeCount; slot < held.Length; slot++)
        {
            held[parts.Of(slot)] = true;
        }

        for (var slot = 0; slot < nodes.FreeCount; slot++)
        {
            if (parts.Of(slot) == slot && !held[slot])
            {
                anchors[anchorCount++] = slot;
            }
        }
    }

    private bool OpenPressed(ReadOnlySpan<bool> shut, double tolerancePa, bool oneOnly)
    {
        Array.Clear(level);
        Array.Fill(openedBy, -1);
        var partLimit = anchorCount + 1;
        for (var pass = 0; pass <= partLimit; pass++)
        {
            var changed = -1;
            foreach (var l in valves)
            {
                if (!Closed[l] || shut[order.Public[l]])
                {
                    continue;
                }

                var from = Level(nodes.From[l]);
                var to = Level(nodes.To[l]);
                // level(from) − level(to) must not exceed what is left of the holding pressure
                var room = laws.Constant[l] - step.Difference[l];
                if (level[to] + room < level[from] - tolerancePa)
                {
                    level[from] = level[to] + room;
                    openedBy[from] = l;
                    changed = l;
                    if (from == to)
                    {
                        Closed[l] = false;
                        if (oneOnly)
                        {
                            return true;
                        }
                    }
                }
            }

            if (changed < 0)
            {
                return false;
            }

            if (AnyReopened(shut))
            {
                return true;
            }

            if (pass == partLimit)
            {
                OpenRing(changed);
                return true;
            }
        }

        return false;
    }

    private int Level(int slot)
    {
        if (anchorCount == 0)
        {
            return 0;
        }

        var part = parts.Of(slot);
        return held[part] ? level.Length - 1 : part;
    }

    private bool AnyReopened(ReadOnlySpan<bool> shut)
    {
        foreach (var l in valves)
        {
            if (!Closed[l] && step.Open[l] == 0 && !shut[order.Public[l]])
            {
                return true;
            }
        }

        return false;
    }

    private void OpenRing(int changed)
    {
        // go back far enough to be on the ring of valves that together are pressed open, then open them all
        var at = Level(nodes.From[changed]);
        for (var back = 0; back < level.Length; back++)
        {
            at = Level(nodes.To[openedBy[at]]);
        }

        var begin = at;
        do
        {
            Closed[openedBy[at]] = false;
            at = Level(nodes.To[openedBy[at]]);
        } while (at != begin);
    }
}
