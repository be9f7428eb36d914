using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Layout;

/// <summary>Every message of the module, made by name.</summary>
internal static class LayoutProblems
{
    public static Problem NotAnOutline(string room) =>
        new(
            "room-not-simple",
            room,
            "the walls of the room do not close a plain shape: they cross or fold back",
            "check the lengths and directions one by one; three corners at least, and no wall may cross another"
        );

    public static Problem BadKeepOut(string room) =>
        new(
            "keep-out-not-simple",
            room,
            "the outline of a keep-out crosses itself or has no area",
            "give its corners in order, three at least"
        );

    public static Problem TooNarrow(string room, double spacingM, double clearanceM) =>
        new(
            "room-too-narrow",
            room,
            Say(
                $"no pair of tubes {spacingM * 1000:0} mm apart fits {clearanceM * 1000:0} mm off the walls"
            ),
            "choose a smaller spacing or clearance (50 mm from the wall at least), or heat this room with its neighbour"
        );

    public static Problem ManifoldBlocked(int loops) =>
        new(
            "manifold-blocked",
            "manifold",
            Say(
                $"there is no clear floor at the manifold for the tubes of {loops} {(loops == 1 ? "loop" : "loops")}"
            ),
            "move the manifold to a wall with free floor in front, away from keep-outs, or share the loops between two manifolds"
        );

    public static Problem NotReached(string room) =>
        new(
            "room-not-reached",
            room,
            "no free way leads from the manifold to this room",
            "add a door between the rooms that is wide enough for the tubes, move a keep-out, or give the room a manifold of its own"
        );

    public static Problem TooLong(string room, double longestM, double mostM) =>
        new(
            "loop-too-long",
            room,
            Say($"a loop comes to {longestM:0} m and may have {mostM:0} m"),
            "move the manifold nearer, allow a longer loop, or widen the spacing"
        );

    public static Problem Crosses(Spot at) =>
        new(
            "tubes-cross",
            "manifold",
            Say($"the tubes would cross at {at.X:0.00} m, {at.Y:0.00} m"),
            "move the manifold along its wall or widen the spacing"
        );

    public static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
