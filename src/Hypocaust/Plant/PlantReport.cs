using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Hydraulics;
using Hypocaust.Quantities;

namespace Hypocaust.Plant;

/// <summary>Puts the steady state of a plant into the words and figures of the answer.</summary>
internal sealed class PlantReport
{
    private readonly PlantState state;
    private readonly PlantDesign plant;
    private readonly Fluid fluid;
    private readonly FillAnswer fill;
    private readonly double shiftPa;

    private PlantReport(PlantState state, PlantDesign plant, Fluid fluid)
    {
        this.state = state;
        this.plant = plant;
        this.fluid = fluid;
        fill = SystemFill.Of(state, plant, fluid);
        // a vessel that is full lets the pressure rise until the relief valve opens
        shiftPa =
            fill.WarmPa ?? (fill.VesselM3 is null ? fill.ColdPa : fill.ReliefPa ?? fill.ColdPa);
    }

    public static PlantAnswer Of(PlantState state, PlantDesign plant, Fluid fluid) =>
        new PlantReport(state, plant, fluid).Answer();

    private PlantAnswer Answer()
    {
        ImmutableArray<HeaterAnswer> heaters =
        [
            .. Branches<PlantBranch.InItem>()
                .Where(pair => pair.Branch.Part is HeaterPart)
                .Select(pair => Heater(pair.Branch, pair.Index)),
        ];
        return new PlantAnswer(
            new FluidAnswer(
                NameOf(fluid),
                fluid.VolumeFraction,
                fluid.FreezingPointC,
                state.MeanC,
                state.MeanFluid.DensityKgPerM3,
                state.MeanFluid.HeatCapacityJPerKgK,
                state.MeanFluid.ViscosityPaS
            ),
            Together(heaters),
            heaters,
            [
                .. Branches<PlantBranch.InItem>()
                    .Where(pair => pair.Branch.Part is CirculatorPart)
                    .Select(pair => Circulator(pair.Branch, pair.Index)),
            ],
            [.. Branches<PlantBranch.Between>().Select(pair => Tees(pair.Branch, pair.Index))],
            [.. state.Graph.Items.Select(Item)],
            [.. Branches<PlantBranch.InPipe>().Select(pair => Pipe(pair.Branch, pair.Index))],
            fill,
            Branches<PlantBranch.InPipe>().Sum(pair => -state.Heat.HeatsW[pair.Index]),
            Convergence(),
            [.. Notes()]
        );
    }

    private IEnumerable<(TBranch Branch, int Index)> Branches<TBranch>()
        where TBranch : PlantBranch =>
        state
            .Graph.Branches.Select((branch, index) => (branch as TBranch, index))
            .Where(pair => pair.Item1 is not null)!;

    // what the solver leaves in a still pipe is rounding, not flow
    private double FlowKgPerS(int branch) =>
        Math.Abs(state.Flow.FlowsKgPerS[branch]) <= HeatTransport.StillKgPerS
            ? 0
            : state.Flow.FlowsKgPerS[branch];

    private double FlowM3PerS(int branch) =>
        FlowKgPerS(branch) / state.Fluids[branch].DensityKgPerM3;

    private double? PressurePa(int node) => state.Flow.PressuresPa[node] + shiftPa;

    private HeaterAnswer Heater(PlantBranch.InItem branch, int index)
    {
        var part = (HeaterPart)branch.Part;
        return new HeaterAnswer(
            branch.Name,
            state.Heat.HeaterStates[index]!.Value,
            state.Heat.HeatsW[index],
            part.Capacity.Si,
            branch.Item.SetPoint?.Si,
            state.Heat.InletsC[index],
            state.Heat.OutletsC[index],
            FlowKgPerS(index),
            FlowM3PerS(index),
            part.MinimumFlow.Si
        );
    }

    private static string NameOf(Fluid fluid) =>
        fluid.Kind switch
        {
            FluidKind.Water => "water",
            FluidKind.PropyleneGlycol =>
                $"propylene glycol {Shown.Share.Format(fluid.VolumeFraction, UnitSystem.Si)}",
            FluidKind.EthyleneGlycol =>
                $"ethylene glycol {Shown.Share.Format(fluid.VolumeFraction, UnitSystem.Si)}",
            _ => throw new InvalidOperationException($"Unknown fluid {fluid.Kind}."),
        };

    private static HeaterAnswer? Together(ImmutableArray<HeaterAnswer> heaters) =>
        heaters.IsEmpty
            ? null
            : heaters[0] with
            {
                DeliveredW = heaters.Sum(heater => heater.DeliveredW),
                CapacityW = heaters.Sum(heater => heater.CapacityW),
            };

    private CirculatorAnswer Circulator(PlantBranch.InItem branch, int index)
    {
        var part = (CirculatorPart)branch.Part;
        var speed = PlantNetwork.SpeedOf(branch.Item, part);
        var flow = FlowM3PerS(index);
        var rise = -state.Flow.PressureLossesPa[index] ?? 0;
        var curve = state.Curves.GetValueOrDefault(index);
        return new CirculatorAnswer(
            branch.Name,
            speed,
            part.Speeds.Length,
            curve is not null,
            flow,
            rise / (state.Fluids[index].DensityKgPerM3 * PhysicalConstants.GravityMPerS2),
            rise,
            PressurePa(branch.From),
            curve is null ? 0 : part.Speeds[speed - 1].Power?.Si,
            part.Speeds[speed - 1].Curve.Max(point => point.Flow.Si),
            curve is not null && !curve.Covers(flow * 3600),
            curve is null ? [] : [curve.A, curve.B, curve.C]
        );
    }

    private TeesAnswer Tees(PlantBranch.Between branch, int index)
    {
        int Way(string port) =>
            Branches<PlantBranch.InTee>()
                .First(pair => pair.Branch.Name == branch.Name && pair.Branch.Port == port)
                .Index;
        return new TeesAnswer(
            branch.Name,
            FlowM3PerS(Way(Ports.PrimaryIn)),
            FlowM3PerS(Way(Ports.SecondaryOut)),
            FlowM3PerS(index),
            state.Heat.NodesC[state.Graph.NodeOf(branch.Name, Ports.PrimaryIn)],
            state.Heat.NodesC[state.Graph.NodeOf(branch.Name, Ports.SecondaryOut)],
            state.Heat.NodesC[state.Graph.NodeOf(branch.Name, Ports.SecondaryIn)]
        );
    }

    private ItemAnswer Item(PlacedPart placed)
    {
        var node = state.Graph.NodeOf(placed.Name, Ports.Of(placed.Part)[0]);
        var through = Branches<PlantBranch.InItem>()
            .Where(pair => pair.Branch.Name == placed.Name)
            .ToList();
        int? branch = through.Count == 1 ? through[0].Index : null;
        return new ItemAnswer(
            placed.Name,
            PartKinds.NameOf(placed.Part),
            placed.Item.Part,
            branch is { } index ? state.Heat.OutletsC[index] : state.Heat.NodesC[node],
            PressurePa(node),
            branch is { } flowing ? FlowKgPerS(flowing) : null,
            branch is { } losing ? state.Flow.PressureLossesPa[losing] : null,
            placed.Item.Height.Si
        );
    }

    private PipeAnswer Pipe(PlantBranch.InPipe branch, int index)
    {
        var flow = FlowM3PerS(index);
        var inner = branch.Pipe.Inner.Si;
        return new PipeAnswer(
            branch.Join.From.ToString(),
            branch.Join.To.ToString(),
            branch.Name,
            branch.Join.LengthM,
            inner,
            FlowKgPerS(index),
            flow,
            Fittings.VelocityMPerS(flow, inner),
            state.Flow.PressureLossesPa[index] ?? 0,
            state.Heat.InletsC[index],
            state.Heat.OutletsC[index],
            -state.Heat.HeatsW[index]
        );
    }

    private ConvergenceAnswer Convergence() =>
        new(
            state.Settled,
            state.Flow.Report.HeadResidual,
            state.Flow.Report.MassResidual,
            state.Heat.EnergyResidual,
            state.Rounds,
            state.NewtonSteps,
            state.Settled || !state.Flow.Converged
                ? state.Flow.Status.Sentence()
                : "Flow and heat chase each other and do not settle; look at a heater whose flow is just at its minimum."
        );

    private IEnumerable<string> Notes()
    {
        if (fill.VesselM3 is null)
        {
            yield return "There is no expansion vessel, so pressures are those of the cold filling; warm, they would be far higher.";
        }
        else if (fill.WarmPa is null)
        {
            yield return "The expansion vessel is full before the water is warm; pressures are those at which the relief valve opens.";
        }

        if (state.OutsideFluidRangeC is { } celsius)
        {
            var figure = celsius.ToString("0.#", CultureInfo.InvariantCulture);
            yield return $"Some water is at {figure} °C, where the fluid's properties are not known; those at the nearest known temperature were used.";
        }
    }
}
