using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Fluids;

/// <summary>Boiling of water, for steam bubbles at pump inlets (NPSH) and in hot places under low pressure. Glycol mixtures boil a little higher, so this errs on the safe side.</summary>
/// <source>IAPWS R7-97(2012) (IF97), region 4, eqs. 30 and 31</source>
public static class Water
{
    private const double LowestC = 0;
    private const double HighestC = 200;
    private const double N1 = 0.11670521452767e4;
    private const double N2 = -0.72421316703206e6;
    private const double N3 = -0.17073846940092e2;
    private const double N4 = 0.12020824702470e5;
    private const double N5 = -0.32325550322333e7;
    private const double N6 = 0.14915108613530e2;
    private const double N7 = -0.48232657361591e4;
    private const double N8 = 0.40511340542057e6;
    private const double N9 = -0.23855557567849;
    private const double N10 = 0.65017534844798e3;

    /// <summary>Absolute pressure at which water boils at a temperature, Pa.</summary>
    /// <param name="temperatureC">°C, 0 to 200.</param>
    /// <returns>The pressure, or a problem outside the range.</returns>
    public static Result<double> SaturationPressurePa(double temperatureC)
    {
        if (temperatureC is not (>= LowestC and <= HighestC))
        {
            return FluidProblems.OutsideSaturationLine(
                nameof(temperatureC),
                temperatureC.ToString("0.##", CultureInfo.InvariantCulture) + " °C",
                "0 to 200 °C"
            );
        }

        return Saturation(temperatureC);
    }

    /// <summary>Temperature at which water boils under an absolute pressure, °C.</summary>
    /// <param name="pressurePa">Absolute pressure, Pa, 611.213 to 1.55 MPa (the pressures of 0 and 200 °C).</param>
    /// <returns>The temperature, or a problem outside the range.</returns>
    public static Result<double> BoilingPointC(double pressurePa)
    {
        if (!(pressurePa >= Saturation(LowestC) && pressurePa <= Saturation(HighestC)))
        {
            return FluidProblems.OutsideSaturationLine(
                nameof(pressurePa),
                pressurePa.ToString("0.##", CultureInfo.InvariantCulture) + " Pa",
                "612 Pa to 1.55 MPa, absolute"
            );
        }

        var beta = Math.Pow(pressurePa / 1e6, 0.25);
        var e = beta * beta + N3 * beta + N6;
        var f = N1 * beta * beta + N4 * beta + N7;
        var g = N2 * beta * beta + N5 * beta + N8;
        var d = 2 * g / (-f - Math.Sqrt(f * f - 4 * e * g));
        var sum = N10 + d;
        return (sum - Math.Sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2 - 273.15;
    }

    private static double Saturation(double temperatureC)
    {
        var kelvin = temperatureC + 273.15;
        var theta = kelvin + N9 / (kelvin - N10);
        var a = theta * theta + N1 * theta + N2;
        var b = N3 * theta * theta + N4 * theta + N5;
        var c = N6 * theta * theta + N7 * theta + N8;
        return 1e6 * Math.Pow(2 * c / (-b + Math.Sqrt(b * b - 4 * a * c)), 4);
    }
}
