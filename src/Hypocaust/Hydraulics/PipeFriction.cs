using Hypocaust.Hydraulics.Friction;

namespace Hypocaust.Hydraulics;

/// <summary>Pressure lost in a straight round pipe (Darcy–Weisbach with Churchill's friction factor).</summary>
public static class PipeFriction
{
    /// <summary>Reynolds number of a flow in a round pipe.</summary>
    /// <param name="flowM3PerS">Flow, m³/s.</param>
    /// <param name="innerDiameterM">Inside diameter, m, more than 0.</param>
    /// <param name="densityKgPerM3">Density, kg/m³.</param>
    /// <param name="viscosityPaS">Dynamic viscosity, Pa·s, more than 0.</param>
    public static double Reynolds(
        double flowM3PerS,
        double innerDiameterM,
        double densityKgPerM3,
        double viscosityPaS
    ) => 4 * densityKgPerM3 * Math.Abs(flowM3PerS) / (Math.PI * innerDiameterM * viscosityPaS);

    /// <summary>Pressure gradient, Pa per m of pipe, with the sign of the flow.</summary>
    /// <param name="flowM3PerS">Flow, m³/s.</param>
    /// <param name="innerDiameterM">Inside diameter, m, more than 0.</param>
    /// <param name="roughnessM">Equivalent sand roughness, m, 0 to 0.05 of the diameter.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, more than 0.</param>
    /// <param name="viscosityPaS">Dynamic viscosity, Pa·s, more than 0.</param>
    /// <remarks>Below Re 1 it goes to zero in proportion with the flow, as laminar flow does.</remarks>
    public static double GradientPaPerM(
        double flowM3PerS,
        double innerDiameterM,
        double roughnessM,
        double densityKgPerM3,
        double viscosityPaS
    )
    {
        var reynolds = Reynolds(flowM3PerS, innerDiameterM, densityKgPerM3, viscosityPaS);
        var velocity = Fittings.VelocityMPerS(flowM3PerS, innerDiameterM);
        if (reynolds < ChurchillFriction.LowestReynolds)
        {
            return 32 * viscosityPaS * velocity / (innerDiameterM * innerDiameterM);
        }

        var factor = ChurchillFriction.Factor(reynolds, roughnessM / innerDiameterM);
        return factor * densityKgPerM3 * velocity * Math.Abs(velocity) / (2 * innerDiameterM);
    }
}
