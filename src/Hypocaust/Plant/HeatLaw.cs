namespace Hypocaust.Plant;

/// <summary>What happens to the heat of water that passes a branch.</summary>
public abstract record HeatLaw
{
    /// <summary>Nothing: it leaves as it came.</summary>
    public static HeatLaw None { get; } = new Exchange(0, 0);

    /// <summary>It cools or warms towards a temperature: T_out = T_e + (T_in − T_e)·exp(−UA/(m·c_p)).</summary>
    /// <param name="ConductanceWPerK">UA, W/K, 0 or more.</param>
    /// <param name="AmbientC">T_e, °C.</param>
    public sealed record Exchange(double ConductanceWPerK, double AmbientC) : HeatLaw;

    /// <summary>A heater warms it to a set point as far as its power reaches.</summary>
    /// <param name="SetPointC">Set point, °C.</param>
    /// <param name="CapacityW">Power, W; 0 when it is off.</param>
    /// <param name="MinimumFlowKgPerS">Flow below which it stays off, kg/s.</param>
    public sealed record Heater(double SetPointC, double CapacityW, double MinimumFlowKgPerS)
        : HeatLaw
    {
        /// <summary>A heater that is off: it gives nothing, whatever its set point.</summary>
        public static Heater SwitchedOff { get; } = new(0, 0, 0);
    }

    /// <summary>A fixed heat input.</summary>
    /// <param name="HeatW">Heat to the water, W.</param>
    public sealed record Input(double HeatW) : HeatLaw;
}
