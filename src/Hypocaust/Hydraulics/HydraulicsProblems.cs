using Hypocaust.Problems;

namespace Hypocaust.Hydraulics;

/// <summary>Every problem this module can report.</summary>
internal static class HydraulicsProblems
{
    public static Problem DuplicateId(string id, string kind) =>
        new(
            "duplicate-id",
            id,
            $"there are two {kind} with this name",
            $"give each of the {kind} a name of its own"
        );

    public static Problem UnknownNode(string branch, string node) =>
        new(
            "unknown-node",
            branch,
            $"it ends at '{node}', which is not a node",
            "name one of the nodes"
        );

    public static Problem BranchToItself(string branch, string node) =>
        new(
            "branch-to-itself",
            branch,
            $"it starts and ends at '{node}'",
            "put a node between its two ends"
        );

    public static Problem NoReferencePressure(string node) =>
        new(
            "no-reference-pressure",
            node,
            $"no node connected with '{node}' has a given pressure, so the pressure there cannot be found",
            "give the pressure at one node of that part, usually where the expansion vessel connects"
        );

    public static Problem BadNumber(string place, string quantity, string accepted) =>
        new("number-out-of-range", place, $"its {quantity} cannot be used", $"give {accepted}");

    public static Problem NoDiameter(string branch) =>
        new(
            "no-diameter",
            branch,
            "it has a length or a loss coefficient but no inside diameter",
            "give the inside diameter in m, more than 0"
        );

    public static Problem NothingToSolve() =>
        new("empty-network", "nodes", "there is no node", "give at least one node");

    public static Problem TooFewPoints(int points) =>
        new(
            "too-few-curve-points",
            "points",
            $"a pump curve needs three points at different flows, but there are {points}",
            "read at least three points off the pump's diagram"
        );

    public static Problem CurveDoesNotFall(double fromM3PerH, double toM3PerH) =>
        new(
            "pump-curve-not-falling",
            "points",
            string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"the head does not fall between {fromM3PerH:0.###} and {toM3PerH:0.###} m³/h"
            ),
            "check the points: head must fall as flow grows"
        );

    public static Problem CurveFitsBadly(double deviationM) =>
        new(
            "pump-curve-fits-badly",
            "points",
            string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"no falling parabola passes closer than {deviationM:0.##} m to the points"
            ),
            "check the points for a slip in a figure"
        );
}
