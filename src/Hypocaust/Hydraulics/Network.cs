using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Hydraulics;

/// <summary>A pipe network: what is joined with what, and how each branch resists. It cannot be built inconsistent.</summary>
public sealed class Network
{
    private readonly Dictionary<string, int> nodeIndex;
    private readonly Dictionary<string, int> branchIndex;

    private Network(
        ImmutableArray<Node> nodes,
        ImmutableArray<Branch> branches,
        Dictionary<string, int> nodeIndex,
        Dictionary<string, int> branchIndex
    )
    {
        Nodes = nodes;
        Branches = branches;
        this.nodeIndex = nodeIndex;
        this.branchIndex = branchIndex;
    }

    /// <summary>The nodes in the order given; results have the same order.</summary>
    public ImmutableArray<Node> Nodes { get; }

    /// <summary>The branches in the order given; results have the same order.</summary>
    public ImmutableArray<Branch> Branches { get; }

    /// <summary>Place of a node in <see cref="Nodes"/>.</summary>
    /// <exception cref="KeyNotFoundException">There is no such node.</exception>
    public int NodeIndex(string id) => nodeIndex[id];

    /// <summary>Place of a branch in <see cref="Branches"/>.</summary>
    /// <exception cref="KeyNotFoundException">There is no such branch.</exception>
    public int BranchIndex(string id) => branchIndex[id];

    /// <summary>Builds a network, or says everything that is wrong with it.</summary>
    /// <param name="nodes">Nodes; in each connected part at least one with a given pressure.</param>
    /// <param name="branches">Branches between them.</param>
    public static Result<Network> Create(IEnumerable<Node> nodes, IEnumerable<Branch> branches)
    {
        ImmutableArray<Node> allNodes = [.. nodes];
        ImmutableArray<Branch> allBranches = [.. branches];
        var problems = new List<Problem>();
        var nodePlaces = Index(allNodes.Select(node => node.Id), "nodes", problems);
        var branchPlaces = Index(allBranches.Select(branch => branch.Id), "branches", problems);
        if (allNodes.IsEmpty)
        {
            problems.Add(HydraulicsProblems.NothingToSolve());
        }

        foreach (var node in allNodes)
        {
            BranchChecks.Check(node, problems);
        }

        foreach (var branch in allBranches)
        {
            BranchChecks.Check(branch, nodePlaces, problems);
        }

        if (problems.Count == 0)
        {
            RequireReferencePressures(allNodes, allBranches, nodePlaces, problems);
        }

        return problems.Count > 0
            ? Result<Network>.Failed(problems)
            : new Network(allNodes, allBranches, nodePlaces, branchPlaces);
    }

    private static Dictionary<string, int> Index(
        IEnumerable<string> ids,
        string kind,
        List<Problem> problems
    )
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var id in ids)
        {
            if (!index.TryAdd(id, index.Count))
            {
                problems.Add(HydraulicsProblems.DuplicateId(id, kind));
            }
        }

        return index;
    }

    private static void RequireReferencePressures(
        ImmutableArray<Node> nodes,
        ImmutableArray<Branch> branches,
        Dictionary<string, int> nodePlaces,
        List<Problem> problems
    )
    {
        var parts = new Internal.Parts(nodes.Length);
        foreach (var branch in branches)
        {
            parts.Join(nodePlaces[branch.From], nodePlaces[branch.To]);
        }

        var held = new bool[nodes.Length];
        for (var node = 0; node < nodes.Length; node++)
        {
            held[parts.Of(node)] |= nodes[node].GivenPressurePa is not null;
        }

        for (var node = 0; node < nodes.Length; node++)
        {
            if (parts.Of(node) == node && !held[node])
            {
                problems.Add(HydraulicsProblems.NoReferencePressure(nodes[node].Id));
            }
        }
    }
}
