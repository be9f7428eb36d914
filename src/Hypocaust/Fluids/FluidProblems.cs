using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Fluids;

/// <summary>Every problem that this module can report.</summary>
internal static class FluidProblems
{
    public static Problem WaterWithFraction(double fraction) =>
        new(
            "fluid-water-with-fraction",
            "volumeFraction",
            $"plain water cannot contain {Percent(fraction)} of something",
            "give 0 %, or name the glycol"
        );

    public static Problem FractionOutOfRange(string place, double fraction, double highest) =>
        new(
            "fluid-fraction-out-of-range",
            place,
            $"the published tables do not reach {Percent(fraction)} of this antifreeze",
            $"choose 0 % to {Percent(highest)}"
        );

    public static Problem TooCold(double temperatureC, Fluid fluid) =>
        temperatureC < fluid.FreezingPointC
            ? new(
                "fluid-frozen",
                "temperatureC",
                $"at {Celsius(temperatureC)} this fluid holds ice: its first crystals form at {Celsius(fluid.FreezingPointC)}",
                "keep it warmer, or mix in more antifreeze"
            )
            : new(
                "fluid-too-cold",
                "temperatureC",
                $"there are no published properties of this mixture at {Celsius(temperatureC)}",
                $"stay at or above {Celsius(fluid.LowestC)}"
            );

    public static Problem TooHot(double temperatureC, Fluid fluid) =>
        new(
            "fluid-too-hot",
            "temperatureC",
            $"there are no published properties of this fluid at {Celsius(temperatureC)}",
            $"stay at or below {Celsius(fluid.HighestC)}"
        );

    public static Problem NotANumber(string place) =>
        new("fluid-not-a-number", place, "this is not a number", "give a finite number");

    public static Problem OutsideSaturationLine(string place, string value, string range) =>
        new(
            "water-outside-saturation-line",
            place,
            $"water does not boil at {value} in the range that is tabulated",
            $"stay within {range}"
        );

    private static string Percent(double fraction) =>
        (100 * fraction).ToString("0.###", CultureInfo.InvariantCulture) + " %";

    private static string Celsius(double temperatureC) =>
        temperatureC.ToString("0.##", CultureInfo.InvariantCulture) + " °C";
}
