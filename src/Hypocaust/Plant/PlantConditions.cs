using Hypocaust.Fluids;

namespace Hypocaust.Plant;

/// <summary>How a loop's floor takes heat at a flow and fluid: UA and the temperature towards which the water cools.</summary>
/// <param name="loop">Index of the loop in the floor.</param>
/// <param name="flowKgPerS">Mass flow, kg/s, 0 or more.</param>
/// <param name="fluid">The fluid at the loop's mean temperature.</param>
public delegate HeatLaw.Exchange LoopHeat(int loop, double flowKgPerS, FluidState fluid);

/// <summary>What surrounds the plant.</summary>
/// <param name="Fluid">The fluid in it.</param>
/// <param name="SurroundingsC">Air around the pipes, °C.</param>
/// <param name="LoopHeat">How the floor takes heat.</param>
public sealed record PlantConditions(Fluid Fluid, double SurroundingsC, LoopHeat LoopHeat);
