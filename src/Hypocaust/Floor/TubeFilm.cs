using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>How the water inside the tube flows.</summary>
public enum FilmRegime
{
    /// <summary>Reynolds number below 2300.</summary>
    Laminar,

    /// <summary>Reynolds number from 2300 to 4000: neither, and not to be known.</summary>
    Transition,

    /// <summary>Reynolds number above 4000.</summary>
    Turbulent,
}

/// <summary>
/// The film of water at the tube's inner wall. The tables of EN 1264-2 assume turbulent flow (from memory); a slow, laminar
/// loop gives less heat, and this record says how much resistance that adds.
/// </summary>
/// <remarks>
/// Laminar: Nu = 3.66 (developed, constant wall temperature; the careful choice, 4.36 at constant flux). Turbulent: Gnielinski
/// with Petukhov's friction factor, within about 10 % (textbook figure, from memory). Between 2300 and 4000 Nu is bridged
/// linearly in Re, which is our choice. The correction compares with the film at Re = 4000 of the same fluid and is 0 above it:
/// also our choice, because the standard's own film is not known to us. EN 1264-2:2021 has an annex on laminar flow that we
/// have not seen.
/// </remarks>
/// <source>Gnielinski 1976; Incropera, Fundamentals of Heat and Mass Transfer, ch. 8 (from memory)</source>
public sealed record TubeFilm
{
    /// <summary>Nusselt number of developed laminar flow at constant wall temperature.</summary>
    public const double LaminarNusselt = 3.66;

    /// <summary>Reynolds number up to which the flow is taken as laminar.</summary>
    public const double LaminarUpTo = 2300;

    /// <summary>Reynolds number from which the flow is taken as turbulent.</summary>
    public const double TurbulentFrom = 4000;

    private TubeFilm() { }

    /// <summary>Reynolds number on the inner diameter.</summary>
    public double Reynolds { get; private init; }

    /// <summary>Prandtl number of the fluid.</summary>
    public double Prandtl { get; private init; }

    /// <summary>Kind of flow.</summary>
    public FilmRegime Regime { get; private init; }

    /// <summary>Nusselt number on the inner diameter.</summary>
    public double Nusselt { get; private init; }

    /// <summary>Heat transfer coefficient at the inner wall in W/(m²·K).</summary>
    public double CoefficientWPerM2K { get; private init; }

    /// <summary>Coefficient at Re = 4000 of the same fluid in W/(m²·K), which the tables are taken to include.</summary>
    public double IncludedCoefficientWPerM2K { get; private init; }

    /// <summary>Whole resistance of the film for one metre of tube in m·K/W.</summary>
    public double ResistanceMKPerW { get; private init; }

    /// <summary>Resistance for one metre of tube in m·K/W beyond what the tables are taken to include; 0 in turbulent flow.</summary>
    public double ExtraResistanceMKPerW { get; private init; }

    /// <summary>Computes the film from the flow.</summary>
    /// <param name="reynolds">Reynolds number on the inner diameter, above 0 to 5e6.</param>
    /// <param name="prandtl">Prandtl number, 0.5 to 2000.</param>
    /// <param name="fluidConductivityWPerMK">Conductivity of the fluid in W/(m·K), above 0.</param>
    /// <param name="innerDiameterM">Inner diameter of the tube in m, above 0.</param>
    public static Result<TubeFilm> FromFlow(
        double reynolds,
        double prandtl,
        double fluidConductivityWPerMK,
        double innerDiameterM
    )
    {
        if (!(reynolds.IsPositive() && reynolds <= 5e6))
        {
            return FloorProblems.Outside(
                "floor-film-outside",
                "reynolds",
                "Reynolds number",
                reynolds,
                "",
                "Give a flow with a Reynolds number above 0 and up to 5 000 000"
            );
        }

        if (!prandtl.IsWithin(0.5, 2000))
        {
            return FloorProblems.Outside(
                "floor-film-outside",
                "prandtl",
                "Prandtl number",
                prandtl,
                "",
                "Give a fluid with a Prandtl number from 0.5 to 2000; water has 3 to 13"
            );
        }

        if (!(fluidConductivityWPerMK.IsPositive() && innerDiameterM.IsPositive()))
        {
            return FloorProblems.Outside(
                "floor-film-outside",
                "innerDiameterM",
                "inner diameter",
                innerDiameterM,
                "m",
                "Give an inner diameter and a fluid conductivity above 0"
            );
        }

        return Of(reynolds, prandtl, fluidConductivityWPerMK, innerDiameterM);
    }

    private static TubeFilm Of(double reynolds, double prandtl, double conductivity, double bore)
    {
        var nusselt = NusseltOf(reynolds, prandtl);
        var coefficient = nusselt * conductivity / bore;
        var included = Gnielinski(TurbulentFrom, prandtl) * conductivity / bore;
        return new TubeFilm
        {
            Reynolds = reynolds,
            Prandtl = prandtl,
            Regime =
                reynolds < LaminarUpTo ? FilmRegime.Laminar
                : reynolds < TurbulentFrom ? FilmRegime.Transition
                : FilmRegime.Turbulent,
            Nusselt = nusselt,
            CoefficientWPerM2K = coefficient,
            IncludedCoefficientWPerM2K = included,
            ResistanceMKPerW = 1 / (coefficient * Math.PI * bore),
            ExtraResistanceMKPerW =
                reynolds >= TurbulentFrom ? 0 : (1 / coefficient - 1 / included) / (Math.PI * bore),
        };
    }

    private static double NusseltOf(double reynolds, double prandtl)
    {
        if (reynolds >= TurbulentFrom)
        {
            return Gnielinski(reynolds, prandtl);
        }

        var share = Math.Max(0, (reynolds - LaminarUpTo) / (TurbulentFrom - LaminarUpTo));
        return LaminarNusselt + share * (Gnielinski(TurbulentFrom, prandtl) - LaminarNusselt);
    }

    private static double Gnielinski(double reynolds, double prandtl)
    {
        var eighth = Math.Pow(0.790 * Math.Log(reynolds) - 1.64, -2) / 8;
        return eighth
            * (reynolds - 1000)
            * prandtl
            / (1 + 12.7 * Math.Sqrt(eighth) * (Math.Cbrt(prandtl * prandtl) - 1));
    }
}
