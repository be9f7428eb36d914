using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>
/// The limit curve of a floor: how hot the water may be before the hottest spot of the surface, above a tube, passes a limit.
/// </summary>
/// <remarks>
/// q_G = φ B_G (Δθ_H/φ)^n_G with φ = ((θ_F,max − θ_i)/9 K)^1.1, met by q = K_H Δθ_H at Δθ_H,G = φ (B_G/K_H)^(1/(1−n_G)).
/// Wider than 0.375 m: the excess at 0.375 m times f_G. Never more than a surface of one temperature gives, 8.92 (θ_F,max − θ_i)^1.1;
/// where the tables say more, <see cref="IsCapped"/> says so. From memory, to be verified; s_u/λ_E outside 0.01…0.0792 m²·K/W is a problem.
/// </remarks>
/// <source>EN 1264-2, limit curves and tables of B_G and n_G (from memory)</source>
public sealed record LimitCurve
{
    private const double ReferenceExcessK = 9;

    private LimitCurve() { }

    /// <summary>Cover over conductivity s_u/λ_E in m²·K/W at which the tables are read.</summary>
    public double CoverResistanceM2KPerW { get; private init; }

    /// <summary>Coefficient B_G in W/m².</summary>
    public double Factor { get; private init; }

    /// <summary>Exponent n_G, dimensionless.</summary>
    public double Exponent { get; private init; }

    /// <summary>Factor f_G for tubes more than 0.375 m apart, else 1.</summary>
    public double WideSpacingFactor { get; private init; }

    /// <summary>Water excess Δθ_H,G in K by the tables for φ = 1, that is for a hottest spot 9 K over the room.</summary>
    public double TabulatedExcessK { get; private init; }

    /// <summary>As <see cref="TabulatedExcessK"/>, held down to what a surface of one temperature gives; used from here on.</summary>
    public double ExcessK { get; private init; }

    /// <summary>Whether the surface of one temperature set the limit, because the tables said more.</summary>
    public bool IsCapped => ExcessK < TabulatedExcessK;

    /// <summary>Where formulas and tables come from, and how sure we are.</summary>
    public static string Source => En1264Tables.LimitSource;

    /// <summary>Reads the limit curve of a floor.</summary>
    public static Result<LimitCurve> Of(En1264Output output)
    {
        var ratio = output.Section.CoverResistanceM2KPerW;
        if (
            !ratio.IsWithin(
                En1264Validity.MinimumLimitRatioM2KPerW,
                En1264Validity.MaximumLimitRatioM2KPerW
            )
        )
        {
            return FloorProblems.LimitTable(ratio);
        }

        var factor = En1264Tables.LimitFactor(output.SpacingUsedM, ratio);
        var exponent = En1264Tables.LimitExponent(output.SpacingUsedM, ratio);
        var conductanceAtTable = output.ConductanceWPerM2K / output.WideSpacingRatio;
        var excessAtTable = Math.Pow(factor / conductanceAtTable, 1 / (1 - exponent));
        var wide = WideFactor(output, output.ConductanceWPerM2K * excessAtTable);
        var uniform = SurfaceCurve.FluxWPerM2(ReferenceExcessK) / output.ConductanceWPerM2K;
        return new LimitCurve
        {
            CoverResistanceM2KPerW = ratio,
            Factor = factor,
            Exponent = exponent,
            WideSpacingFactor = wide,
            TabulatedExcessK = excessAtTable * wide,
            ExcessK = Math.Min(excessAtTable * wide, uniform),
        };
    }

    /// <summary>φ = ((θ_F,max − θ_i)/9 K)^1.1 for a hottest spot that lies an excess in K, 0 or more, over the room.</summary>
    public static double Phi(double surfaceExcessK) =>
        Math.Pow(surfaceExcessK / ReferenceExcessK, SurfaceCurve.Exponent);

    /// <summary>Excess in K of the hottest spot over the room while the water has an excess in K, 0 or more: the limit curve read backwards.</summary>
    public double HottestExcessK(double waterExcessK) =>
        ReferenceExcessK * Math.Pow(waterExcessK / ExcessK, 1 / SurfaceCurve.Exponent);

    /// <summary>f_G: 1 up to s_u/T = 0.173, then rising towards the surface of one temperature.</summary>
    private static double WideFactor(En1264Output output, double flux)
    {
        var floor = output.Section.Specification;
        var over = floor.CoverM / floor.SpacingM - 0.173;
        if (output.WideSpacingRatio == 1 || over <= 0)
        {
            return 1;
        }

        var uniform = SurfaceCurve.FluxWPerM2(ReferenceExcessK);
        return (uniform - (uniform - flux) * Math.Exp(-20 * over * over)) / flux;
    }
}
