using Hypocaust.Quantities;

namespace Hypocaust.Hydraulics;

/// <summary>Pressure loss of valves and fittings, and the coefficients in use for it: Kv (metric), Cv (US), K (dimensionless).</summary>
/// <source>IEC 60534-1 (Kv, Cv); K = loss over ρ v²/2, the common definition</source>
public static class Fittings
{
    private const double BarPa = 1e5;
    private static readonly Unit CvUnit = FlowCoefficientKind.Kind.Find("Cv")!;
    private const double SecondsPerHour = 3600;
    private const double KvReferenceDensity = 1000;

    /// <summary>Loss of a valve by its Kv, Pa, with the sign of the flow: 1 bar × (ρ/1000)(Q/Kv)².</summary>
    /// <param name="kvM3PerH">Kv, m³/h, more than 0.</param>
    /// <param name="flowM3PerS">Flow, m³/s.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, more than 0.</param>
    public static double LossOfKvPa(double kvM3PerH, double flowM3PerS, double densityKgPerM3)
    {
        var ratio = flowM3PerS * SecondsPerHour / Positive(kvM3PerH, nameof(kvM3PerH));
        return BarPa
            * (Positive(densityKgPerM3, nameof(densityKgPerM3)) / KvReferenceDensity)
            * ratio
            * Math.Abs(ratio);
    }

    /// <summary>Loss of a fitting by its K, Pa, with the sign of the flow: K ρ v²/2.</summary>
    /// <param name="lossCoefficient">K, 0 or more.</param>
    /// <param name="velocityMPerS">Mean velocity on the diameter that K refers to, m/s.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, more than 0.</param>
    public static double LossOfKPa(
        double lossCoefficient,
        double velocityMPerS,
        double densityKgPerM3
    ) =>
        lossCoefficient
        * Positive(densityKgPerM3, nameof(densityKgPerM3))
        * velocityMPerS
        * Math.Abs(velocityMPerS)
        / 2;

    /// <summary>Mean velocity in a round pipe, m/s.</summary>
    /// <param name="flowM3PerS">Flow, m³/s.</param>
    /// <param name="innerDiameterM">Inside diameter, m, more than 0.</param>
    public static double VelocityMPerS(double flowM3PerS, double innerDiameterM) =>
        flowM3PerS / AreaM2(innerDiameterM);

    /// <summary>Kv that loses as much as K does, m³/h.</summary>
    /// <param name="lossCoefficient">K, more than 0.</param>
    /// <param name="innerDiameterM">Diameter that K refers to, m, more than 0.</param>
    public static double KvOfK(double lossCoefficient, double innerDiameterM) =>
        SecondsPerHour
        * AreaM2(innerDiameterM)
        * Math.Sqrt(
            2 * BarPa / (KvReferenceDensity * Positive(lossCoefficient, nameof(lossCoefficient)))
        );

    /// <summary>K that loses as much as Kv does, on a given diameter.</summary>
    /// <param name="kvM3PerH">Kv, m³/h, more than 0.</param>
    /// <param name="innerDiameterM">Diameter that K is to refer to, m, more than 0.</param>
    public static double KOfKv(double kvM3PerH, double innerDiameterM)
    {
        var velocityAtOneBar =
            Positive(kvM3PerH, nameof(kvM3PerH)) / SecondsPerHour / AreaM2(innerDiameterM);
        return 2 * BarPa / (KvReferenceDensity * velocityAtOneBar * velocityAtOneBar);
    }

    /// <summary>Kv of a valve given by its Cv (US gallons a minute at 1 psi), m³/h; Kv = 0.865 Cv, by the exact unit factors and water of 1000 kg/m³.</summary>
    /// <param name="cv">Cv, US gal/min at 1 psi, more than 0.</param>
    public static double KvOfCv(double cv) => CvUnit.ToSi(Positive(cv, nameof(cv)));

    /// <summary>Cv of a valve given by its Kv, US gal/min at 1 psi.</summary>
    /// <param name="kvM3PerH">Kv, m³/h, more than 0.</param>
    public static double CvOfKv(double kvM3PerH) =>
        CvUnit.FromSi(Positive(kvM3PerH, nameof(kvM3PerH)));

    private static double AreaM2(double innerDiameterM) =>
        Math.PI * Positive(innerDiameterM, nameof(innerDiameterM)) * innerDiameterM / 4;

    private static double Positive(double value, string name) =>
        double.IsFinite(value) && value > 0
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                "It must be a number more than 0."
            );
}
