namespace Hypocaust.Floor;

/// <summary>Water cooling along one loop.</summary>
/// <param name="Ntu">Number of transfer units G A/(m c_p); infinite for still water.</param>
/// <param name="Effectiveness">Share 1 − e^(−NTU) of the greatest possible temperature drop, 0 to 1.</param>
/// <param name="ReturnC">Water temperature at the outlet in °C.</param>
/// <param name="DropK">Supply minus return in K, without the cancellation of subtracting them.</param>
/// <param name="MeanWaterC">Mean water temperature along the loop in °C (T_e plus the logarithmic mean excess over it).</param>
/// <param name="HeatW">Heat out of the water in W.</param>
public sealed record LoopCooling(
    double Ntu,
    double Effectiveness,
    double ReturnC,
    double DropK,
    double MeanWaterC,
    double HeatW
)
{
    internal static LoopCooling Of(
        double conductanceWPerK,
        double ambientC,
        double supplyC,
        double capacityRateWPerK
    )
    {
        var over = supplyC - ambientC;
        if (capacityRateWPerK == 0)
        {
            return new LoopCooling(double.PositiveInfinity, 1, ambientC, over, ambientC, 0);
        }

        var ntu = conductanceWPerK / capacityRateWPerK;
        var effectiveness = -Exponential.MinusOne(-ntu);
        return new LoopCooling(
            ntu,
            effectiveness,
            supplyC - over * effectiveness,
            over * effectiveness,
            ambientC + over * (ntu == 0 ? 1 : effectiveness / ntu),
            capacityRateWPerK * over * effectiveness
        );
    }
}
