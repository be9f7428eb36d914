using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>Tube length of one loop, estimated from area and spacing before a path is laid.</summary>
/// <param name="AreaM2">Heated area in m².</param>
/// <param name="SpacingM">Distance between tubes in m.</param>
/// <param name="LeaderM">Distance from manifold to field in m, run twice.</param>
/// <remarks>Each metre of tube heats one spacing's width, so the field takes area/spacing; bends and borders add or save a few metres.</remarks>
/// <source>Geometry; common practice, no source</source>
public sealed record LoopGeometry(double AreaM2, double SpacingM, double LeaderM)
{
    /// <summary>Tube in the heated field in m.</summary>
    public double FieldLengthM => AreaM2 / SpacingM;

    /// <summary>Tube from manifold to manifold in m.</summary>
    public double TubeLengthM => FieldLengthM + 2 * LeaderM;

    /// <summary>Estimates one loop.</summary>
    /// <param name="areaM2">Heated area in m², above 0.</param>
    /// <param name="spacingM">Distance between tubes in m, above 0.</param>
    /// <param name="leaderM">Distance from manifold to field in m, 0 or more.</param>
    public static Result<LoopGeometry> Estimate(double areaM2, double spacingM, double leaderM)
    {
        List<Problem> problems = [];
        if (!areaM2.IsPositive())
        {
            problems.Add(Outside(nameof(areaM2), "heated area", areaM2, "m²", "above 0"));
        }

        if (!spacingM.IsPositive())
        {
            problems.Add(Outside(nameof(spacingM), "spacing", spacingM, "m", "above 0"));
        }

        if (!(leaderM >= 0 && double.IsFinite(leaderM)))
        {
            problems.Add(Outside(nameof(leaderM), "leader", leaderM, "m", "of 0 or more"));
        }

        return problems.Count > 0
            ? Result<LoopGeometry>.Failed(problems)
            : new LoopGeometry(areaM2, spacingM, leaderM);
    }

    internal static Problem Outside(
        string place,
        string quantity,
        double value,
        string unit,
        string range
    ) =>
        FloorProblems.Outside(
            "floor-geometry-impossible",
            place,
            quantity,
            value,
            unit,
            $"Give a {quantity} {range}"
        );
}
