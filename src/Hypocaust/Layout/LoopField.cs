namespace Hypocaust.Layout;

/// <summary>The cells of one loop: a connected set that holds the slot at the manifold from which it starts.</summary>
/// <param name="Room">Index of the room that it serves.</param>
/// <param name="Root">Its slot.</param>
/// <param name="Facing">The side of the slot that faces the manifold.</param>
/// <param name="Cells">All its cells.</param>
/// <param name="Field">Those that are not only its way from the manifold.</param>
internal sealed record LoopField(
    int Room,
    int Root,
    Side Facing,
    HashSet<int> Cells,
    HashSet<int> Field
);

/// <summary>In which order a room is given away, the farthest first.</summary>
internal enum Sweep
{
    East,
    West,
    North,
    South,

    /// <summary>By steps of a chess king from the manifold.</summary>
    Around,
}
