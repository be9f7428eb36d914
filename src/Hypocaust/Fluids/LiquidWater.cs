namespace Hypocaust.Fluids;

/// <summary>Liquid water at 0.1 MPa from −20 to 110 °C, below 0 °C supercooled.</summary>
/// <source>IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa, eqs. 2, 5, 7 and 8</source>
internal static class LiquidWater
{
    /// <summary>Lowest temperature of the formulation, °C.</summary>
    public const double LowestC = -20;

    /// <summary>Highest temperature of the formulation, °C.</summary>
    public const double HighestC = 110;

    private const double GasConstantJPerKgK = 461.51805;
    private const double PressurePa = 1e5;
    private const double ReducingTemperatureK = 10;
    private const double LogarithmicHeatCapacity = -8.983025854;
    private const double ConstantVolume = 1.93763157e-2;

    private static readonly Term[] HeatCapacityInAlpha =
    [
        new(-1.661470539e5, 4),
        new(2.708781640e6, 5),
        new(-1.557191544e8, 7),
    ];

    private static readonly Term[] HeatCapacityInBeta =
    [
        new(-8.237426256e-1, 2),
        new(1.908956353, 3),
        new(-2.017597384, 4),
        new(8.546361348e-1, 5),
    ];

    private static readonly Term[] VolumeInAlpha =
    [
        new(6.74458446e3, 4),
        new(-2.22521604e5, 5),
        new(1.00231247e8, 7),
        new(-1.63552118e9, 8),
        new(8.32299658e9, 9),
    ];

    private static readonly Term[] VolumeInBeta =
    [
        new(5.78545292e-3, 1),
        new(-1.53195665e-2, 2),
        new(3.11337859e-2, 3),
        new(-4.23546241e-2, 4),
        new(3.38713507e-2, 5),
        new(-1.19946761e-2, 6),
    ];

    private static readonly Term[] Viscosity =
    [
        new(280.68, -1.9),
        new(511.45, -7.7),
        new(61.131, -19.6),
        new(0.45903, -40),
    ];

    private static readonly Term[] Conductivity =
    [
        new(1.6630, -1.15),
        new(-1.7781, -3.4),
        new(1.1567, -6.0),
        new(-0.432115, -7.6),
    ];

    /// <summary>All properties at a temperature in °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −20 to 110 °C, or not a number.</exception>
    public static FluidState At(double temperatureC)
    {
        if (temperatureC is not (>= LowestC and <= HighestC))
        {
            throw new ArgumentOutOfRangeException(
                nameof(temperatureC),
                temperatureC,
                "−20 to 110 °C"
            );
        }

        var kelvin = temperatureC + 273.15;
        var alpha = ReducingTemperatureK / (593 - kelvin);
        var beta = ReducingTemperatureK / (kelvin - 232);
        var reduced = kelvin / 300;
        return new FluidState(
            1 / Volume(alpha, beta),
            HeatCapacity(kelvin, alpha, beta),
            1e-6 * Sum(Viscosity, reduced),
            Sum(Conductivity, reduced)
        );
    }

    private static double Volume(double alpha, double beta) =>
        GasConstantJPerKgK
        * ReducingTemperatureK
        / PressurePa
        * (ConstantVolume + Sum(VolumeInAlpha, alpha) + Sum(VolumeInBeta, beta));

    private static double HeatCapacity(double kelvin, double alpha, double beta) =>
        -GasConstantJPerKgK
        * (
            LogarithmicHeatCapacity
            + kelvin
                / ReducingTemperatureK
                * (
                    SecondDerivative(HeatCapacityInAlpha, alpha)
                    + SecondDerivative(HeatCapacityInBeta, beta)
                )
        );

    private static double SecondDerivative(Term[] terms, double x) =>
        terms.Sum(term =>
            term.Exponent * (term.Exponent + 1) * term.Factor * Math.Pow(x, term.Exponent + 2)
        );

    private static double Sum(Term[] terms, double x) =>
        terms.Sum(term => term.Factor * Math.Pow(x, term.Exponent));

    private readonly record struct Term(double Factor, double Exponent);
}
