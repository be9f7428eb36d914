using System.Collections.Immutable;
using Hypocaust.Answers;

namespace Hypocaust.Papers.Space;

/// <summary>Where heat leaves a building.</summary>
internal enum LossGroup
{
    Roof,
    Walls,
    Windows,
    Doors,
    Air,
    Ground,
    Floor,
}

/// <summary>The loss of a group of elements.</summary>
/// <param name="Group">Which.</param>
/// <param name="LossW">Its loss, W; negative where heat comes in.</param>
internal readonly record struct GroupLoss(LossGroup Group, double LossW)
{
    /// <summary>The losses of a building by group, each group once, those without loss left out.</summary>
    public static ImmutableArray<GroupLoss> Of(SpaceAnswer space) =>
        [
            .. space
                .Zones.SelectMany(zone =>
                    zone.Elements.Select(element =>
                            (Group: GroupOf(element.Kind), LossW: element.LossW)
                        )
                        .Append((Group: LossGroup.Air, LossW: zone.VentilationW))
                )
                .GroupBy(one => one.Group)
                .Select(group => new GroupLoss(group.Key, group.Sum(one => one.LossW)))
                .Where(one => Math.Abs(one.LossW) >= 0.5)
                .OrderBy(one => one.Group),
        ];

    private static LossGroup GroupOf(string kind) =>
        kind switch
        {
            "roof" => LossGroup.Roof,
            "window" => LossGroup.Windows,
            "door" => LossGroup.Doors,
            "ground" => LossGroup.Ground,
            "floor" => LossGroup.Floor,
            _ => LossGroup.Walls,
        };
}
