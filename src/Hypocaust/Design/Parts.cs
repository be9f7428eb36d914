using System.Collections.Immutable;

namespace Hypocaust.Design;

/// <summary>A part on the shelf: what it does to water, heat and pressure.</summary>
[Meaning("A part on the shelf.")]
public abstract record Part
{
    /// <summary>Highest pressure that it stands, Pa above atmosphere; null where nobody said.</summary>
    public abstract Pressure? MaxPressure { get; }

    /// <summary>Whether iron or steel in it touches the water.</summary>
    public virtual bool HasIron => false;
}

/// <summary>Of what a pipe is made.</summary>
public enum PipeMaterial
{
    /// <summary>Copper tube.</summary>
    Copper,

    /// <summary>Steel pipe.</summary>
    Steel,

    /// <summary>Cross-linked polyethylene.</summary>
    Pex,

    /// <summary>Polyethylene of raised temperature resistance.</summary>
    Pert,

    /// <summary>Plastic with an aluminium layer.</summary>
    Multilayer,
}

/// <summary>Pipe or tube by the metre.</summary>
[Kind("pipe")]
[Meaning("Pipe or tube by the metre.")]
public sealed record PipePart(
    [Meaning("Of what it is made.")] PipeMaterial Material,
    [Meaning("Inner diameter.")] [Within(0.002, 0.3)] Length Inner,
    [Meaning("Outer diameter.")] [Within(0.003, 0.35)] Length Outer,
    [Meaning("Roughness of the inside.")]
    [Default("0.0015 mm")]
    [Within(0, 0.005)]
        Length Roughness = default,
    [Meaning("Whether the tube keeps oxygen out (metal does; plastic needs a barrier layer).")]
        bool OxygenBarrier = true,
    [Meaning("Highest pressure that it stands at the highest temperature.")]
    [Within(10000, 1e8)]
        Pressure? MaxPressure = null,
    [Meaning("Highest water temperature for it.")]
    [Within(20, 200)]
        Temperature? MaxTemperature = null,
    [Meaning("Where these figures come from.")] string? Source = null
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;

    /// <inheritdoc/>
    public override bool HasIron => Material == PipeMaterial.Steel;
}

/// <summary>A heater with a water set point.</summary>
[Kind("heater")]
[Meaning("A heater with a water set point.")]
public sealed record HeaterPart(
    [Meaning("Heat that it can give.")] [Within(100, 1e6)] Power Capacity,
    [Meaning("Flow below which it does not switch on.")]
    [Default("0 L/min")]
    [Within(0, 0.1)]
        VolumeFlow MinimumFlow = default,
    [Meaning("Whether a flow switch inside turns it on.")] bool FlowActivated = false,
    [Meaning("Flow coefficient through it.")]
    [Default("Kv 3")]
    [Within(0.05, 500)]
        FlowCoefficient Kv = default,
    [Meaning("Water inside.")] [Default("1 L")] [Within(0, 5)] Volume Water = default,
    [Meaning("Highest pressure that it stands.")] [Within(10000, 1e8)] Pressure? MaxPressure = null,
    [Meaning("Highest set point.")] [Within(20, 120)] Temperature? MaxTemperature = null,
    [Meaning("Whether iron or steel touches the water.")] bool Iron = false
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;

    /// <inheritdoc/>
    public override bool HasIron => Iron;
}

/// <summary>One point of a circulator's curve.</summary>
[Meaning("One point of a circulator's curve.")]
public sealed record CurvePoint(
    [Meaning("Flow.")] [Within(0, 0.1)] VolumeFlow Flow,
    [Meaning("Head in metres or feet of the pumped fluid.")] [Within(0, 200)] Length Head
);

/// <summary>One speed of a circulator.</summary>
[Meaning("One speed of a circulator: three or more points of its curve.")]
public sealed record PumpSpeed(
    [Meaning("Three or more points of the curve, from no flow to the largest.")]
        ImmutableArray<CurvePoint> Curve,
    [Meaning("Electric power in the middle of the curve.")] [Within(0, 5000)] Power? Power = null
);

/// <summary>A circulator.</summary>
[Kind("circulator")]
[Meaning("A circulator (pump) with one or more speeds.")]
public sealed record CirculatorPart(
    [Meaning("Its speeds, slowest first.")] ImmutableArray<PumpSpeed> Speeds,
    [Meaning("Flow coefficient through it when it stands.")]
    [Default("Kv 4")]
    [Within(0.05, 500)]
        FlowCoefficient StandingKv = default,
    [Meaning("Whether its flanges or unions have shut-off valves.")] bool Isolating = false,
    [Meaning("Whether a check valve is built in.")] bool CheckValve = false,
    [Meaning("Highest pressure that it stands.")] [Within(10000, 1e8)] Pressure? MaxPressure = null,
    [Meaning("Whether iron or steel touches the water.")] bool Iron = false
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;

    /// <inheritdoc/>
    public override bool HasIron => Iron;
}
