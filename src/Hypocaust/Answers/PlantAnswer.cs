using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Answers;

/// <summary>What flows where, at what pressure and temperature, with the rooms at their temperature and the plant running.</summary>
[Meaning(
    "What flows where, at what pressure and temperature, with the rooms at their temperature and the plant running."
)]
public sealed record PlantAnswer(
    [property: Meaning("The fluid.")] FluidAnswer Fluid,
    [property: Meaning("The heater; of several, all together with the values of the first.")]
        HeaterAnswer? Heater,
    [property: Meaning("All heaters.")] ImmutableArray<HeaterAnswer> Heaters,
    [property: Meaning("Circulators and where they work.")]
        ImmutableArray<CirculatorAnswer> Circulators,
    [property: Meaning("Pairs of closely spaced tees.")] ImmutableArray<TeesAnswer> Tees,
    [property: Meaning("Every item: what a thermometer and a gauge there would show.")]
        ImmutableArray<ItemAnswer> Items,
    [property: Meaning("Every piece of pipe.")] ImmutableArray<PipeAnswer> Pipes,
    [property: Meaning("Volumes, expansion and pressures at rest.")] FillAnswer Fill,
    [property: Meaning("Heat lost from pipes outside the floor, W.")] double PipeLossW,
    [property: Meaning("How well the reported state solves the equations.")]
        ConvergenceAnswer Convergence,
    [property: Meaning("What the solver had to assume or could not determine, in words.")]
        ImmutableArray<string> Notes
);

/// <summary>The fluid as it is in running.</summary>
[Meaning("The fluid as it is in running.")]
public sealed record FluidAnswer(
    [property: Meaning("In words, for example \"propylene glycol 35 %\".")] string Name,
    [property: Meaning("Share of antifreeze by volume.")] double AntifreezeShare,
    [property: Meaning("Freezing point (first crystals), °C.")] double FreezingPointC,
    [property: Meaning("Temperature at which the values below hold, °C.")] double TemperatureC,
    [property: Meaning("Density, kg/m³.")] double DensityKgPerM3,
    [property: Meaning("Heat capacity, J/kgK.")] double HeatCapacityJPerKgK,
    [property: Meaning("Viscosity, Pa s.")] double ViscosityPaS
);

/// <summary>What a heater is doing.</summary>
public enum HeaterState
{
    /// <summary>It holds its set point.</summary>
    HoldsSetPoint,

    /// <summary>It gives all it has and the water stays below the set point.</summary>
    FullPower,

    /// <summary>The water comes in as warm as the set point.</summary>
    Idle,

    /// <summary>The flow is too small to switch it on.</summary>
    FlowTooSmall,

    /// <summary>It is switched off.</summary>
    Off,
}

/// <summary>A heater in running.</summary>
[Meaning("A heater in running.")]
public sealed record HeaterAnswer(
    [property: Meaning("Name of the item.")] string Item,
    [property: Meaning("What it is doing.")] HeaterState State,
    [property: Meaning("Heat delivered to the water, W.")] double DeliveredW,
    [property: Meaning("Heat that it could give, W.")] double CapacityW,
    [property: Meaning("Set point, °C; null for a heater that is off without one.")]
        double? SetPointC,
    [property: Meaning("Water in, °C; null where it stands still.")] double? InC,
    [property: Meaning("Water out, °C.")] double? OutC,
    [property: Meaning("Mass flow, kg/s.")] double FlowKgPerS,
    [property: Meaning("Volume flow, m³/s.")] double FlowM3PerS,
    [property: Meaning("Smallest flow that it needs, m³/s.")] double MinimumFlowM3PerS
);

/// <summary>A circulator at its operating point.</summary>
[Meaning("A circulator at its operating point.")]
public sealed record CirculatorAnswer(
    [property: Meaning("Name of the item.")] string Item,
    [property: Meaning("Speed, 1 the slowest.")] int Speed,
    [property: Meaning("Number of speeds.")] int Speeds,
    [property: Meaning("Whether it runs.")] bool Running,
    [property: Meaning("Volume flow, m³/s; negative backwards.")] double FlowM3PerS,
    [property: Meaning("Head in metres of the fluid, m; negative where it only resists.")]
        double HeadM,
    [property: Meaning("Pressure rise, Pa.")] double RisePa,
    [property: Meaning("Pressure at its inlet, Pa above atmosphere; null where undetermined.")]
        double? InletPa,
    [property: Meaning("Electric power, W; null where the part does not say.")] double? PowerW,
    [property: Meaning("Largest flow of its curve at this speed, m³/s.")] double CurveEndM3PerS,
    [property: Meaning("Whether it works outside the given points of its curve.")]
        bool OutsideCurve,
    [property: Meaning("Coefficients a, b, c of head = a + b·Q + c·Q², head in m, Q in m³/h.")]
        ImmutableArray<double> CurveCoefficients
);

/// <summary>A pair of closely spaced tees.</summary>
[Meaning("A pair of closely spaced tees.")]
public sealed record TeesAnswer(
    [property: Meaning("Name of the item.")] string Item,
    [property: Meaning("Flow of the primary circuit, m³/s.")] double PrimaryFlowM3PerS,
    [property: Meaning("Flow of the secondary circuit, m³/s.")] double SecondaryFlowM3PerS,
    [property: Meaning(
        "Flow in the piece between, m³/s: positive when some primary water turns straight back, negative when secondary return mixes into the secondary supply."
    )]
        double BetweenFlowM3PerS,
    [property: Meaning("Water from the primary, °C.")] double? PrimaryC,
    [property: Meaning("Water to the secondary, °C.")] double? SecondaryC,
    [property: Meaning("Water back from the secondary, °C.")] double? SecondaryReturnC
);

/// <summary>One item of the plant.</summary>
[Meaning("One item of the plant.")]
public sealed record ItemAnswer(
    [property: Meaning("Name of the item.")] string Id,
    [property: Meaning("What it is, for example \"circulator\", \"thermometer\", \"check\".")]
        string Kind,
    [property: Meaning("Name of its part.")] string Part,
    [property: Meaning(
        "Water at its outlet (or where it taps the pipe), °C; null where it stands still."
    )]
        double? TemperatureC,
    [property: Meaning(
        "Pressure at its inlet (or where it taps the pipe), Pa above atmosphere; null where undetermined."
    )]
        double? PressurePa,
    [property: Meaning("Mass flow through it, kg/s; null where nothing flows through such a part.")]
        double? FlowKgPerS,
    [property: Meaning(
        "Pressure drop in the direction of flow, Pa; negative for a circulator; null where nothing flows through such a part."
    )]
        double? DropPa,
    [property: Meaning("Height above the floor, m.")] double HeightM
);

/// <summary>One piece of pipe between items.</summary>
[Meaning("One piece of pipe between items.")]
public sealed record PipeAnswer(
    [property: Meaning("Port where it starts, for example \"heater.out\".")] string From,
    [property: Meaning("Port where it ends.")] string To,
    [property: Meaning("Name of the pipe.")] string Pipe,
    [property: Meaning("Length, m.")] double LengthM,
    [property: Meaning("Inner diameter, m.")] double InnerM,
    [property: Meaning("Mass flow, kg/s, positive from its start to its end.")] double FlowKgPerS,
    [property: Meaning("Volume flow, m³/s.")] double FlowM3PerS,
    [property: Meaning("Velocity, m/s.")] double VelocityMPerS,
    [property: Meaning("Pressure drop from start to end, Pa.")] double DropPa,
    [property: Meaning("Water at its upstream end, °C; null where it stands still.")] double? InC,
    [property: Meaning("Water at its downstream end, °C.")] double? OutC,
    [property: Meaning("Heat lost to its surroundings, W.")] double LossW
);

/// <summary>Volumes and pressures at rest.</summary>
[Meaning("Volumes and pressures at rest.")]
public sealed record FillAnswer(
    [property: Meaning("Volume of the whole system, m³.")] double VolumeM3,
    [property: Meaning("Antifreeze in it, m³.")] double AntifreezeM3,
    [property: Meaning("Growth of the fluid from filling to its warmest, m³.")] double ExpansionM3,
    [property: Meaning("Warmest mean temperature for which that is counted, °C.")] double WarmestC,
    [property: Meaning("Cold filling pressure at the vessel, Pa above atmosphere.")] double ColdPa,
    [property: Meaning(
        "Pressure at the vessel when warm, Pa above atmosphere; null without a vessel."
    )]
        double? WarmPa,
    [property: Meaning("Smallest vessel by EN 12828's form, m³; null where it cannot be said.")]
        double? VesselNeededM3,
    [property: Meaning("Vessel installed, m³; null without one.")] double? VesselM3,
    [property: Meaning("Gas pressure in the vessel before filling, Pa above atmosphere.")]
        double? PrechargePa,
    [property: Meaning("Lowest relief valve setting, Pa above atmosphere; null without one.")]
        double? ReliefPa
);

/// <summary>How well the reported state solves the equations.</summary>
[Meaning("How well the reported state solves the equations.")]
public sealed record ConvergenceAnswer(
    [property: Meaning("Whether every equation is met to its tolerance.")] bool Converged,
    [property: Meaning(
        "Largest residual of the pressure equations over the largest pressure difference."
    )]
        double Residual,
    [property: Meaning("Largest imbalance of mass at a node over the largest flow.")]
        double MassResidual,
    [property: Meaning("Largest imbalance of heat at a node over the heat carried.")]
        double EnergyResidual,
    [property: Meaning("Rounds of flow and heat together.")] int Rounds,
    [property: Meaning("Newton steps of the network in all.")] int NewtonSteps,
    [property: Meaning("In words.")] string Status
);
