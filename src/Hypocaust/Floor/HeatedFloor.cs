using System.Globalization;
using Hypocaust.Floor.Section;
using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>Where the figures of a floor come from.</summary>
public enum FloorMethod
{
    /// <summary>The table method of EN 1264-2, for floors that its tables reach.</summary>
    Table,

    /// <summary>The section solved in two dimensions, for all others.</summary>
    Section,
}

/// <summary>
/// Any wet floor in its place, by the standard's tables where they reach and by its section in two dimensions where they do not;
/// the section is always there to compare with.
/// </summary>
/// <source>EN 1264-2 (from memory); <see cref="FloorSection2D"/>; docs/methods/section.md</source>
public sealed record HeatedFloor
{
    private readonly string beyondTables;

    private HeatedFloor(
        WetFloorSpecification specification,
        FloorSurroundings surroundings,
        SurfaceZone zone,
        FloorSection2D section,
        WetFloor? table,
        string beyondTables
    )
    {
        Specification = specification;
        Surroundings = surroundings;
        Zone = zone;
        Section = section;
        Response = section.Response;
        Table = table;
        this.beyondTables = beyondTables;
    }

    /// <summary>What the floor is made of.</summary>
    public WetFloorSpecification Specification { get; }

    /// <summary>Temperatures above and below.</summary>
    public FloorSurroundings Surroundings { get; }

    /// <summary>Use of the area.</summary>
    public SurfaceZone Zone { get; }

    /// <summary>The section in two dimensions, its bore at the water's temperature.</summary>
    public FloorSection2D Section { get; }

    /// <summary>Heat and surface by the section, the film of the flow included where one was given.</summary>
    public SectionResponse Response { get; private init; }

    /// <summary>The floor by the table method; null where the tables do not reach.</summary>
    public WetFloor? Table { get; private init; }

    /// <summary>Film in the tube, where one was given.</summary>
    public TubeFilm? Film { get; private init; }

    /// <summary>Where the figures below come from.</summary>
    public FloorMethod Method => Table is null ? FloorMethod.Section : FloorMethod.Table;

    /// <summary>Heat to the room for each kelvin of the water over the room in W/(m²·K).</summary>
    public double ConductanceWPerM2K => Table?.Output.ConductanceWPerM2K ?? Response.UpWPerM2K;

    /// <summary>Resistance of the film that the figures count, for one metre of tube in m·K/W: all of it, or by the table what exceeds turbulent flow.</summary>
    public double FilmMKPerW =>
        (Table is null ? Film?.ResistanceMKPerW : Film?.ExtraResistanceMKPerW) ?? 0;

    /// <summary>What the plant needs to know.</summary>
    public FloorCharacteristic Characteristic =>
        Table?.Characteristic ?? FloorCharacteristic.Of(Response, Surroundings);

    /// <summary>How far the table's output lies above the section's, in per cent of it; null where the tables do not reach.</summary>
    public double? TableDifferencePercent =>
        Table is null ? null : 100 * ((Table.Output.ConductanceWPerM2K / Response.UpWPerM2K) - 1);

    /// <summary>The resistance method of ISO 11855-2, a third opinion; null where it is not valid.</summary>
    public Iso11855Output? ResistanceMethod => Iso11855Output.Of(Section.BuildUp);

    /// <summary>Excess over the room of the surface above a tube, over the mean excess; 1 or more.</summary>
    public double WarmestShare =>
        Response.WarmestByWater / (Response.UpWPerM2K * Section.BuildUp.SurfaceM2KPerW);

    /// <summary>The same midway between tubes; 1 or less.</summary>
    public double ColdestShare =>
        Response.ColdestByWater / (Response.UpWPerM2K * Section.BuildUp.SurfaceM2KPerW);

    /// <summary>Mean flux in W/m² at which the surface above a tube reaches its limit, by the section; null if the room is no colder than the limit.</summary>
    public double? SectionLimitWPerM2
    {
        get
        {
            var excess = Zone.MaximumSurfaceC(Surroundings.RoomC) - Surroundings.RoomC;
            return excess > 0 ? SurfaceCurve.FluxWPerM2(excess / WarmestShare) : null;
        }
    }

    /// <summary>Where <see cref="LimitWPerM2"/> comes from.</summary>
    public FloorMethod LimitMethod =>
        Table is { Limit.Succeeded: true } ? FloorMethod.Table : FloorMethod.Section;

    /// <summary>Mean flux in W/m² at which the surface reaches its limit, by the tables where they reach.</summary>
    public double? LimitWPerM2 =>
        Table is not null && Table.Limit.TryGet(out var limit)
            ? limit.FluxWPerM2
            : SectionLimitWPerM2;

    /// <summary>How far these figures may be trusted, in plain sentences.</summary>
    public string Accuracy =>
        TableDifferencePercent is { } difference
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{Table!.Deviation.Text} {Compared(difference)}"
            )
            : string.Create(
                CultureInfo.InvariantCulture,
                $"The tables of EN 1264-2 do not reach this floor ({beyondTables}), so its section is solved in two dimensions, to about {Section.ErrorPercent:0.0} %."
            );

    private static string Compared(double difference) =>
        Math.Abs(difference) < 0.05
            ? "Your own floor, solved in two dimensions, gives the same."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"For your own floor, solved in two dimensions, the table promises {Math.Abs(difference):0.0} % too {(difference > 0 ? "much" : "little")}."
            );

    /// <summary>Puts a floor in its place.</summary>
    /// <param name="specification">What it is made of; what is physically impossible is given as problems.</param>
    /// <param name="surroundings">Temperatures above and below.</param>
    /// <param name="zone">Use of the area.</param>
    /// <param name="solve">Solves sections, so that like floors can share one; left out, each is solved.</param>
    public static Result<HeatedFloor> Of(
        WetFloorSpecification specification,
        FloorSurroundings surroundings,
        SurfaceZone zone,
        Func<SectionBuildUp, Result<FloorSection2D>>? solve = null
    )
    {
        var table = WetFloorSection.Create(specification);
        var below = table.Problems.Where(FloorProblems.ConcernsBelow).ToList();
        if (below.Count > 0)
        {
            return Result<HeatedFloor>.Failed(below);
        }

        var buildUp = SectionBuildUp.Of(specification);
        var section = solve is null ? FloorSection2D.Solve(buildUp) : solve(buildUp);
        return section.Then<HeatedFloor>(solved => new HeatedFloor(
            specification,
            surroundings,
            zone,
            solved,
            table.TryGet(out var found) ? WetFloor.Of(found, surroundings, zone) : null,
            string.Join("; ", table.Problems.Select(problem => problem.What))
        ));
    }

    /// <summary>The same floor with the film that the flow really has.</summary>
    public HeatedFloor WithFilm(TubeFilm film) =>
        this with
        {
            Film = film,
            Table = Table?.WithFilm(film),
            Response = Section.Response.WithTubeResistance(
                Specification.SpacingM * film.ResistanceMKPerW
            ),
        };

    /// <summary>Supply temperature in °C that gives a mean flux with a drop along the loop; null if none does.</summary>
    /// <param name="fluxWPerM2">Flux to the room in W/m².</param>
    /// <param name="dropK">Supply minus return in K, above 0.</param>
    public double? SupplyForC(double fluxWPerM2, double dropK)
    {
        if (Table is not null)
        {
            return Table.SupplyFor(fluxWPerM2, dropK).TryGet(out var required)
                ? required.SupplyC
                : null;
        }

        var characteristic = Characteristic;
        var over = characteristic.WaterForC(fluxWPerM2) - characteristic.EquivalentAmbientC;
        return over > 0 && dropK > 0
            ? characteristic.EquivalentAmbientC + LogMeanExcess.Supply(over, dropK)
            : null;
    }

    /// <summary>Warmest spot of the surface in °C: above the tube where the water enters.</summary>
    /// <param name="supplyC">Water at the inlet in °C.</param>
    public double WarmestSurfaceC(double supplyC)
    {
        var (roomC, flux) = (Surroundings.RoomC, Characteristic.UpwardFluxWPerM2(supplyC));
        return flux <= 0 ? roomC
            : Table is not null && Table.Curve.TryGet(out var curve)
                ? roomC + curve.HottestExcessK(supplyC - roomC)
            : roomC + (WarmestShare * SurfaceCurve.ExcessK(flux));
    }
}
