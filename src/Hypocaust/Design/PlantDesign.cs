using System.Collections.Immutable;
using Hypocaust.Fluids;

namespace Hypocaust.Design;

/// <summary>How the parts are piped.</summary>
[Meaning("How the parts are piped.")]
public sealed record PlantDesign(
    [Meaning("What is in the pipes.")] FluidDesign Fluid,
    [Meaning("The parts in place, by name.")] Named<PlantItem> Items,
    [Meaning("Runs of pipe from part to part.")] ImmutableArray<PipeRun> Runs,
    [Meaning("Pressure at the expansion vessel when the system is cold and full.")]
    [Default("1.2 bar")]
    [Within(0, 1e6)]
        Pressure ColdFill = default,
    [Meaning("Temperature at which it is filled.")]
    [Default("10 °C")]
    [Within(0, 40)]
        Temperature FillTemperature = default,
    [Meaning("Air around the pipes.")]
    [Default("15 °C")]
    [Within(-30, 40)]
        Temperature Surroundings = default,
    [Meaning(
        "Coldest place in which any part or pipe stands when the heating is off; left out, a heated room."
    )]
    [Within(-60, 30)]
        Temperature? ColdestPlace = null
);

/// <summary>The fluid.</summary>
[Meaning("What is in the pipes.")]
public sealed record FluidDesign(
    [Meaning("Water or antifreeze mix.")] FluidKind Kind,
    [Meaning("Share of antifreeze by volume.")]
    [Default("0 %")]
    [Within(0, 0.6)]
        Fraction Share = default
);

/// <summary>A part in its place.</summary>
[Meaning("A part in its place.")]
public sealed record PlantItem(
    [Meaning("Name of the part on your shelf or in the built-in list.")] string Part,
    [Meaning("Height above the floor.")] [Default("1 m")] [Within(-10, 30)] Length Height = default,
    [Meaning("Heater: water temperature to which it heats.")]
    [Within(5, 120)]
        Temperature? SetPoint = null,
    [Meaning("Circulator: which of its speeds, 1 the slowest.")] [Within(1, 10)] int? Speed = null,
    [Meaning("Circulator or heater: switched off.")] bool Off = false,
    [Meaning("Valve: shut.")] bool Shut = false,
    [Meaning("Expansion vessel: gas pressure before filling.")]
    [Within(0, 1e6)]
        Pressure? Precharge = null,
    [Meaning("Anything you want to remember.")] string? Note = null
);

/// <summary>A run of pipe through parts.</summary>
[Meaning("A run of pipe: parts and pipe lengths in the order in which the water meets them.")]
public sealed record PipeRun(
    [Meaning("Name of the pipe on your shelf or in the built-in list.")] string Pipe,
    [Meaning("Parts (\"heater.out\", \"pump\") and, between them, pipe (\"1.2 m, 2 elbows\").")]
        ImmutableArray<RunStep> Run,
    [Meaning("Thickness of insulation around the pipe.")]
    [Default("0 mm")]
    [Within(0, 0.3)]
        Length Insulation = default
);
