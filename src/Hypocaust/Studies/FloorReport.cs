using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Floor;
using Hypocaust.Hydraulics;
using Hypocaust.Plant;

namespace Hypocaust.Studies;

/// <summary>Puts the floors of a design, and their running, into the words and figures of the answer.</summary>
internal sealed class FloorReport
{
    // fall of the water for which a supply temperature is stated where no plant says otherwise (common practice: 5 to 10 K)
    private const double AssumedFallK = 8;

    private readonly FloorStudy study;
    private readonly SpaceAnswer space;
    private readonly PlantState? state;

    private FloorReport(FloorStudy study, SpaceAnswer space, PlantState? state)
    {
        this.study = study;
        this.space = space;
        this.state = state;
    }

    /// <summary>The answer; <paramref name="state"/> is null without a plant.</summary>
    public static FloorAnswer Of(FloorStudy study, SpaceAnswer space, PlantState? state) =>
        new FloorReport(study, space, state).Answer();

    private FloorAnswer Answer()
    {
        ImmutableArray<LoopAnswer> loops =
        [
            .. Enumerable.Range(0, study.Floors.Length).Select(loop => Loop(loop)),
        ];
        ImmutableArray<FloorZoneAnswer> zones =
        [
            .. space
                .Zones.Where(zone => study.Loops.Any(loop => loop.Zone == zone.Name))
                .Select(zone => Zone(zone, loops)),
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

    private LoopAnswer Loop(int index)
    {
        var loop = study.Loops[index];
        var floor = study.Floors[index];
        return new LoopAnswer(
            loop.Name,
            loop.Zone,
            floor.Surroundings.RoomC,
            loop.Area.Si,
            loop.Spacing.Si,
            loop.Leader.Si,
            loop.Length is not null,
            LoopLength.Metres(loop),
            study.Tubes[index].Inner.Si,
            floor.ConductanceWPerM2K,
            floor.Table is { } table ? FactorsOf(table.Output) : null,
            floor.Surroundings.BelowC,
            floor.LimitWPerM2,
            floor.Zone.MaximumSurfaceC(floor.Surroundings.RoomC),
            floor.Accuracy,
            state is null ? null : Running(index, state),
            NameOf(floor.Method),
            NameOf(floor.LimitMethod),
            SectionOf(floor)
        );
    }

    private static string NameOf(FloorMethod method) =>
        method == FloorMethod.Table ? LoopAnswer.ByTable : LoopAnswer.BySection;

    private static SectionAnswer SectionOf(HeatedFloor floor) =>
        new(
            floor.Section.Response.UpWPerM2K,
            floor.Section.Response.DownWPerM2K,
            floor.Section.Response.ThroughWPerM2K,
            floor.TableDifferencePercent,
            floor.Section.ErrorPercent,
            floor.WarmestShare,
            floor.ColdestShare,
            floor.SectionLimitWPerM2,
            floor.Section.BuildUp.BelowM2KPerW,
            floor.Section.Cells,
            floor.Section.Iterations,
            floor.ResistanceMethod?.UpWPerM2K
        );

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
        var bore = study.Tubes[index].Inner.Si;
        var volume = flow / fluid.DensityKgPerM3;
        var floor = study.WithFilm(index, Math.Abs(flow), fluid);
        var area = study.Loops[index].Area.Si;
        var supply = state.Heat.InletsC[branch];
        var meanWater = supply is { } celsius
            ? floor
                .Characteristic.Cool(
                    area,
                    celsius,
                    Math.Abs(flow) * state.MeanFluid.HeatCapacityJPerKgK
                )
                .MeanWaterC
            : (double?)null;
        var flux = meanWater is { } mean ? floor.Characteristic.UpwardFluxWPerM2(mean) : 0;
        var down = meanWater is { } water ? floor.Characteristic.DownwardFluxWPerM2(water) : 0;
        var surface = SurfaceOf(floor, flux, supply);
        return new LoopRunning(
            flow,
            volume,
            Fittings.VelocityMPerS(volume, bore),
            PipeFriction.Reynolds(volume, bore, fluid.DensityKgPerM3, fluid.ViscosityPaS),
            floor.FilmMKPerW,
            floor.ConductanceWPerM2K,
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
            surface.WarmestC,
            floor.Characteristic.UpwardAtRoomTemperatureWPerM2
        );
    }

    private static (double MeanC, double WarmestC) SurfaceOf(
        HeatedFloor floor,
        double flux,
        double? supplyC
    )
    {
        var roomC = floor.Surroundings.RoomC;
        if (flux <= 0 || supplyC is not { } supply)
        {
            return (roomC, roomC);
        }

        var mean = roomC + SurfaceCurve.ExcessK(flux);
        return (mean, Math.Max(mean, floor.WarmestSurfaceC(supply)));
    }

    private FloorZoneAnswer Zone(ZoneLossAnswer zone, ImmutableArray<LoopAnswer> loops)
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
            .Select(loop => study.Floors[loop].SupplyForC(fluxWPerM2, AssumedFallK))
            .ToList();
        return supplies.All(supply => supply is not null) ? supplies.Max() : null;
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
        var area = study.Loops[loop].Area.Si;
        var characteristic = study.WithFilm(loop, flow, state.Fluids[branch]).Characteristic;
        var cooling = characteristic.Cool(
            area,
            supplyC,
            flow * state.MeanFluid.HeatCapacityJPerKgK
        );
        return characteristic.UpwardFluxWPerM2(cooling.MeanWaterC) * area;
    }
}
