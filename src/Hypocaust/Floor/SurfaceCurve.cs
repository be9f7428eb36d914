namespace Hypocaust.Floor;

/// <summary>The basic characteristic curve: heat from a floor surface by its mean temperature over the room.</summary>
/// <source>EN 1264-2, q = 8.92 (θ_F,m − θ_i)^1.1 (seen in two trade articles on the standard)</source>
public static class SurfaceCurve
{
    /// <summary>Coefficient in W/(m²·K^1.1).</summary>
    public const double Coefficient = 8.92;

    /// <summary>Exponent, dimensionless.</summary>
    public const double Exponent = 1.1;

    /// <summary>Largest excess in K for which the standard uses the curve (edge zone).</summary>
    public const double LargestExcessK = 15;

    /// <summary>Flux in W/m² of a surface by its mean excess over the room in K, 0 or more; stated up to 15 K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The excess is negative or not a number.</exception>
    public static double FluxWPerM2(double excessK) =>
        excessK >= 0
            ? Coefficient * Math.Pow(excessK, Exponent)
            : throw new ArgumentOutOfRangeException(nameof(excessK), excessK, "Must be 0 or more.");

    /// <summary>Mean excess over the room in K of a surface by its flux in W/m², 0 or more; stated up to 175 W/m².</summary>
    /// <exception cref="ArgumentOutOfRangeException">The flux is negative or not a number.</exception>
    public static double ExcessK(double fluxWPerM2) =>
        fluxWPerM2 >= 0
            ? Math.Pow(fluxWPerM2 / Coefficient, 1 / Exponent)
            : throw new ArgumentOutOfRangeException(
                nameof(fluxWPerM2),
                fluxWPerM2,
                "Must be 0 or more."
            );
}
