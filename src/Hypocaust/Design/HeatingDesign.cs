using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Hypocaust.Quantities;

namespace Hypocaust.Design;

/// <summary>One whole design: building, floor, parts and piping, as the person wrote it, every quantity typed and every reference checked.</summary>
[Meaning("A hydronic floor-heating system built from separate parts.")]
public sealed record HeatingDesign(
    [Meaning("Version of this file format.")] [Within(1, 1)] int Version,
    [Meaning("What you call this design.")] string Name,
    [Meaning("Units in which answers are shown.")] UnitSystem Units,
    [Meaning("Where the building stands.")] Site Site,
    [Meaning("What loses heat.")] BuildingDesign Building,
    [Meaning("The heated floor and its tube loops.")] FloorDesign? Floor = null,
    [Meaning("Your shelf: parts you own or may buy, by name.")] Named<Part>? Parts = null,
    [Meaning("How the parts are piped.")] PlantDesign? Plant = null,
    [Meaning("Reserved: mounting board. Kept as it is.")] JsonObject? Board = null,
    [Meaning("Reserved: electric supply. Kept as it is.")] JsonObject? Power = null,
    [Meaning("Reserved: tariffs, weather, sun. Kept as it is.")] JsonObject? Energy = null,
    [Meaning("Reserved: prices. Kept as it is.")] JsonObject? Prices = null,
    [Meaning("Reserved: filling and starting. Kept as it is.")] JsonObject? Startup = null,
    [Meaning("Reserved: named alternatives of this design. Kept as it is.")]
        JsonObject? Alternatives = null,
    [Meaning("Anything you want to remember.")] string? Note = null
)
{
    /// <summary>The shelf; empty where the file has none.</summary>
    public Named<Part> Parts { get; init; } = Parts ?? Named<Part>.Empty;
}

/// <summary>Climate at the place of the building.</summary>
[Meaning("Where the building stands.")]
public sealed record Site(
    [Meaning(
        "Outside air on the coldest day that the heating must master; your local code or weather service names it."
    )]
    [Within(-60, 25)]
        Temperature DesignOutdoor,
    [Meaning("Outside air, mean of the year; the ground under the floor follows it.")]
    [Within(-20, 30)]
        Temperature AnnualMean,
    [Meaning("Height above sea level; thin air carries less heat.")]
    [Default("0 m")]
    [Within(-430, 5000)]
        Length Altitude = default
);

/// <summary>The building: how its elements are made and the zones they enclose.</summary>
[Meaning("What loses heat.")]
public sealed record BuildingDesign(
    [Meaning("The heated zones, by name.")] Named<ZoneDesign> Zones,
    [Meaning("How walls, roofs and floors are made, by name.")]
        Named<Construction>? Constructions = null,
    [Meaning("Supplement on every outside element for corners and junctions.")]
    [Default("0.05 W/m²K")]
    [Within(0, 0.5)]
        Transmittance ThermalBridges = default
)
{
    /// <summary>The constructions; empty where the file has none.</summary>
    public Named<Construction> Constructions { get; init; } =
        Constructions ?? Named<Construction>.Empty;
}

/// <summary>Layers from inside to outside, or the U-value at once.</summary>
[Meaning("How a wall, roof or floor is made: layers from inside to outside, or its U-value.")]
public sealed record Construction(
    [Meaning("Layers from inside to outside.")] ImmutableArray<Layer> Layers = default,
    [Meaning("U-value, where it is known as a whole (windows, doors).")]
    [Within(0.03, 10)]
        Transmittance? U = null
);

/// <summary>One layer of a construction.</summary>
[Meaning("One layer: a material or conductivity with its thickness, or a resistance (\"R-20\").")]
public sealed record Layer(
    [Meaning("Name of a material of the built-in table, such as \"mineral wool\".")]
        string? Material = null,
    [Meaning("Thickness.")] [Within(0.0001, 2)] Length? Thickness = null,
    [Meaning("Thermal conductivity, if the material is not in the table.")]
    [Within(0.005, 500)]
        Conductivity? Conductivity = null,
    [Meaning("Resistance of the layer as a whole.")]
    [Within(0, 30)]
        ThermalResistance? Resistance = null,
    [Meaning("Studs or rafters that cross this layer.")] Bridge? Bridge = null
);

/// <summary>Studs, rafters or joists that cross a layer.</summary>
[Meaning("Studs, rafters or joists that cross a layer.")]
public sealed record Bridge(
    [Meaning("Share of the area that they take.")] [Within(0, 1)] Fraction Share,
    [Meaning("Name of their material in the built-in table.")] string? Material = null,
    [Meaning("Their thermal conductivity, if not in the table.")]
    [Within(0.005, 500)]
        Conductivity? Conductivity = null
);

/// <summary>A heated zone: what one thermostat keeps warm.</summary>
[Meaning("A heated zone: what one thermostat keeps warm.")]
public sealed record ZoneDesign(
    [Meaning("Room temperature to hold on the coldest day.")] [Within(5, 30)] Temperature Indoor,
    [Meaning("Floor area.")] [Within(0.5, 5000)] Area FloorArea,
    [Meaning("Air volume.")] [Within(1, 50000)] Volume Volume,
    [Meaning("Outside air that leaks or is blown in, volumes per hour.")]
    [Default("0.5 1/h")]
    [Within(0, 20)]
        AirChange AirChange = default,
    [Meaning("Walls, roof, windows and doors, by name.")] Named<Element>? Elements = null,
    [Meaning("Slab on the ground, if there is one.")] GroundSlab? Ground = null
)
{
    /// <summary>The elements of the envelope; empty where the file has none.</summary>
    public Named<Element> Elements { get; init; } = Elements ?? Named<Element>.Empty;
}

/// <summary>What an element is: it decides the surface resistances.</summary>
public enum ElementKind
{
    /// <summary>Wall: heat flows sideways.</summary>
    Wall,

    /// <summary>Roof or ceiling: heat flows up.</summary>
    Roof,

    /// <summary>Floor over outside air or a cold space: heat flows down.</summary>
    Floor,

    /// <summary>Window.</summary>
    Window,

    /// <summary>Door.</summary>
    Door,
}

/// <summary>One element of a zone's envelope.</summary>
[Meaning("One element of the envelope.")]
public sealed record Element(
    [Meaning("What it is.")] ElementKind Kind,
    [Meaning("Area as seen from inside.")] [Within(0.01, 5000)] Area Area,
    [Meaning("Name of its construction.")] string? Construction = null,
    [Meaning("U-value, instead of a construction.")] [Within(0.03, 10)] Transmittance? U = null,
    [Meaning(
        "Temperature on the far side on the coldest day, where that is not outside air (an unheated room, a neighbour)."
    )]
    [Within(-60, 30)]
        Temperature? FarSide = null,
    [Meaning("Name of the zone on the far side, if it is one of this building.")]
        string? Zone = null
);

/// <summary>A slab on the ground after ISO 13370.</summary>
[Meaning("A slab on the ground.")]
public sealed record GroundSlab(
    [Meaning("Area of the slab in this zone.")] [Within(0.5, 5000)] Area Area,
    [Meaning("Length of its edge towards outside.")] [Within(0, 1000)] Length ExposedPerimeter,
    [Meaning("Thickness of the outside walls.")]
    [Default("0.3 m")]
    [Within(0.02, 2)]
        Length WallThickness = default,
    [Meaning("Conductivity of the ground: clay 1.5, sand or gravel 2.0, rock 3.5 W/mK.")]
    [Default("2 W/mK")]
    [Within(0.3, 6)]
        Conductivity Soil = default,
    [Meaning("Resistance of the whole floor, insulation included.")]
    [Default("0 m²K/W")]
    [Within(0, 20)]
        ThermalResistance Resistance = default,
    [Meaning("Insulation along the edge.")] EdgeInsulation? Edge = null
);

/// <summary>Where edge insulation lies.</summary>
public enum EdgePosition
{
    /// <summary>Flat under the edge strip of the slab.</summary>
    Horizontal,

    /// <summary>Upright at the foundation.</summary>
    Vertical,
}

/// <summary>Insulation along the edge of a slab.</summary>
[Meaning("Insulation along the edge of a slab.")]
public sealed record EdgeInsulation(
    [Meaning("How it lies.")] EdgePosition Position,
    [Meaning("Width (flat) or depth (upright).")] [Within(0.05, 10)] Length Reach,
    [Meaning("Its resistance.")] [Within(0.05, 20)] ThermalResistance Resistance,
    [Meaning("Its thickness.")] [Within(0.005, 1)] Length Thickness
);
