using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>How the tube of a field runs.</summary>
public enum LayingPattern
{
    /// <summary>Supply and return side by side, winding inwards: even warmth.</summary>
    Counterflow,

    /// <summary>To and fro, tooth by tooth, the return along one side.</summary>
    Serpentine,
}

/// <summary>An opening in a wall.</summary>
/// <param name="Middle">Its middle, on or near the wall, m.</param>
/// <param name="WidthM">Its clear width, m.</param>
public readonly record struct DoorPlan(Spot Middle, double WidthM);

/// <summary>A room to be laid with tube.</summary>
public sealed record RoomPlan
{
    /// <summary>Its name; its loops are called after it.</summary>
    public required string Name { get; init; }

    /// <summary>Corners in order, either way round, m.</summary>
    public required ImmutableArray<Spot> Outline { get; init; }

    /// <summary>Distance from tube to tube at least, m.</summary>
    public required double SpacingM { get; init; }

    /// <summary>Places without tube, polygons in m.</summary>
    public ImmutableArray<ImmutableArray<Spot>> KeepOuts { get; init; } = [];

    /// <summary>Openings in its walls.</summary>
    public ImmutableArray<DoorPlan> Doors { get; init; } = [];

    /// <summary>Movement joints in the concrete.</summary>
    public ImmutableArray<Edge> Joints { get; init; } = [];

    /// <summary>Tighter distance along some walls, m; null without.</summary>
    public double? EdgeSpacingM { get; init; }

    /// <summary>Numbers of these walls, the first 0.</summary>
    public ImmutableArray<int> EdgeWalls { get; init; } = [];

    /// <summary>How wide the tighter strip is, m (EN 1264-2: a peripheral area of 1 m at most).</summary>
    public double EdgeWidthM { get; init; } = 1;

    /// <summary>How the tube runs.</summary>
    public LayingPattern Pattern { get; init; }

    /// <summary>Longest loop, m.</summary>
    public double MaximumLoopM { get; init; } = 100;

    /// <summary>Tube to wall and keep-out at least, m (EN 1264-4: 50 mm from vertical structures).</summary>
    public double ClearanceM { get; init; } = 0.1;

    /// <summary>Smallest radius to which the tube may be bent, m.</summary>
    public double BendRadiusM { get; init; } = 0.075;
}

/// <summary>The rooms that hang on one manifold.</summary>
/// <param name="Rooms">The rooms.</param>
/// <param name="Manifold">Foot of the manifold at its wall, m.</param>
public sealed record FloorPlan(ImmutableArray<RoomPlan> Rooms, Spot Manifold);
