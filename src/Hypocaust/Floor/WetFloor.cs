using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>
/// The entry of the module: a wet floor in its place, with its output, its surface limit and its characteristic for the plant.
/// </summary>
/// <source>EN 1264-2, EN 1264-3 (from memory); see docs/methods/floor.md</source>
public sealed record WetFloor
{
    private WetFloor(En1264Output output, FloorSurroundings surroundings, SurfaceZone zone)
    {
        Output = output;
        Surroundings = surroundings;
        Zone = zone;
        Characteristic = FloorCharacteristic.Of(output, surroundings);
        Curve = LimitCurve.Of(output);
        Limit = SurfaceLimit.Of(output, zone, surroundings.RoomC);
        CrossCheck = LineSourceCrossCheck.Of(output);
        Deviation = KnownDeviation.Of(output.Section);
        Notes = FloorNotes.Of(output);
    }

    /// <summary>The floor as built.</summary>
    public WetFloorSection Section => Output.Section;

    /// <summary>Temperatures above and below.</summary>
    public FloorSurroundings Surroundings { get; }

    /// <summary>Use of the area.</summary>
    public SurfaceZone Zone { get; }

    /// <summary>Heat output with every value on the way to it.</summary>
    public En1264Output Output { get; }

    /// <summary>What the plant needs to know.</summary>
    public FloorCharacteristic Characteristic { get; }

    /// <summary>The limit curve, or why the tables hold none.</summary>
    public Result<LimitCurve> Curve { get; }

    /// <summary>The limit of the surface in this room and zone, or why the tables hold none.</summary>
    public Result<SurfaceLimit> Limit { get; }

    /// <summary>The same floor without any table: output and hottest spot by a series of line sources.</summary>
    public LineSourceCrossCheck CrossCheck { get; }

    /// <summary>How far the table method is known to be off for floors like this one.</summary>
    public KnownDeviation Deviation { get; }

    /// <summary>What to know about these figures.</summary>
    public ImmutableArray<FloorNote> Notes { get; }

    /// <summary>Puts a floor in its place.</summary>
    /// <param name="section">The floor as built.</param>
    /// <param name="surroundings">Temperatures above and below.</param>
    /// <param name="zone">Use of the area.</param>
    /// <param name="film">Film inside the tube; null takes turbulent flow for granted, as the standard does.</param>
    public static WetFloor Of(
        WetFloorSection section,
        FloorSurroundings surroundings,
        SurfaceZone zone,
        TubeFilm? film = null
    ) => new(En1264Output.Of(section, film), surroundings, zone);

    /// <summary>The same floor with the film that the flow really has.</summary>
    public WetFloor WithFilm(TubeFilm film) => Of(Section, Surroundings, Zone, film);

    /// <summary>What one loop gives.</summary>
    /// <param name="areaM2">Heated area in m²: tube length in the field times spacing; above 0.</param>
    /// <param name="supplyC">Supply temperature in °C, −50 to 120.</param>
    /// <param name="flowKgPerS">Mass flow in kg/s, above 0.</param>
    /// <param name="specificHeatJPerKgK">Specific heat of the fluid in J/(kg·K), above 0.</param>
    public Result<LoopOutput> OutputOf(
        double areaM2,
        double supplyC,
        double flowKgPerS,
        double specificHeatJPerKgK
    ) => LoopOutput.Of(this, areaM2, supplyC, flowKgPerS, specificHeatJPerKgK);

    /// <summary>The supply temperature that gives a heat flux with a chosen temperature drop.</summary>
    /// <param name="fluxWPerM2">Heat flux needed to the room in W/m², above 0.</param>
    /// <param name="dropK">Supply minus return in K, above 0.</param>
    public Result<RequiredSupply> SupplyFor(double fluxWPerM2, double dropK) =>
        RequiredSupply.Of(this, fluxWPerM2, dropK);
}
