namespace Hypocaust.Floor;

/// <summary>Heat output of a wet floor by the table method of EN 1264-2, with every value on the way to it.</summary>
/// <remarks>
/// q = K_H Δθ_H with K_H = B a_B a_T^m_T a_U^m_U a_D^m_D. All from memory of EN 1264-2 (types A and C), to be verified.
/// </remarks>
/// <source>EN 1264-2, types A and C (from memory)</source>
public sealed record En1264Output
{
    /// <summary>Heat transfer coefficient α of the floor surface in W/(m²·K).</summary>
    public const double SurfaceCoefficientWPerM2K = 10.8;

    /// <summary>System coefficient B_0 in W/(m²·K) for the reference tube (λ = 0.35 W/(m·K), wall 2 mm).</summary>
    public const double ReferenceSystemCoefficientWPerM2K = 6.7;

    /// <summary>Share by which a resistance at the tube counts more than for the upward heat alone, dimensionless.</summary>
    public const double TubeResistanceFactor = 1.1;

    private const double ReferenceCoverM = 0.045;
    private const double ReferenceConductivityWPerMK = 1.0;
    private const double ReferenceTubeWallM = 0.002;
    private const double ReferenceTubeConductivityWPerMK = 0.35;

    private En1264Output(WetFloorSection section, TubeFilm? film)
    {
        Section = section;
        Film = film;
    }

    /// <summary>The floor.</summary>
    public WetFloorSection Section { get; }

    /// <summary>Film inside the tube, if it was given; without it the flow is taken as turbulent, as the standard does.</summary>
    public TubeFilm? Film { get; }

    /// <summary>Spacing at which the tables are read in m: the floor's, at most 0.375.</summary>
    public double SpacingUsedM { get; private init; }

    /// <summary>Cover s_u* in m above which further cover is added as a plain resistance: 0.1 to T = 0.2 m, then T/2, at most 0.1875.</summary>
    public double CoverLimitM { get; private init; }

    /// <summary>Cover used in the product in m: the floor's, at most <see cref="CoverLimitM"/>.</summary>
    public double CoverUsedM { get; private init; }

    /// <summary>Factor a_B of the covering, dimensionless.</summary>
    public double CoveringFactor { get; private init; }

    /// <summary>Factor a_T of the spacing, dimensionless.</summary>
    public double SpacingFactor { get; private init; }

    /// <summary>Factor a_U of the cover, dimensionless.</summary>
    public double CoverFactor { get; private init; }

    /// <summary>Factor a_D of the tube diameter, dimensionless.</summary>
    public double DiameterFactor { get; private init; }

    /// <summary>Exponent m_T = 1 − T/0.075, dimensionless.</summary>
    public double SpacingExponent { get; private init; }

    /// <summary>Exponent m_U = 100 (0.045 − s_u), dimensionless.</summary>
    public double CoverExponent { get; private init; }

    /// <summary>Exponent m_D = 250 (D − 0.020), dimensionless.</summary>
    public double DiameterExponent { get; private init; }

    /// <summary>Product a_B a_T^m_T a_U^m_U a_D^m_D, dimensionless.</summary>
    public double Product { get; private init; }

    /// <summary>Resistance of tube wall and film beyond that of the reference tube, for one metre of tube, in m·K/W; may be negative.</summary>
    public double ExtraTubeResistanceMKPerW { get; private init; }

    /// <summary>System coefficient B of this tube in W/(m²·K).</summary>
    public double SystemCoefficientWPerM2K { get; private init; }

    /// <summary>Resistance in m²·K/W of the cover beyond <see cref="CoverLimitM"/>.</summary>
    public double ExtraCoverResistanceM2KPerW { get; private init; }

    /// <summary>0.375/T for tubes more than 0.375 m apart, else 1.</summary>
    public double WideSpacingRatio { get; private init; }

    /// <summary>Heat to the room for each kelvin of excess water temperature: K_H in W/(m²·K).</summary>
    public double ConductanceWPerM2K { get; private init; }

    /// <summary>Resistance R_o from the tube plane to the room in m²·K/W: 1/α + R_λB + s_u/λ_E.</summary>
    public double ResistanceAboveM2KPerW { get; private init; }

    /// <summary>Where formulas and tables come from, and how sure we are.</summary>
    public static string Source => En1264Tables.FactorSource;

    /// <summary>Heat flux to the room in W/m² at an excess water temperature in K.</summary>
    public double FluxWPerM2(double excessK) => ConductanceWPerM2K * excessK;

    /// <summary>Computes the output of a floor.</summary>
    /// <param name="section">The floor.</param>
    /// <param name="film">Film inside the tube; null takes turbulent flow for granted.</param>
    public static En1264Output Of(WetFloorSection section, TubeFilm? film = null)
    {
        var floor = section.Specification;
        var spacing = Math.Min(floor.SpacingM, En1264Validity.WidestTabulatedSpacingM);
        var coverLimit = spacing <= 0.2 ? 0.1 : 0.5 * spacing;
        var cover = Math.Min(floor.CoverM, coverLimit);
        var covering = floor.CoveringResistanceM2KPerW;
        var output = new En1264Output(section, film)
        {
            SpacingUsedM = spacing,
            CoverLimitM = coverLimit,
            CoverUsedM = cover,
            CoveringFactor = CoveringFactorOf(floor.ScreedConductivityWPerMK, covering),
            SpacingFactor = En1264Tables.SpacingFactor(covering),
            CoverFactor = En1264Tables.CoverFactor(spacing, covering),
            DiameterFactor = En1264Tables.DiameterFactor(spacing, covering),
            SpacingExponent = 1 - spacing / 0.075,
            CoverExponent = 100 * (ReferenceCoverM - cover),
            DiameterExponent = 250 * (floor.Tube.OuterDiameterM - 0.020),
            ExtraTubeResistanceMKPerW =
                ExtraWallResistance(floor.Tube) + (film?.ExtraResistanceMKPerW ?? 0),
            ExtraCoverResistanceM2KPerW = (floor.CoverM - cover) / floor.ScreedConductivityWPerMK,
            WideSpacingRatio = spacing / floor.SpacingM,
            ResistanceAboveM2KPerW =
                1 / SurfaceCoefficientWPerM2K + covering + section.CoverResistanceM2KPerW,
        };
        return output.Combine();
    }

    private En1264Output Combine()
    {
        var product =
            CoveringFactor
            * Math.Pow(SpacingFactor, SpacingExponent)
            * Math.Pow(CoverFactor, CoverExponent)
            * Math.Pow(DiameterFactor, DiameterExponent);
        var system =
            1
            / (
                1 / ReferenceSystemCoefficientWPerM2K
                + TubeResistanceFactor * product * SpacingUsedM * ExtraTubeResistanceMKPerW
            );
        return this with
        {
            Product = product,
            SystemCoefficientWPerM2K = system,
            ConductanceWPerM2K =
                WideSpacingRatio / (1 / (system * product) + ExtraCoverResistanceM2KPerW),
        };
    }

    private static double CoveringFactorOf(double conductivity, double covering) =>
        (1 / SurfaceCoefficientWPerM2K + ReferenceCoverM / ReferenceConductivityWPerMK)
        / (1 / SurfaceCoefficientWPerM2K + ReferenceCoverM / conductivity + covering);

    private static double ExtraWallResistance(EmbeddedTube tube) =>
        tube.WallResistanceMKPerW
        - new EmbeddedTube(
            tube.OuterDiameterM,
            ReferenceTubeWallM,
            ReferenceTubeConductivityWPerMK
        ).WallResistanceMKPerW;
}
