namespace Hypocaust.Hydraulics.Internal;

/// <summary>
/// The solver's order of branches: those with friction first, those with a two-way cracking pressure next to them,
/// so that each costly term runs over few wide registers; padded to a multiple of eight.
/// </summary>
internal sealed class BranchOrder
{
    public const int Multiple = 8;

    public BranchOrder(Network network)
    {
        Count = network.Branches.Length;
        PaddedCount = (Count + Multiple - 1) / Multiple * Multiple;
        Public = [.. Enumerable.Range(0, Count).OrderBy(i => Group(network.Branches[i]))];
        RiseM = new double[PaddedCount];
        for (var l = 0; l < Count; l++)
        {
            var branch = network.Branches[Public[l]];
            RiseM[l] =
                network.Nodes[network.NodeIndex(branch.To)].ElevationM
                - network.Nodes[network.NodeIndex(branch.From)].ElevationM;
            FrictionEnd = branch.LengthM > 0 ? l + 1 : FrictionEnd;
            if (HasCrack(branch))
            {
                CrackStart = CrackEnd == 0 ? l : CrackStart;
                CrackEnd = l + 1;
            }
        }
    }

    public int Count { get; }

    public int PaddedCount { get; }

    /// <summary>Place in the network's list of each branch in solver order.</summary>
    public int[] Public { get; }

    /// <summary>z(to) − z(from), m.</summary>
    public double[] RiseM { get; }

    public int FrictionEnd { get; }

    public int CrackStart { get; }

    public int CrackEnd { get; }

    private static int Group(Branch branch) =>
        (branch.LengthM > 0, HasCrack(branch)) switch
        {
            (true, false) => 0,
            (true, true) => 1,
            (false, true) => 2,
            _ => 3,
        };

    private static bool HasCrack(Branch branch) =>
        branch.CrackingPressurePa > 0 && !branch.IsCheckValve;
}
