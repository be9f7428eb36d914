using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Building;

/// <summary>Every problem that this module can report.</summary>
internal static class BuildingProblems
{
    public static Problem? AboveZero(string place, double value, string unit) =>
        double.IsFinite(value) && value > 0
            ? null
            : new(
                "building-not-above-zero",
                place,
                $"the value {With(value, unit)} cannot be",
                $"give a figure above {With(0, unit)}"
            );

    public static Problem? NotNegative(string place, double value, string unit) =>
        double.IsFinite(value) && value >= 0
            ? null
            : new(
                "building-negative",
                place,
                $"the value {With(value, unit)} cannot be",
                $"give {With(0, unit)} or more"
            );

    public static Problem? Fraction(string place, double value) =>
        value is >= 0 and <= 1
            ? null
            : new(
                "building-not-a-fraction",
                place,
                $"the value {Text(value)} is not a fraction",
                "give a figure from 0 to 1"
            );

    public static Problem? Between(
        string place,
        double value,
        double low,
        double high,
        string unit
    ) =>
        value >= low && value <= high
            ? null
            : new(
                "building-out-of-range",
                place,
                $"the value {With(value, unit)} is outside what this method covers",
                $"give a figure from {Text(low)} to {Text(high)} {unit}"
            );

    public static Problem NoLayers(string element) =>
        new(
            "building-no-layers",
            element,
            "the element has no layers",
            "list its layers from inside to outside, or give its U-value"
        );

    public static Problem BridgeTooStrong(LayeredElement element) =>
        new(
            "building-bridge-too-strong",
            element.Name,
            $"something conducts so well through the insulation that the U-value is uncertain by {Text(100 * element.LargestRelativeError)} %",
            "use a tested or computed U-value for this construction, or cover the bridge with continuous insulation"
        );

    public static Problem EdgeInsulationUseless(double resistanceM2KPerW, double soilM2KPerW) =>
        new(
            "building-edge-insulation-useless",
            "edgeInsulation",
            $"its {Text(resistanceM2KPerW)} m²K/W are no more than the {Text(soilM2KPerW)} m²K/W of the soil it replaces",
            "leave it out, or check its thickness and conductivity"
        );

    public static Problem UnknownMaterial(string name, ImmutableArray<string> similar) =>
        new(
            "building-unknown-material",
            "material",
            $"there is no material called “{name}” in the table",
            "use one of these names, or give its conductivity: " + string.Join(", ", similar)
        );

    public static Problem NoZones() =>
        new("building-no-zones", "zones", "the building has no zone", "describe at least one room");

    public static Problem SameName(string name) =>
        new(
            "building-same-name",
            name,
            $"two zones are called “{name}”",
            "give each zone a name of its own"
        );

    public static Problem UnknownZone(string place, string name) =>
        new(
            "building-unknown-zone",
            place,
            $"there is no other zone called “{name}”",
            "name the zone on the far side of this element"
        );

    private static string With(double value, string unit) => $"{Text(value)} {unit}".TrimEnd();

    private static string Text(double value) =>
        value.ToString("0.####", CultureInfo.InvariantCulture);
}
