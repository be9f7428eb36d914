namespace Hypocaust.Design;

/// <summary>What a two-port part in the pipe does besides resisting flow.</summary>
public enum InlineFunction
{
    /// <summary>Shut-off valve: stops the flow when it is shut.</summary>
    ShutOff,

    /// <summary>Check valve: lets water pass one way.</summary>
    Check,

    /// <summary>Strainer: catches dirt.</summary>
    Strainer,

    /// <summary>Air separator: catches bubbles and lets them out.</summary>
    AirSeparator,

    /// <summary>Dirt separator.</summary>
    DirtSeparator,

    /// <summary>Flow meter.</summary>
    FlowMeter,

    /// <summary>Flow switch.</summary>
    FlowSwitch,

    /// <summary>Purge valve: shut-off with a drain on one side, to fill and flush.</summary>
    Purge,
}

/// <summary>A part with an inlet and an outlet that resists the flow.</summary>
[Kind("inline")]
[Meaning("A part in the pipe: valve, check valve, strainer, separator, meter.")]
public sealed record InlinePart(
    [Meaning("What it does.")] InlineFunction Function,
    [Meaning("Flow coefficient, open.")] [Within(0.05, 2000)] FlowCoefficient Kv,
    [Meaning("Pressure at which a check valve opens.")]
    [Default("0 kPa")]
    [Within(0, 50000)]
        Pressure Opens = default,
    [Meaning("Highest pressure that it stands.")] [Within(10000, 1e8)] Pressure? MaxPressure = null,
    [Meaning("Whether iron or steel touches the water.")] bool Iron = false
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;

    /// <inheritdoc/>
    public override bool HasIron => Iron;
}

/// <summary>A safety relief valve.</summary>
[Kind("relief")]
[Meaning("A safety relief valve on a tee.")]
public sealed record ReliefPart(
    [Meaning("Pressure at which it opens.")] [Within(20000, 2e6)] Pressure Opens,
    [Meaning("Heat that it can let off as steam, from its label.")]
    [Within(100, 1e7)]
        Power? Capacity = null
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure => null;
}

/// <summary>A closed expansion vessel.</summary>
[Kind("vessel")]
[Meaning("A closed expansion vessel on a tee.")]
public sealed record VesselPart(
    [Meaning("Nominal volume.")] [Within(0.0005, 2)] Volume Size,
    [Meaning("Highest pressure that it stands.")] [Within(10000, 1e8)] Pressure? MaxPressure = null
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;

    /// <inheritdoc/>
    public override bool HasIron => true;
}

/// <summary>What a part on a tee does.</summary>
public enum TappingFunction
{
    /// <summary>Thermometer.</summary>
    Thermometer,

    /// <summary>Pressure gauge.</summary>
    Gauge,

    /// <summary>Automatic or manual air vent.</summary>
    AirVent,

    /// <summary>Valve to fill.</summary>
    Fill,

    /// <summary>Valve to drain.</summary>
    Drain,
}

/// <summary>A small part on a tee or well through which nothing flows in running.</summary>
[Kind("tapping")]
[Meaning("A thermometer, gauge, vent, fill or drain valve on a tee.")]
public sealed record TappingPart(
    [Meaning("What it does.")] TappingFunction Function,
    [Meaning("Highest pressure that it stands.")] [Within(10000, 1e8)] Pressure? MaxPressure = null
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;
}

/// <summary>A tee: three ports at one point.</summary>
[Kind("tee")]
[Meaning("A tee: ports a, b and c at one point.")]
public sealed record TeePart(
    [Meaning("Highest pressure that it stands.")] [Within(10000, 1e8)] Pressure? MaxPressure = null
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;
}

/// <summary>Two tees close together that join a primary and a secondary circuit so that neither pump disturbs the other.</summary>
[Kind("closelySpacedTees")]
[Meaning("Two tees close together: ports primaryIn, secondaryOut, secondaryIn, primaryOut.")]
public sealed record CloselySpacedTeesPart(
    [Meaning("Inner diameter of the piece between.")] [Within(0.005, 0.3)] Length Inner,
    [Meaning("Distance of the branches, centre to centre.")] [Within(0.01, 5)] Length Spacing
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure => null;
}

/// <summary>A supply and a return bar with a valve for each loop.</summary>
[Kind("manifold")]
[Meaning("Supply and return bar with a valve for each loop: ports supply and return.")]
public sealed record ManifoldPart(
    [Meaning("Number of loops that it can take.")] [Within(1, 30)] int Outlets,
    [Meaning("Flow coefficient of one loop's valves, fully open.")]
    [Default("Kv 1.2")]
    [Within(0.05, 50)]
        FlowCoefficient ValveKv = default,
    [Meaning("Water in both bars.")] [Default("0.8 L")] [Within(0, 0.1)] Volume Water = default,
    [Meaning("Whether it has air vents.")] bool Vents = false,
    [Meaning("Whether it has fill and drain valves.")] bool FillAndDrain = false,
    [Meaning("Highest pressure that it stands.")] [Within(10000, 1e8)] Pressure? MaxPressure = null,
    [Meaning("Whether iron or steel touches the water.")] bool Iron = false
) : Part
{
    /// <inheritdoc/>
    public override Pressure? MaxPressure { get; } = MaxPressure;

    /// <inheritdoc/>
    public override bool HasIron => Iron;
}
