using System.Globalization;
using Hypocaust.Answers;

namespace Hypocaust.Web.Plant;

/// <summary>States of the plant in words.</summary>
internal static class PlantWords
{
    /// <summary>What a heater is doing.</summary>
    public static string Of(HeaterState state) =>
        state switch
        {
            HeaterState.HoldsSetPoint => "holds its set point",
            HeaterState.FullPower => "gives all it has",
            HeaterState.Idle => "water comes in warm enough",
            HeaterState.FlowTooSmall => "flow too small to switch on",
            _ => "off",
        };

    /// <summary>What a circulator is doing.</summary>
    public static string Of(CirculatorAnswer pump) =>
        pump.Running
            ? string.Create(CultureInfo.InvariantCulture, $"speed {pump.Speed} of {pump.Speeds}")
            : "off";
}
