using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>
/// Mass balance of every node without given pressure, linearised: the change of potentials that makes the stepped flows balance.
/// Works with changes, not with pressures, so that mass closes to rounding however small a resistance is.
/// </summary>
internal sealed class NodalEquations
{
    private readonly SparseLdl factorisation;
    private readonly int count;
    private readonly int branches;
    private readonly int[] coupling;
    private readonly double[] diagonal;

    public NodalEquations(Network network, BranchOrder order)
    {
        branches = order.Count;
        var free = new int[network.Nodes.Length];
        for (var node = 0; node < free.Length; node++)
        {
            free[node] = network.Nodes[node].GivenPressurePa is null ? count++ : -1;
        }

        var ends = order.Public.Select(index => Ends(network, index)).ToArray();
        var pattern = EliminationPattern.Of(
            count,
            ends.Where(end => free[end.From] >= 0 && free[end.To] >= 0)
                .Select(end => (free[end.From], free[end.To]))
        );
        factorisation = new SparseLdl(pattern);
        Slot = new int[free.Length];
        var next = count;
        for (var node = 0; node < free.Length; node++)
        {
            Slot[node] = free[node] >= 0 ? pattern.OrderOf[free[node]] : next++;
        }

        From = [.. ends.Select(end => Slot[end.From])];
        To = [.. ends.Select(end => Slot[end.To])];
        coupling = new int[branches];
        for (var l = 0; l < branches; l++)
        {
            var pair = (Math.Min(From[l], To[l]), Math.Max(From[l], To[l]));
            coupling[l] = factorisation.Position.TryGetValue(pair, out var at)
                ? at
                : factorisation.OffDiagonal.Length - 1;
        }

        diagonal = new double[next];
        Change = new double[next];
        Potential = new double[next];
        Imbalance = new double[next];
    }

    /// <summary>Place of each node of the network in the arrays here: nodes to be solved first, in the order of elimination.</summary>
    public int[] Slot { get; }

    public int[] From { get; }

    public int[] To { get; }

    /// <summary>Number of nodes without given pressure; they have the first places.</summary>
    public int FreeCount => count;

    /// <summary>Change of potential found, Pa; 0 at given pressures.</summary>
    public double[] Change { get; }

    /// <summary>Pressure less the weight of a reference column and a base, Pa.</summary>
    public double[] Potential { get; }

    /// <summary>Inflow − outflow, kg/s.</summary>
    public double[] Imbalance { get; }

    /// <summary>Assembles and solves for <see cref="Change"/>, adds it to <see cref="Potential"/> and gives the branches their differences.</summary>
    /// <param name="step">The branches.</param>
    /// <param name="anchored">Slots of one node in each part cut off from every given pressure.</param>
    public bool Solve(NewtonStep step, ReadOnlySpan<int> anchored)
    {
        Assemble(step);
        foreach (var slot in anchored)
        {
            // flows within a cut-off part balance by themselves, so tying one node to its own level changes no flow
            diagonal[slot] = diagonal[slot] > 0 ? 2 * diagonal[slot] : 1;
        }

        if (!factorisation.Solve(diagonal, Change))
        {
            return false;
        }

        Array.Clear(Change, count, Change.Length - count);
        for (var slot = 0; slot < count; slot++)
        {
            Potential[slot] += Change[slot];
        }

        Gather(Change, step.DifferenceChange);
        return true;
    }

    /// <summary>Differences of the branches from the potentials.</summary>
    public void Differences(double[] difference) => Gather(Potential, difference);

    /// <summary>Works out <see cref="Imbalance"/> and gives its largest value among nodes without given pressure.</summary>
    public double LargestImbalance(double[] flow, out int worstSlot)
    {
        Array.Clear(Imbalance);
        for (var l = 0; l < branches; l++)
        {
            Imbalance[From[l]] -= flow[l];
            Imbalance[To[l]] += flow[l];
        }

        var largest = 0.0;
        worstSlot = count > 0 ? 0 : -1;
        for (var slot = 0; slot < count; slot++)
        {
            if (Math.Abs(Imbalance[slot]) > largest)
            {
                largest = Math.Abs(Imbalance[slot]);
                worstSlot = slot;
            }
        }

        return largest;
    }

    private void Assemble(NewtonStep step)
    {
        Array.Clear(diagonal);
        Array.Clear(Change);
        Array.Clear(factorisation.OffDiagonal);
        ref var d = ref MemoryMarshal.GetArrayDataReference(diagonal);
        ref var balance = ref MemoryMarshal.GetArrayDataReference(Change);
        ref var off = ref MemoryMarshal.GetArrayDataReference(factorisation.OffDiagonal);
        ref var conductance = ref MemoryMarshal.GetArrayDataReference(step.Conductance);
        ref var flow = ref MemoryMarshal.GetArrayDataReference(step.Flow);
        ref var residual = ref MemoryMarshal.GetArrayDataReference(step.Residual);
        for (var l = 0; l < branches; l++)
        {
            var g = Unsafe.Add(ref conductance, l);
            var expected = Unsafe.Add(ref flow, l) + (g * Unsafe.Add(ref residual, l));
            var from = From[l];
            var to = To[l];
            Unsafe.Add(ref d, from) += g;
            Unsafe.Add(ref d, to) += g;
            Unsafe.Add(ref off, coupling[l]) -= g;
            Unsafe.Add(ref balance, from) -= expected;
            Unsafe.Add(ref balance, to) += expected;
        }
    }

    private void Gather(double[] values, double[] difference)
    {
        ref var value = ref MemoryMarshal.GetArrayDataReference(values);
        for (var l = 0; l < branches; l++)
        {
            difference[l] = Unsafe.Add(ref value, From[l]) - Unsafe.Add(ref value, To[l]);
        }
    }

    private static (int From, int To) Ends(Network network, int index) =>
        (
            network.NodeIndex(network.Branches[index].From),
            network.NodeIndex(network.Branches[index].To)
        );
}
