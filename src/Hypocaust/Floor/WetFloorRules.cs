namespace Hypocaust.Floor;

/// <summary>Limits of construction for a wet floor, for the rules of Review.</summary>
public static class WetFloorRules
{
    /// <summary>Least screed above the tube in m.</summary>
    public const double MinimumScreedCoverM = 0.030;

    /// <summary>Where <see cref="MinimumScreedCoverM"/> comes from.</summary>
    public const string MinimumScreedCoverSource = "EN 1264-4:2021, 4.2.2.9.2 (seen)";

    /// <summary>Highest temperature of a cement or calcium sulphate screed at the tube, taken as highest supply temperature, in °C.</summary>
    public const double MaximumSupplyCementScreedC = 55;

    /// <summary>Where <see cref="MaximumSupplyCementScreedC"/> comes from.</summary>
    public const string MaximumSupplyCementScreedSource = "EN 1264-4 (from memory, to be verified)";

    /// <summary>Widest edge zone in m that may use the limit of <see cref="SurfaceZone.Edge"/>.</summary>
    public const double MaximumEdgeZoneWidthM = 1.0;

    /// <summary>Where <see cref="MaximumEdgeZoneWidthM"/> comes from.</summary>
    public const string MaximumEdgeZoneWidthSource = "EN 1264-1/-2 (from memory, to be verified)";
}
