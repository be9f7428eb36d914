using Hypocaust.Problems;
using Hypocaust.Quantities;

namespace Hypocaust.Building;

/// <summary>Dry air at the pressure of an altitude.</summary>
/// <param name="AltitudeM">Above sea level, m.</param>
/// <param name="TemperatureC">°C.</param>
/// <param name="PressurePa">Standard pressure of the altitude, Pa.</param>
/// <param name="DensityKgPerM3">kg/m³.</param>
/// <source>ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 3 (standard atmosphere) and eq. 26 (gas constant 287.042 J/(kg·K)); cp 1006 J/(kg·K)</source>
public sealed record DryAir(
    double AltitudeM,
    double TemperatureC,
    double PressurePa,
    double DensityKgPerM3
)
{
    private const double GasConstantJPerKgK = 287.042;
    private const double HeatCapacityJPerKgK = 1006;

    /// <summary>Heat capacity per volume, J/(m³·K).</summary>
    public double HeatCapacityJPerM3K => DensityKgPerM3 * HeatCapacityJPerKgK;

    /// <summary>The air at an altitude and a temperature.</summary>
    /// <param name="altitudeM">−500 to 5000 m (the equation itself reaches to 10 000 m).</param>
    /// <param name="temperatureC">−90 to 60 °C.</param>
    /// <returns>The air, or the problems outside those ranges.</returns>
    public static Result<DryAir> At(double altitudeM, double temperatureC)
    {
        Problem?[] found =
        [
            BuildingProblems.Between("altitude", altitudeM, -500, 5000, "m"),
            BuildingProblems.Between("temperature", temperatureC, -90, 60, "°C"),
        ];
        var problems = found.OfType<Problem>().ToList();
        if (problems.Count > 0)
        {
            return Result<DryAir>.Failed(problems);
        }

        var pressurePa =
            PhysicalConstants.AtmospherePa * Math.Pow(1 - 2.25577e-5 * altitudeM, 5.2559);
        return new DryAir(
            altitudeM,
            temperatureC,
            pressurePa,
            pressurePa / (GasConstantJPerKgK * (temperatureC + 273.15))
        );
    }
}
