using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Answers;

/// <summary>How much heat the building needs on its coldest day, and where it goes.</summary>
[Meaning("How much heat the building needs on its coldest day, and where it goes.")]
public sealed record SpaceAnswer(
    [property: Meaning("Outside air on the coldest day, °C.")] double OutdoorC,
    [property: Meaning("Design heat loss of the whole building, W (EN 12831 form).")]
        double DesignLossW,
    [property: Meaning(
        "Part of it that the heated floor must give to the rooms, W: without the loss through the heated floor itself."
    )]
        double RoomLossW,
    [property: Meaning("Zones in the order of the design.")] ImmutableArray<ZoneLossAnswer> Zones
);

/// <summary>Heat loss of one zone.</summary>
[Meaning("Heat loss of one zone.")]
public sealed record ZoneLossAnswer(
    [property: Meaning("Name of the zone.")] string Name,
    [property: Meaning("Room temperature held, °C.")] double IndoorC,
    [property: Meaning("Floor area, m².")] double FloorAreaM2,
    [property: Meaning("Air volume, m³.")] double VolumeM3,
    [property: Meaning("Air changes per hour, 1/h.")] double AirChangesPerH,
    [property: Meaning("Design heat loss, W.")] double DesignLossW,
    [property: Meaning("Without the loss through a heated floor, W.")] double RoomLossW,
    [property: Meaning("Heat that a cubic metre of its air takes per kelvin, J/m³K.")]
        double AirHeatJPerM3K,
    [property: Meaning("Loss by air that leaks or is blown in, W.")] double VentilationW,
    [property: Meaning("Part of the loss that goes to other zones of the building, W.")]
        double ToOtherZonesW,
    [property: Meaning("Elements, the slab on the ground among them.")]
        ImmutableArray<ElementLossAnswer> Elements
);

/// <summary>Heat loss of one element.</summary>
[Meaning("Heat loss of one element.")]
public sealed record ElementLossAnswer(
    [property: Meaning("Name of the element; \"ground\" for the slab on the ground.")] string Name,
    [property: Meaning("wall, roof, floor, window, door or ground.")] string Kind,
    [property: Meaning("Area, m².")] double AreaM2,
    [property: Meaning("Thermal transmittance, W/m²K.")] double TransmittanceWPerM2K,
    [property: Meaning("Supplement for corners and junctions, W/m²K.")] double BridgesWPerM2K,
    [property: Meaning("Temperature on the far side, °C; for the ground, the equivalent one.")]
        double FarSideC,
    [property: Meaning("Whether it is the floor that is heated.")] bool IsHeatedFloor,
    [property: Meaning("Heat loss, W.")] double LossW,
    [property: Meaning("How the U-value came about, in words.")] string How
);
