using Hypocaust.Hydraulics;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>The law of a branch written out from the single formulas, term by term in volume flow: a second way to the solver's arrays.</summary>
internal static class IndependentLaws
{
    private const double Gravity = 9.80665;

    /// <summary>p(from) − p(to), Pa, that a mass flow needs; of a check valve for forward flow.</summary>
    public static double DifferencePa(
        Network network,
        NetworkConditions conditions,
        int index,
        double flowKgPerS
    )
    {
        var branch = network.Branches[index];
        var density = conditions.DensitiesKgPerM3[index];
        var flow = flowKgPerS / density;
        var rise =
            network.Nodes[network.NodeIndex(branch.To)].ElevationM
            - network.Nodes[network.NodeIndex(branch.From)].ElevationM;
        var sum = density * Gravity * rise;
        if (branch.LengthM > 0)
        {
            sum +=
                branch.LengthM
                * PipeFriction.GradientPaPerM(
                    flow,
                    branch.InnerDiameterM,
                    branch.RoughnessM,
                    density,
                    conditions.ViscositiesPaS[index]
                );
        }

        var k =
            flow < 0
                ? branch.ReverseLossCoefficient ?? branch.LossCoefficient
                : branch.LossCoefficient;
        sum += Fittings.LossOfKPa(k, Fittings.VelocityMPerS(flow, branch.InnerDiameterM), density);
        if (branch.KvM3PerH is { } kv)
        {
            sum += Fittings.LossOfKvPa(kv, flow, density);
        }

        sum += branch.IsCheckValve
            ? branch.CrackingPressurePa
            : branch.CrackingPressurePa * flow / Math.Sqrt((flow * flow) + 1e-12);
        return branch.Pump is { } pump
            ? sum - PumpPa(pump, conditions.PumpSpeedRatios[index], flow, density)
            : sum;
    }

    private static double PumpPa(PumpLaw pump, double n, double flow, double density)
    {
        if (n == 0 && pump.StoppedKvM3PerH is { } kv)
        {
            return -Fittings.LossOfKvPa(kv, flow, density);
        }

        var scale = density / pump.ReferenceDensityKgPerM3!.Value;
        return scale
            * (
                (n * n * pump.ShutOffPressurePa)
                - (n * pump.LinearPaSPerM3 * flow)
                - (pump.QuadraticPaS2PerM6 * flow * Math.Abs(flow))
            );
    }
}
