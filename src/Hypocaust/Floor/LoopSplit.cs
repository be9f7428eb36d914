using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>An area divided into equal loops, none longer than allowed.</summary>
/// <param name="Count">Fewest loops that keep the length.</param>
/// <param name="Loop">One of them.</param>
/// <param name="MaximumLengthM">Longest tube allowed for a loop in m.</param>
/// <source>Geometry; common practice, no source</source>
public sealed record LoopSplit(int Count, LoopGeometry Loop, double MaximumLengthM)
{
    private const int MostLoops = 10_000;

    /// <summary>Tube of all loops in m.</summary>
    public double TotalTubeM => Count * Loop.TubeLengthM;

    /// <summary>Divides an area.</summary>
    /// <param name="areaM2">Heated area in m², above 0.</param>
    /// <param name="spacingM">Distance between tubes in m, above 0.</param>
    /// <param name="leaderM">Distance from manifold to field in m, 0 or more, the same for every loop.</param>
    /// <param name="maximumLengthM">Longest tube allowed for a loop with its leaders in m.</param>
    public static Result<LoopSplit> Equal(
        double areaM2,
        double spacingM,
        double leaderM,
        double maximumLengthM
    ) =>
        LoopGeometry
            .Estimate(areaM2, spacingM, leaderM)
            .Then<LoopSplit>(whole =>
            {
                if (!maximumLengthM.IsPositive())
                {
                    return LoopGeometry.Outside(
                        nameof(maximumLengthM),
                        "longest loop",
                        maximumLengthM,
                        "m",
                        "above 0"
                    );
                }

                var fieldM = maximumLengthM - 2 * leaderM;
                var count = Math.Ceiling(whole.FieldLengthM / fieldM * (1 - 1e-12));
                return fieldM > 0 && count <= MostLoops
                    ? new LoopSplit(
                        (int)count,
                        whole with
                        {
                            AreaM2 = areaM2 / count,
                        },
                        maximumLengthM
                    )
                    : FloorProblems.LeaderTooLong(leaderM, maximumLengthM);
            });
}
