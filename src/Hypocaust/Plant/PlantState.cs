using System.Collections.Immutable;
using Hypocaust.Fluids;
using Hypocaust.Hydraulics;

namespace Hypocaust.Plant;

/// <summary>The steady state of a plant: flows, pressures and temperatures that fit together.</summary>
/// <param name="Graph">The piping.</param>
/// <param name="Flow">Flows and pressures; pressures count from the vessel's connection.</param>
/// <param name="Heat">Temperatures and heat.</param>
/// <param name="Curves">Curve of each running circulator, by branch.</param>
/// <param name="Fluids">The fluid in each branch at its mean temperature.</param>
/// <param name="MeanFluid">The fluid at the mean temperature of the plant; its specific heat holds for the whole plant.</param>
/// <param name="MeanC">That temperature, °C.</param>
/// <param name="Rounds">Rounds of flow and heat.</param>
/// <param name="NewtonSteps">Newton steps in all rounds.</param>
/// <param name="Settled">Whether flow and heat agree to their tolerances.</param>
/// <param name="OutsideFluidRangeC">A temperature at which the fluid's properties are not known, °C; null where all are.</param>
internal sealed record PlantState(
    PlantGraph Graph,
    NetworkSolution Flow,
    TemperatureField Heat,
    ImmutableDictionary<int, PumpCurve> Curves,
    ImmutableArray<FluidState> Fluids,
    FluidState MeanFluid,
    double MeanC,
    int Rounds,
    int NewtonSteps,
    bool Settled,
    double? OutsideFluidRangeC
);
