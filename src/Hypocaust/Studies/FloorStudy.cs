using System.Collections.Immutable;
using Hypocaust.Building;
using Hypocaust.Design;
using Hypocaust.Floor;
using Hypocaust.Floor.Section;
using Hypocaust.Fluids;
using Hypocaust.Hydraulics;
using Hypocaust.Plant;
using Hypocaust.Problems;

namespace Hypocaust.Studies;

/// <summary>Takes the loops of a design to heated floors, one a loop; loops in like floors share one section.</summary>
internal sealed class FloorStudy
{
    private FloorStudy(
        ImmutableArray<LoopDesign> loops,
        ImmutableArray<HeatedFloor> floors,
        ImmutableArray<PipePart> tubes
    )
    {
        Loops = loops;
        Floors = floors;
        Tubes = tubes;
    }

    /// <summary>The loops of the design.</summary>
    public ImmutableArray<LoopDesign> Loops { get; }

    /// <summary>The floor around each loop, its water turbulent.</summary>
    public ImmutableArray<HeatedFloor> Floors { get; }

    /// <summary>The tube of each loop.</summary>
    public ImmutableArray<PipePart> Tubes { get; }

    public static Result<FloorStudy> Of(
        HeatingDesign design,
        FloorDesign floor,
        SpaceStudy.Outcome space,
        Func<string, Part?> partNamed
    )
    {
        var problems = new List<Problem>();
        var floors = ImmutableArray.CreateBuilder<HeatedFloor>();
        var sections = new Dictionary<SectionBuildUp, Result<FloorSection2D>>();
        ImmutableArray<PipePart> tubes =
        [
            .. floor.Loops.Select(loop => (PipePart)partNamed(loop.Tube)!),
        ];
        for (var i = 0; i < floor.Loops.Length; i++)
        {
            var one = FloorOf(design, floor, floor.Loops[i], tubes[i], i, space, Solve);
            if (one.TryGet(out var wet))
            {
                floors.Add(wet);
            }
            else
            {
                problems.AddRange(one.Problems);
            }
        }

        Result<FloorSection2D> Solve(SectionBuildUp buildUp) =>
            sections.TryGetValue(buildUp, out var solved)
                ? solved
                : sections[buildUp] = FloorSection2D.Solve(buildUp);

        return problems.Count > 0
            ? Result<FloorStudy>.Failed(problems.Distinct())
            : new FloorStudy(floor.Loops, floors.ToImmutable(), tubes);
    }

    /// <summary>How a loop takes heat at a flow, the film of slow water included.</summary>
    public HeatLaw.Exchange HeatOf(int loop, double flowKgPerS, FluidState fluid)
    {
        var characteristic = WithFilm(loop, flowKgPerS, fluid).Characteristic;
        return new HeatLaw.Exchange(
            characteristic.TotalConductanceWPerM2K * Loops[loop].Area.Si,
            characteristic.EquivalentAmbientC
        );
    }

    private static Result<HeatedFloor> FloorOf(
        HeatingDesign design,
        FloorDesign floor,
        LoopDesign loop,
        PipePart tube,
        int index,
        SpaceStudy.Outcome space,
        Func<SectionBuildUp, Result<FloorSection2D>> solve
    )
    {
        var section = floor.Sections[loop.Section];
        var zone = design.Building.Zones[loop.Zone];
        if (BelowOf(section, loop.Zone, space) is not { } below)
        {
            return StudyProblems.NothingKnownBelow(loop.Section, loop.Zone);
        }

        var specification = SpecificationOf(loop, section, tube, below.Layers);
        var heated = FloorSurroundings
            .Create(zone.Indoor.Si, below.Celsius)
            .Then(surroundings => HeatedFloor.Of(specification, surroundings, section.Use, solve));
        return heated.Succeeded
            ? heated
            : Result<HeatedFloor>.Failed(
                heated.Problems.Select(problem => StudyProblems.OfLoop(problem, index, loop))
            );
    }

    /// <summary>What a loop's floor is made of.</summary>
    public static WetFloorSpecification SpecificationOf(
        LoopDesign loop,
        FloorBuildUp section,
        PipePart tube,
        ImmutableArray<DownwardLayer> below
    ) =>
        new()
        {
            SpacingM = loop.Spacing.Si,
            Tube = new EmbeddedTube(
                tube.Outer.Si,
                (tube.Outer.Si - tube.Inner.Si) / 2,
                PipeConductivity.Of(tube.Material)
            ),
            CoverM = section.Cover.Si,
            ScreedConductivityWPerMK = section.SlabConductivity.Si,
            CoveringResistanceM2KPerW = section.Covering.Si,
            ScreedBelowM = section.SlabBelow.Si,
            Below = below,
        };

    private sealed record Below(ImmutableArray<DownwardLayer> Layers, double Celsius);

    private static Below? BelowOf(FloorBuildUp section, string zoneName, SpaceStudy.Outcome space)
    {
        var own = new DownwardLayer("below the tube", section.Below.Si);
        if (section.BelowTemperature is { } given)
        {
            return new Below([own], given.Si);
        }

        if (!space.Grounds.TryGetValue(zoneName, out var ground))
        {
            return null;
        }

        // what ISO 13370 counts beyond the floor itself is the soil; its loss runs to the yearly mean outside
        var soil =
            (1 / ground.UWPerM2K)
            - ground.Input.InsideSurfaceM2KPerW
            - ground.Input.FloorResistanceM2KPerW;
        var celsius = space
            .Answer.Zones.First(found => found.Name == zoneName)
            .Elements.First(element => element.Kind == SpaceStudy.Ground)
            .FarSideC;
        return new Below([own, new DownwardLayer("soil", Math.Max(0, soil))], celsius);
    }

    /// <summary>The floor around a loop with the film that its flow has.</summary>
    public HeatedFloor WithFilm(int loop, double flowKgPerS, FluidState fluid)
    {
        if (flowKgPerS <= HeatTransport.StillKgPerS)
        {
            return Floors[loop];
        }

        var bore = Tubes[loop].Inner.Si;
        var film = TubeFilm.FromFlow(
            PipeFriction.Reynolds(
                flowKgPerS / fluid.DensityKgPerM3,
                bore,
                fluid.DensityKgPerM3,
                fluid.ViscosityPaS
            ),
            fluid.Prandtl,
            fluid.ConductivityWPerMK,
            bore
        );
        return Floors[loop].WithFilm(film.Value);
    }
}
