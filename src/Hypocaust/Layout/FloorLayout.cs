using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Layout;

/// <summary>The tube of a floor as it can be laid.</summary>
/// <param name="Rooms">The rooms in the order of the plan; a room that cannot be laid has no loops.</param>
/// <param name="Problems">What cannot be laid, with place (name of the room, or <c>manifold</c>) and remedy.</param>
public sealed record FloorLayout(
    ImmutableArray<RoomLayout> Rooms,
    ImmutableArray<Problem> Problems
);

/// <summary>A room as laid.</summary>
/// <param name="Name">Its name.</param>
/// <param name="AreaM2">Floor without keep-outs, m².</param>
/// <param name="CoveredM2">Floor within half a spacing of its tube, m².</param>
/// <param name="Loops">Its loops.</param>
/// <param name="Notes">What the person should know, in words.</param>
public sealed record RoomLayout(
    string Name,
    double AreaM2,
    double CoveredM2,
    ImmutableArray<LaidLoop> Loops,
    ImmutableArray<string> Notes
)
{
    /// <summary>Covered part of the area, 0 to 1.</summary>
    public double CoverageShare => AreaM2 > 0 ? Math.Min(1, CoveredM2 / AreaM2) : 0;
}

/// <summary>One loop as laid.</summary>
/// <param name="Name">Room and number.</param>
/// <param name="Path">The tube from supply to return.</param>
/// <param name="LeaderM">Tube between the manifold and its field, there and back, m.</param>
/// <param name="AreaM2">Floor that it covers, m².</param>
/// <param name="SpacingM">Mean distance from tube to tube, m.</param>
/// <param name="TightestBendM">Smallest radius of its bends, m.</param>
/// <param name="ClosestM">Least distance from tube to tube by design, m: the smallest gap, less what wide hairpins take.</param>
/// <param name="Sleeves">Where it crosses movement joints.</param>
public sealed record LaidLoop(
    string Name,
    TubePath Path,
    double LeaderM,
    double AreaM2,
    double SpacingM,
    double TightestBendM,
    double ClosestM,
    ImmutableArray<Spot> Sleeves
)
{
    /// <summary>Tube length from outlet to outlet, m.</summary>
    public double LengthM => Path.LengthM;
}
