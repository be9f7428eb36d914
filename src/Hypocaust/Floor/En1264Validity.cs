namespace Hypocaust.Floor;

/// <summary>The ranges in which the table method of EN 1264-2 (types A and C) may be used here.</summary>
/// <remarks>From memory of EN 1264-2, to be verified against a copy, except where a bound is marked as ours.</remarks>
public static class En1264Validity
{
    /// <summary>Closest spacing of the tables in m.</summary>
    public const double MinimumSpacingM = 0.05;

    /// <summary>Widest spacing of the tables in m; wider tubes are scaled by 0.375/T.</summary>
    public const double WidestTabulatedSpacingM = 0.375;

    /// <summary>Widest spacing accepted, in m. Our own bound, no source: beyond it nobody would call it a heated floor.</summary>
    public const double MaximumSpacingM = 1.0;

    /// <summary>Thinnest cover above the tube in m.</summary>
    public const double MinimumCoverM = 0.010;

    /// <summary>Thickest cover accepted, in m. Our own bound, no source; the standard adds further cover as a plain resistance.</summary>
    public const double MaximumCoverM = 0.5;

    /// <summary>Smallest outer diameter in m.</summary>
    public const double MinimumDiameterM = 0.008;

    /// <summary>Largest outer diameter in m.</summary>
    public const double MaximumDiameterM = 0.030;

    /// <summary>Largest covering resistance of the tables in m²·K/W.</summary>
    public const double MaximumCoveringM2KPerW = 0.15;

    /// <summary>
    /// Lowest screed conductivity accepted in W/(m·K). Our own bound, no source: light gypsum screeds lie above it, and the
    /// factors misbehave below (output would rise with a thicker carpet).
    /// </summary>
    public const double MinimumScreedConductivityWPerMK = 0.5;

    /// <summary>Conductivity in W/(m·K) below which only <see cref="MaximumLightCoverM"/> is accepted. Our own bound, for the same reason.</summary>
    public const double LightScreedBelowWPerMK = 1.0;

    /// <summary>Thickest cover in m of a screed that conducts less than <see cref="LightScreedBelowWPerMK"/>. Our own bound.</summary>
    public const double MaximumLightCoverM = 0.1;

    /// <summary>Highest screed conductivity accepted in W/(m·K). Our own bound, no source: dense concrete stays below 3.</summary>
    public const double MaximumScreedConductivityWPerMK = 4.0;

    /// <summary>Smallest cover over conductivity s_u/λ_E of the limit tables in m²·K/W.</summary>
    public const double MinimumLimitRatioM2KPerW = 0.01;

    /// <summary>Largest cover over conductivity s_u/λ_E of the limit tables that we hold, in m²·K/W.</summary>
    public const double MaximumLimitRatioM2KPerW = 0.0792;
}
