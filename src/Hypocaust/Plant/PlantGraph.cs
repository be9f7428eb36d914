using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Plant;

/// <summary>A point of the piping: ports that are joined without pipe between.</summary>
/// <param name="Id">Its first port, for example <c>heater.out</c>.</param>
/// <param name="HeightM">Mean height of the items that meet here, m above the floor.</param>
/// <param name="Ports">The ports that meet here.</param>
public sealed record PlantNode(string Id, double HeightM, ImmutableArray<PortAddress> Ports);

/// <summary>Something through which water passes from one point to another.</summary>
/// <param name="Id">Unique name.</param>
/// <param name="From">Node where positive flow enters.</param>
/// <param name="To">Node where positive flow leaves.</param>
public abstract record PlantBranch(string Id, int From, int To)
{
    /// <summary>A heater, circulator or part in the pipe.</summary>
    /// <param name="Id">Unique name.</param>
    /// <param name="From">Node of its inlet.</param>
    /// <param name="To">Node of its outlet.</param>
    /// <param name="Name">Name of the item.</param>
    /// <param name="Item">The item.</param>
    /// <param name="Part">Its part.</param>
    public sealed record InItem(string Id, int From, int To, string Name, PlantItem Item, Part Part)
        : PlantBranch(Id, From, To);

    /// <summary>A piece of pipe.</summary>
    /// <param name="Id">Unique name.</param>
    /// <param name="From">Node where it starts.</param>
    /// <param name="To">Node where it ends.</param>
    /// <param name="Join">The join that it makes.</param>
    /// <param name="Name">Name of the pipe.</param>
    /// <param name="Pipe">The pipe.</param>
    /// <param name="InsulationM">Insulation around it, m.</param>
    public sealed record InPipe(
        string Id,
        int From,
        int To,
        Join Join,
        string Name,
        PipePart Pipe,
        double InsulationM
    ) : PlantBranch(Id, From, To);

    /// <summary>The piece between two closely spaced tees.</summary>
    /// <param name="Id">Unique name.</param>
    /// <param name="From">Node of the first tee.</param>
    /// <param name="To">Node of the second tee.</param>
    /// <param name="Name">Name of the item.</param>
    /// <param name="Part">The tees.</param>
    public sealed record Between(
        string Id,
        int From,
        int To,
        string Name,
        CloselySpacedTeesPart Part
    ) : PlantBranch(Id, From, To);

    /// <summary>The way from a port of closely spaced tees to the tee behind it, or out of it.</summary>
    /// <param name="Id">Unique name.</param>
    /// <param name="From">Node where water usually comes from.</param>
    /// <param name="To">Node where it usually goes.</param>
    /// <param name="Name">Name of the item.</param>
    /// <param name="Port">Name of the port.</param>
    /// <param name="Part">The tees.</param>
    public sealed record InTee(
        string Id,
        int From,
        int To,
        string Name,
        string Port,
        CloselySpacedTeesPart Part
    ) : PlantBranch(Id, From, To)
    {
        /// <summary>Whether water turns into or out of the branch of the tee here.</summary>
        public bool Turns => Port is Ports.SecondaryIn or Ports.SecondaryOut;
    }

    /// <summary>A loop of floor tube with its valve.</summary>
    /// <param name="Id">Unique name.</param>
    /// <param name="From">Supply bar.</param>
    /// <param name="To">Return bar.</param>
    /// <param name="Index">Which loop of the floor.</param>
    /// <param name="Loop">The loop.</param>
    /// <param name="Tube">Its tube.</param>
    /// <param name="LengthM">Its length, m.</param>
    /// <param name="ValveKv">Flow coefficient of its valve as set.</param>
    public sealed record InLoop(
        string Id,
        int From,
        int To,
        int Index,
        LoopDesign Loop,
        PipePart Tube,
        double LengthM,
        double ValveKv
    ) : PlantBranch(Id, From, To);
}

/// <summary>The piping of a plant as points and branches, before anything flows.</summary>
/// <param name="Nodes">Points.</param>
/// <param name="Branches">Branches; those of the items first, then tees, pipes and loops.</param>
/// <param name="Items">Items with their parts, in the order of the design.</param>
public sealed record PlantGraph(
    ImmutableArray<PlantNode> Nodes,
    ImmutableArray<PlantBranch> Branches,
    ImmutableArray<PlacedPart> Items
)
{
    private readonly ImmutableDictionary<PortAddress, int> nodeOfPort = Nodes
        .SelectMany((node, index) => node.Ports.Select(port => KeyValuePair.Create(port, index)))
        .ToImmutableDictionary();

    private readonly ImmutableDictionary<string, PlacedPart> itemByName =
        Items.ToImmutableDictionary(item => item.Name, StringComparer.Ordinal);

    /// <summary>The point at which a port lies.</summary>
    /// <exception cref="KeyNotFoundException">The item has no such port.</exception>
    public int NodeOf(string item, string port) => nodeOfPort[new PortAddress(item, port)];

    /// <summary>An item with its part.</summary>
    /// <exception cref="KeyNotFoundException">There is no such item.</exception>
    public PlacedPart Item(string name) => itemByName[name];

    /// <summary>All items whose part is of a kind.</summary>
    public IEnumerable<PlacedPart> ItemsOf<TPart>()
        where TPart : Part => Items.Where(item => item.Part is TPart);

    /// <summary>The points that water can reach from a point without passing some branches.</summary>
    /// <param name="start">Where it starts.</param>
    /// <param name="passes">Whether it may pass a branch (in either direction).</param>
    public ISet<int> Reach(int start, Func<PlantBranch, bool> passes)
    {
        var reached = new HashSet<int> { start };
        var waiting = new Queue<int>([start]);
        while (waiting.TryDequeue(out var node))
        {
            foreach (
                var branch in Branches.Where(branch => branch.From == node || branch.To == node)
            )
            {
                var other = branch.From == node ? branch.To : branch.From;
                if (!reached.Contains(other) && passes(branch))
                {
                    reached.Add(other);
                    waiting.Enqueue(other);
                }
            }
        }

        return reached;
    }
}

/// <summary>An item in its place with its part.</summary>
/// <param name="Name">Name of the item.</param>
/// <param name="Item">The item.</param>
/// <param name="Part">Its part.</param>
public sealed record PlacedPart(string Name, PlantItem Item, Part Part);
