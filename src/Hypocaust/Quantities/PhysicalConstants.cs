namespace Hypocaust.Quantities;

/// <summary>Constants of nature by agreement.</summary>
/// <source>3rd CGPM 1901 (gravity), 10th CGPM 1954 (atmosphere)</source>
public static class PhysicalConstants
{
    /// <summary>Standard gravity, m/s².</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Standard atmosphere, Pa.</summary>
    public const double AtmospherePa = 101325;
}
