namespace Hypocaust.Floor;

/// <summary>How far the table method's K_H was found from solutions of the section in two dimensions, for floors of this kind.</summary>
/// <param name="LowPercent">Most that the table lies below the solution, in per cent of it (negative).</param>
/// <param name="HighPercent">Most that the table lies above the solution, in per cent of it.</param>
/// <param name="IsWithinComparedRange">Whether this floor lies within the sections that were compared.</param>
/// <param name="Text">What that means, in plain sentences.</param>
/// <remarks>
/// Compared on the sections of section2d.csv, floor_methods.csv and floor_limits_2d.csv (49 values of K_H, computed, grid-converged)
/// and with our own section solver on 448 more (docs/methods/section.md): spacing 0.05–0.375 m, cover 0.012–0.1125 m, λ_E 1.2–1.8 W/(m·K), covering 0–0.15 m²·K/W, tube 12–20 mm. The ranges are rounded
/// outward. Where table and solution differ, trust the solution.
/// </remarks>
/// <source>Measured in the tests against the reference files (docs/methods/floor.md)</source>
public sealed record KnownDeviation(
    double LowPercent,
    double HighPercent,
    bool IsWithinComparedRange,
    string Text
)
{
    private const double DenseFromWPerMK = 1.5;

    /// <summary>The known deviation for a floor.</summary>
    public static KnownDeviation Of(WetFloorSection section)
    {
        var floor = section.Specification;
        var compared =
            floor.SpacingM <= 0.375
            && floor.CoverM.IsWithin(0.012, 0.1125)
            && floor.ScreedConductivityWPerMK.IsWithin(1.2, 1.8)
            && floor.Tube.OuterDiameterM.IsWithin(0.012, 0.020);
        var (low, high, text) =
            floor.ScreedConductivityWPerMK >= DenseFromWPerMK
                ? (
                    -18,
                    15,
                    "In concrete that conducts well, the table lies between 18 % below and 15 % above a solution of the section in two dimensions: too low with wide spacing or thick cover, too high where the cover is thin and the floor bare."
                )
                : (
                    -8,
                    22,
                    "In screed, the table lies between 8 % below and 22 % above a solution of the section in two dimensions. It promises too much where the cover is thin and the floor bare; with 45 mm of cover it is right within about 12 %."
                );
        return new KnownDeviation(
            low,
            high,
            compared,
            compared
                ? text
                : text
                    + " Your floor lies outside the sections that were compared, so the difference may be larger."
        );
    }
}
