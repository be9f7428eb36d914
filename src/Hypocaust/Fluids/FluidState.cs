namespace Hypocaust.Fluids;

/// <summary>Properties of a liquid at one temperature, at 0.1 MPa; at 0.3 MPa absolute none of water's differs by more than 0.03 %.</summary>
/// <param name="DensityKgPerM3">Density, kg/m³.</param>
/// <param name="HeatCapacityJPerKgK">Specific heat capacity at constant pressure, J/(kg·K).</param>
/// <param name="ViscosityPaS">Dynamic viscosity, Pa·s.</param>
/// <param name="ConductivityWPerMK">Thermal conductivity, W/(m·K).</param>
public readonly record struct FluidState(
    double DensityKgPerM3,
    double HeatCapacityJPerKgK,
    double ViscosityPaS,
    double ConductivityWPerMK
)
{
    /// <summary>Prandtl number cp·μ/k, dimensionless.</summary>
    public double Prandtl => HeatCapacityJPerKgK * ViscosityPaS / ConductivityWPerMK;

    /// <summary>Kinematic viscosity μ/ρ, m²/s.</summary>
    public double KinematicViscosityM2PerS => ViscosityPaS / DensityKgPerM3;
}
