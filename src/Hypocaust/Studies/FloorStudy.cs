using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Building;
using Hypocaust.Design;
using Hypocaust.Floor;
using Hypocaust.Fluids;
using Hypocaust.Hydraulics;
using Hypocaust.Plant;
using Hypocaust.Problems;

namespace Hypocaust.Studies;

/// <summary>Takes the loops of a design to floors of EN 1264, and their running to the answer.</summary>
internal sealed class FloorStudy
{
    // fall of the water for which a supply temperature is stated where no plant says otherwise (common practice: 5 to 10 K)
    private const double AssumedFallK = 8;

    // standard factor on the ground's yearly swing, EN 12831:2003 f_g1, as in the heat loss
    private const double GroundSwingFactor = 1.45;

    private readonly HeatingDesign design;
    private readonly FloorDesign floor;
    private readonly SpaceAnswer space;
    private readonly ImmutableArray<WetFloor> floors;
    private readonly ImmutableArray<PipePart> tubes;

    private FloorStudy(
        HeatingDesign design,
        FloorDesign floor,
        SpaceAnswer space,
        ImmutableArray<WetFloor> floors,
        ImmutableArray<PipePart> tubes
    )
    {
        this.design = design;
        this.floor = floor;
        this.space = space;
        this.floors = floors;
        this.tubes = tubes;
    }

    public static Result<FloorStudy> Of(
        HeatingDesign design,
        FloorDesign floor,
        SpaceStudy.Outcome space,
        Func<string, Part?> partNamed
    )
    {
        var problems = new List<Problem>();
        var made = ImmutableArray.CreateBuilder<WetFloor>();
        ImmutableArray<PipePart> loopTubes =
        [
            .. floor.Loops.Select(loop => (PipePart)partNamed(loop.Tube)!),
        ];
        for (var i = 0; i < floor.Loops.Length; i++)
        {
            var one = FloorOf(design, floor, floor.Loops[i], loopTubes[i], i, space);
            if (one.TryGet(out var wet))
            {
                made.Add(wet);
            }
            else
            {
                problems.AddRange(one.Problems);
            }
        }

        return problems.Count > 0
            ? Result<FloorStudy>.Failed(problems)
            : new FloorStudy(design, floor, space.Answer, made.ToImmutable(), loopTubes);
    }

    /// <summary>How a loop takes heat at a flow, the film of slow water included.</summary>
    public HeatLaw.Exchange HeatOf(int loop, double flowKgPerS, FluidState fluid)
    {
        var characteristic = WithFilm(loop, flowKgPerS, fluid).Characteristic;
        return new HeatLaw.Exchange(
            characteristic.TotalConductanceWPerM2K * floor.Loops[loop].Area.Si,
            characteristic.EquivalentAmbientC
        );
    }

    /// <summary>The answer; <paramref name="state"/> is null without a plant.</summary>
    public FloorAnswer Answer(PlantState? state)
    {
        ImmutableArray<LoopAnswer> loops =
        [
            .. Enumerable.Range(0, floors.Length).Select(loop => Loop(loop, state)),
        ];
        ImmutableArray<FloorZoneAnswer> zones =
        [
            .. space
                .Zones.Where(zone => floor.Loops.Any(loop => loop.Zone == zone.Name))
                .Select(zone => Zone(zone, loops, state)),
        ];
        var flowing = loops
            .Where(loop => loop.Running is { SupplyC: not null })
            .Select(loop => loop.Running!)
            .ToList();
        double? ByFlow(Func<LoopRunning, double> celsius) =>
            flowing.Count == 0
                ? null
                : flowing.Sum(loop => loop.FlowKgPerS * celsius(loop))
                    / flowing.Sum(loop => loop.FlowKgPerS);
        return new FloorAnswer(
            zones.Sum(zone => zone.NeededW),
            state is null ? null : loops.Sum(loop => loop.Running?.HeatUpW ?? 0),
            state is null ? null : loops.Sum(loop => loop.Running?.HeatDownW ?? 0),
            ByFlow(loop => loop.SupplyC!.Value),
            ByFlow(loop => loop.ReturnC!.Value),
            zones.IsEmpty || zones.Any(zone => zone.RequiredSupplyC is null)
                ? null
                : zones.Max(zone => zone.RequiredSupplyC),
            state is null ? null : zones.All(zone => zone.OutputW >= zone.NeededW),
            zones,
            loops
        );
    }

    private static Result<WetFloor> FloorOf(
        HeatingDesign design,
        FloorDesign floor,
        LoopDesign loop,
        PipePart tube,
        int index,
        SpaceStudy.Outcome space
    )
    {
        var section = floor.Sections[loop.Section];
        var zone = design.Building.Zones[loop.Zone];
        if (BelowOf(section, zone, loop.Zone, design, space) is not { } below)
        {
            return StudyProblems.NothingKnownBelow(loop.Section, loop.Zone);
        }

        var wet = WetFloorSection
            .Create(
                new WetFloorSpecification
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
                    Below = below.Layers,
                }
            )
            .Then<WetFloor>(made =>
                FloorSurroundings
                    .Create(zone.Indoor.Si, below.Celsius)
                    .Then<WetFloor>(surroundings => WetFloor.Of(made, surroundings, section.Use))
            );
        return wet.TryGet(out var found)
            ? found
            : Result<WetFloor>.Failed(
                wet.Problems.Select(problem =>
                    StudyProblems.OfLoop(problem, index, loop.Section, loop.Tube)
                )
            );
    }

    private sealed record Below(ImmutableArray<DownwardLayer> Layers, double Celsius);

    private static Below? BelowOf(
        FloorBuildUp section,
        ZoneDesign zone,
        string zoneName,
        HeatingDesign design,
        SpaceStudy.Outcome space
    )
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
        var indoor = zone.Indoor.Si;
        var celsius = indoor - (GroundSwingFactor * (indoor - design.Site.AnnualMean.Si));
        return new Below([own, new DownwardLayer("soil", Math.Max(0, soil))], celsius);
    }

    private WetFloor WithFilm(int loop, double flowKgPerS, FluidState fluid)
    {
        if (flowKgPerS <= HeatTransport.StillKgPerS)
        {
            return floors[loop];
        }

        var bore = tubes[loop].Inner.Si;
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
        return floors[loop].WithFilm(film.Value);
    }

    private LoopAnswer Loop(int index, PlantState? state)
    {
        var loop = floor.Loops[index];
        var wet = floors[index];
        var limit = wet.Limit.TryGet(out var found) ? found : null;
        return new LoopAnswer(
            loop.Name,
            loop.Zone,
            wet.Surroundings.RoomC,
            loop.Area.Si,
            loop.Spacing.Si,
            loop.Leader.Si,
            loop.Length is not null,
            LoopLength.Metres(loop),
            tubes[index].Inner.Si,
            wet.Output.ConductanceWPerM2K,
            FactorsOf(wet.Output),
            wet.Surroundings.BelowC,
            limit?.FluxWPerM2,
            wet.Zone.MaximumSurfaceC(wet.Surroundings.RoomC),
            wet.Deviation.Text,
            state is null ? null : Running(index, state)
        );
    }

    private static TransmissionFactors FactorsOf(En1264Output output) =>
        new(
            output.SystemCoefficientWPerM2K,
            output.CoveringFactor,
            output.SpacingFactor,
            output.SpacingExponent,
            output.CoverFactor,
            output.CoverExponent,
            output.DiameterFactor,
            output.DiameterExponent,
            output.WideSpacingRatio,
            output.ExtraCoverResistanceM2KPerW
        );

    private static int? BranchOf(int loop, PlantState state)
    {
        for (var i = 0; i < state.Graph.Branches.Length; i++)
        {
            if (state.Graph.Branches[i] is PlantBranch.InLoop branch && branch.Index == loop)
            {
                return i;
            }
        }

        return null;
    }

    private LoopRunning? Running(int index, PlantState state)
    {
        if (BranchOf(index, state) is not { } branch)
        {
            return null;
        }

        var fluid = state.Fluids[branch];
        var flow = state.Flow.FlowsKgPerS[branch];
        var bore = tubes[index].Inner.Si;
        var volume = flow / fluid.DensityKgPerM3;
        var wet = WithFilm(index, Math.Abs(flow), fluid);
        var area = floor.Loops[index].Area.Si;
        var supply = state.Heat.InletsC[branch];
        var meanWater = supply is { } celsius
            ? wet
                .Characteristic.Cool(
                    area,
                    celsius,
                    Math.Abs(flow) * state.MeanFluid.HeatCapacityJPerKgK
                )
                .MeanWaterC
            : (double?)null;
        var flux = meanWater is { } mean ? wet.Characteristic.UpwardFluxWPerM2(mean) : 0;
        var down = meanWater is { } water ? wet.Characteristic.DownwardFluxWPerM2(water) : 0;
        var surface = SurfaceOf(wet, flux, supply);
        return new LoopRunning(
            flow,
            volume,
            Fittings.VelocityMPerS(volume, bore),
            PipeFriction.Reynolds(volume, bore, fluid.DensityKgPerM3, fluid.ViscosityPaS),
            wet.Output.Film?.ExtraResistanceMKPerW ?? 0,
            wet.Output.ConductanceWPerM2K,
            fluid.DensityKgPerM3,
            fluid.ViscosityPaS,
            state.Flow.PressureLossesPa[branch] ?? 0,
            supply,
            state.Heat.OutletsC[branch],
            meanWater,
            flux * area,
            down * area,
            flux,
            surface.MeanC,
            surface.WarmestC
        );
    }

    private static (double MeanC, double WarmestC) SurfaceOf(
        WetFloor wet,
        double flux,
        double? supplyC
    )
    {
        var roomC = wet.Surroundings.RoomC;
        if (flux <= 0 || supplyC is not { } supply)
        {
            return (roomC, roomC);
        }

        var mean = roomC + SurfaceCurve.ExcessK(flux);
        var warmest = wet.Curve.TryGet(out var curve)
            ? roomC + curve.HottestExcessK(supply - roomC)
            : roomC + SurfaceCurve.ExcessK(wet.Output.FluxWPerM2(supply - roomC));
        return (mean, Math.Max(mean, warmest));
    }

    private FloorZoneAnswer Zone(
        ZoneLossAnswer zone,
        ImmutableArray<LoopAnswer> loops,
        PlantState? state
    )
    {
        ImmutableArray<int> own =
        [
            .. Enumerable.Range(0, loops.Length).Where(loop => loops[loop].Zone == zone.Name),
        ];
        var area = own.Sum(loop => loops[loop].AreaM2);
        return new FloorZoneAnswer(
            zone.Name,
            zone.IndoorC,
            area,
            zone.RoomLossW,
            state is null ? null : own.Sum(loop => loops[loop].Running?.HeatUpW ?? 0),
            state is null
                ? SupplyWithoutPlant(own, zone.RoomLossW / area)
                : SupplyAtFlows(own, zone.RoomLossW, state)
        );
    }

    private double? SupplyWithoutPlant(ImmutableArray<int> loops, double fluxWPerM2)
    {
        var supplies = loops
            .Select(loop => floors[loop].SupplyFor(fluxWPerM2, AssumedFallK))
            .ToList();
        return supplies.All(supply => supply.Succeeded)
            ? supplies.Max(supply => supply.Value.SupplyC)
            : null;
    }

    // output is linear in the supply temperature while the flows stay: two points give the line
    private double? SupplyAtFlows(ImmutableArray<int> loops, double neededW, PlantState state)
    {
        const double low = 20;
        const double high = 60;
        double At(double supplyC) => loops.Sum(loop => OutputAt(loop, supplyC, state));
        var slope = (At(high) - At(low)) / (high - low);
        return slope <= 0 ? null : low + ((neededW - At(low)) / slope);
    }

    private double OutputAt(int loop, double supplyC, PlantState state)
    {
        if (BranchOf(loop, state) is not { } branch || state.Heat.InletsC[branch] is null)
        {
            return 0;
        }

        var flow = Math.Abs(state.Flow.FlowsKgPerS[branch]);
        var area = floor.Loops[loop].Area.Si;
        var characteristic = WithFilm(loop, flow, state.Fluids[branch]).Characteristic;
        var cooling = characteristic.Cool(
            area,
            supplyC,
            flow * state.MeanFluid.HeatCapacityJPerKgK
        );
        return characteristic.UpwardFluxWPerM2(cooling.MeanWaterC) * area;
    }
}
