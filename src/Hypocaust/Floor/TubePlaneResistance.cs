using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>A slab of one material with a row of tubes, for <see cref="TubePlaneResistance"/>.</summary>
/// <param name="SpacingM">Distance T between tube centres in m.</param>
/// <param name="ConductivityWPerMK">Conductivity λ of the slab in W/(m·K).</param>
/// <param name="TubeOuterDiameterM">Outer diameter D in m.</param>
/// <param name="TubeDepthM">Top face to tube centre in m.</param>
/// <param name="ThicknessM">Thickness of the slab in m.</param>
/// <param name="TopCoefficientWPerM2K">Heat transfer coefficient above the slab in W/(m²·K), a covering included; 0 for none.</param>
/// <param name="BottomCoefficientWPerM2K">Heat transfer coefficient below the slab in W/(m²·K), insulation included; 0 for none.</param>
public sealed record TubeRowSlab(
    double SpacingM,
    double ConductivityWPerMK,
    double TubeOuterDiameterM,
    double TubeDepthM,
    double ThicknessM,
    double TopCoefficientWPerM2K,
    double BottomCoefficientWPerM2K
);

/// <summary>
/// Resistance between the outer wall of the tubes and the mean temperature of the plane they lie in, by a row of line sources
/// mirrored in both faces of the slab: a cross-check of the tables that needs none.
/// </summary>
/// <remarks>
/// R_x = T/(2πλ) [ln(T/(πD)) + Σ (p + s + 2ps)/(n(1 − ps))] with k = 2πn/T, p = (λk − α_t)/(λk + α_t) e^(−2kd) and s likewise below.
/// The first term alone is the form of ISO 11855-2 (from memory). A line source stands for the tube, so the wall is isothermal
/// only on average: the whole flux lies within 0.05 % of the two-dimensional solution in the reference cases.
/// </remarks>
/// <source>Derived here (Fourier series of a periodic row of line sources); checked against floor_resistance.csv</source>
public sealed record TubePlaneResistance
{
    private const int MostTerms = 100_000;
    private const double Negligible = 1e-16;
    private const double Rounding = 1e-9;

    private TubePlaneResistance() { }

    /// <summary>First term T ln(T/(πD))/(2πλ) in m²·K/W: tubes deep inside the slab.</summary>
    public double DeepTubeM2KPerW { get; private init; }

    /// <summary>What the faces of the slab add, in m²·K/W.</summary>
    public double FacesM2KPerW { get; private init; }

    /// <summary>
    /// How much hotter the top face is above a tube than on average, in K for each W/m² that the tubes give up and down:
    /// (1/λ) Σ (1 + r)(1 + s) e^(−kd)/(k(1 − ps)), r being the reflection (λk − α_t)/(λk + α_t).
    /// </summary>
    public double TopPeakM2KPerW { get; private init; }

    /// <summary>Terms of the series that were summed.</summary>
    public int Terms { get; private init; }

    /// <summary>R_x in m²·K/W, for each square metre of floor.</summary>
    public double ResistanceM2KPerW => DeepTubeM2KPerW + FacesM2KPerW;

    /// <summary>Computes the resistance.</summary>
    public static Result<TubePlaneResistance> Of(TubeRowSlab slab)
    {
        var radius = slab.TubeOuterDiameterM / 2;
        if (
            !(
                slab.ConductivityWPerMK.IsPositive()
                && slab.TubeOuterDiameterM.IsPositive()
                && slab.SpacingM.IsPositive()
                && slab.SpacingM > slab.TubeOuterDiameterM
                && slab.TubeDepthM > radius
                && slab.ThicknessM - slab.TubeDepthM >= radius * (1 - Rounding)
                && double.IsFinite(slab.ThicknessM)
                && slab.TopCoefficientWPerM2K >= 0
                && slab.BottomCoefficientWPerM2K >= 0
            )
        )
        {
            return FloorProblems.TubeNotInside();
        }

        var (faces, peak, terms) = Sum(slab);
        var scale = slab.SpacingM / (2 * Math.PI * slab.ConductivityWPerMK);
        return terms > MostTerms
            ? FloorProblems.TubeTooCloseToFace()
            : new TubePlaneResistance
            {
                DeepTubeM2KPerW =
                    scale * Math.Log(slab.SpacingM / (Math.PI * slab.TubeOuterDiameterM)),
                FacesM2KPerW = scale * faces,
                TopPeakM2KPerW = scale * peak,
                Terms = terms,
            };
    }

    private static (double Faces, double Peak, int Terms) Sum(TubeRowSlab slab)
    {
        var (faces, peak) = (0.0, 0.0);
        for (var n = 1; n <= MostTerms; n++)
        {
            var k = 2 * Math.PI * n / slab.SpacingM;
            var down = Math.Exp(-k * (slab.ThicknessM - slab.TubeDepthM));
            var up = Math.Exp(-k * slab.TubeDepthM);
            var top = Reflection(slab.ConductivityWPerMK * k, slab.TopCoefficientWPerM2K);
            var p = up * up * top;
            var s =
                down
                * down
                * Reflection(slab.ConductivityWPerMK * k, slab.BottomCoefficientWPerM2K);
            faces += (p + s + 2 * p * s) / (n * (1 - p * s));
            peak += (1 + top) * (1 + s) * up / (n * (1 - p * s));
            if (up + down * down < Negligible)
            {
                return (faces, peak, n);
            }
        }

        return (faces, peak, MostTerms + 1);
    }

    private static double Reflection(double slab, double face) =>
        double.IsPositiveInfinity(face) ? -1 : (slab - face) / (slab + face);
}
