using System.Collections.Immutable;
using Hypocaust.Answers;

namespace Hypocaust.Plant;

/// <summary>Temperatures and heat of a network at given flows.</summary>
/// <param name="NodesC">Temperature of each node, °C; null where the water stands still.</param>
/// <param name="InletsC">Water entering each branch, °C.</param>
/// <param name="OutletsC">Water leaving each branch, °C.</param>
/// <param name="HeatsW">Heat taken up in each branch, W; negative where it gives heat.</param>
/// <param name="HeaterStates">What each heater is doing; null for other branches.</param>
/// <param name="EnergyResidual">Largest imbalance of a node over the largest heat of a branch, at least 1 W.</param>
/// <param name="Settled">Whether the heaters' states agree with the temperatures.</param>
public sealed record TemperatureField(
    ImmutableArray<double?> NodesC,
    ImmutableArray<double?> InletsC,
    ImmutableArray<double?> OutletsC,
    ImmutableArray<double> HeatsW,
    ImmutableArray<HeaterState?> HeaterStates,
    double EnergyResidual,
    bool Settled
)
{
    /// <summary>Mean of inlet and outlet of a branch, °C; null where the water stands still.</summary>
    public double? MeanC(int branch) => (InletsC[branch] + OutletsC[branch]) / 2;
}
