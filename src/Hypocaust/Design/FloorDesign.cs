using System.Collections.Immutable;
using Hypocaust.Floor;

namespace Hypocaust.Design;

/// <summary>The heated floor: how it is built and the tube loops in it.</summary>
[Meaning("The heated floor and its tube loops.")]
public sealed record FloorDesign(
    [Meaning("How the heated floor is built, by name.")] Named<FloorBuildUp> Sections,
    [Meaning("The tube loops, in the order of the manifold.")]
        ImmutableArray<LoopDesign> Loops = default
);

/// <summary>A wet floor section after EN 1264 type A: tube in the slab or screed above insulation.</summary>
[Meaning("A wet floor: tube in a slab or screed above insulation.")]
public sealed record FloorBuildUp(
    [Meaning("Concrete above the tube.")] [Within(0.005, 0.5)] Length Cover,
    [Meaning("Conductivity of that concrete.")] [Within(0.2, 4)] Conductivity SlabConductivity,
    [Meaning("Resistance of the floor covering.")]
    [Default("0 m²K/W")]
    [Within(0, 1)]
        ThermalResistance Covering = default,
    [Meaning("Resistance of everything below the tube, insulation included.")]
    [Within(0, 20)]
        ThermalResistance Below = default,
    [Meaning(
        "Temperature under the floor; left out, the ground under this zone as ISO 13370 sees it."
    )]
    [Within(-40, 30)]
        Temperature? BelowTemperature = null,
    [Meaning("How the floor is used; it decides how warm the surface may be.")]
    [Default("occupied")]
        SurfaceZone Use = SurfaceZone.Occupied,
    [Meaning("Concrete below the tube; its resistance is counted in \"below\".")]
    [Default("0 mm")]
    [Within(0, 2)]
        Length SlabBelow = default
);

/// <summary>One loop of tube.</summary>
[Meaning("One loop of tube in the floor.")]
public sealed record LoopDesign(
    [Meaning("What you call it.")] string Name,
    [Meaning("Name of the zone that it heats.")] string Zone,
    [Meaning("Name of the floor section in which it lies.")] string Section,
    [Meaning("Name of the tube: a pipe part of your shelf or of the built-in list.")] string Tube,
    [Meaning("Distance from tube to tube.")] [Within(0.02, 1)] Length Spacing,
    [Meaning("Floor area that it covers.")] [Within(0.2, 200)] Area Area,
    [Meaning("Name of the manifold item in the plant; left out, the only one.")]
        string? Manifold = null,
    [Meaning("Tube from the manifold to its area and back.")]
    [Default("4 m")]
    [Within(0, 100)]
        Length Leader = default,
    [Meaning("Tube length, if you have measured it; left out, area over spacing plus leader.")]
    [Within(1, 500)]
        Length? Length = null,
    [Meaning(
        "Balancing valve of this loop: its coefficient as set (\"Kv 0.8\"); left out, fully open."
    )]
    [Within(0.001, 100)]
        FlowCoefficient? Valve = null,
    [Meaning("Whether the loop is shut at the manifold.")] bool Shut = false
);
