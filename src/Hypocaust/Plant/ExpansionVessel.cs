using Hypocaust.Quantities;

namespace Hypocaust.Plant;

/// <summary>A closed expansion vessel: a gas cushion that takes the growth of the water.</summary>
/// <param name="VolumeM3">Nominal volume, m³, more than 0.</param>
/// <param name="PrechargePa">Gas pressure before filling, Pa above atmosphere.</param>
/// <source>Boyle's law; sizing by the form of EN 12828:2012, annex D (from memory)</source>
public sealed record ExpansionVessel(double VolumeM3, double PrechargePa)
{
    /// <summary>Water in the vessel at a gauge pressure, m³; none at or below the precharge.</summary>
    /// <param name="gaugePa">Pressure at the vessel, Pa above atmosphere.</param>
    public double WaterM3(double gaugePa) =>
        gaugePa <= PrechargePa
            ? 0
            : VolumeM3
                * (
                    1
                    - (
                        (PrechargePa + PhysicalConstants.AtmospherePa)
                        / (gaugePa + PhysicalConstants.AtmospherePa)
                    )
                );

    /// <summary>Gauge pressure once the water has grown by a volume, Pa; null where the vessel cannot take it.</summary>
    /// <param name="coldPa">Gauge pressure when cold and full, Pa.</param>
    /// <param name="growthM3">Growth of the water since then, m³; negative where it shrank.</param>
    public double? PressurePa(double coldPa, double growthM3)
    {
        var water = Math.Max(0, WaterM3(coldPa) + growthM3);
        var gas = VolumeM3 - water;
        return gas <= 0
            ? null
            : ((PrechargePa + PhysicalConstants.AtmospherePa) * VolumeM3 / gas)
                - PhysicalConstants.AtmospherePa;
    }
}

/// <summary>How large an expansion vessel has to be.</summary>
/// <param name="SystemM3">Volume of the whole system, m³.</param>
/// <param name="GrowthM3">Growth of the water from filling to its warmest, m³.</param>
/// <param name="PrechargePa">Gas pressure before filling, Pa above atmosphere.</param>
/// <param name="ReliefPa">Setting of the relief valve, Pa above atmosphere.</param>
/// <remarks>The standard counts the atmosphere as 1 bar.</remarks>
/// <source>EN 12828:2012, annex D (from memory)</source>
public sealed record VesselSizing(
    double SystemM3,
    double GrowthM3,
    double PrechargePa,
    double ReliefPa
)
{
    private const double Bar = 1e5;

    /// <summary>Water kept in the vessel against losses, m³: half a per cent of the system, 3 litres at least.</summary>
    public double ReserveM3 => Math.Max(0.005 * SystemM3, 0.003);

    /// <summary>Highest pressure in service, Pa: the relief setting less 0.5 bar or a tenth, whichever is more.</summary>
    public double FinalPa => ReliefPa - Math.Max(0.5 * Bar, 0.1 * ReliefPa);

    /// <summary>Share of the vessel that can fill with water.</summary>
    public double AcceptedShare => (FinalPa - PrechargePa) / (FinalPa + Bar);

    /// <summary>Smallest vessel, m³; null where the relief valve opens below what the precharge asks for.</summary>
    public double? NeededM3 => AcceptedShare <= 0 ? null : (GrowthM3 + ReserveM3) / AcceptedShare;

    /// <summary>Smallest precharge for a water column above the vessel, Pa: the column and 0.3 bar, at least 0.7 bar.</summary>
    /// <param name="columnPa">Weight of the water above the vessel, Pa.</param>
    public static double LeastPrechargePa(double columnPa) =>
        Math.Max(columnPa + (0.3 * Bar), 0.7 * Bar);
}
