using System.Collections.Immutable;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Hydraulics;
using Hypocaust.Problems;

namespace Hypocaust.Plant;

/// <summary>
/// Finds the steady state of a plant: flows for the fluid as warm as it is, temperatures for the flows as they are, in turn until both stay.
/// </summary>
internal sealed class PlantSolver
{
    private const int MostRounds = 60;
    private const double TemperatureToleranceK = 1e-8;

    // after this many rounds without rest, temperatures move half as far (a heater's flow switch can make the two chase each other)
    private const int DampedFrom = 25;
    private const double StartC = 30;

    private readonly PlantGraph graph;
    private readonly PlantNetwork piping;
    private readonly PlantConditions conditions;
    private readonly NetworkConditions network;
    private readonly NetworkSolver solver;
    private readonly FluidState[] fluids;
    private double? outsideRangeC;

    private PlantSolver(PlantGraph graph, PlantNetwork piping, PlantConditions conditions)
    {
        this.graph = graph;
        this.piping = piping;
        this.conditions = conditions;
        var start = FluidAt(StartC);
        network = new NetworkConditions(piping.Network, start.DensityKgPerM3, start.ViscosityPaS);
        for (var branch = 0; branch < piping.Shut.Length; branch++)
        {
            network.SetClosed(branch, piping.Shut[branch]);
        }

        solver = new NetworkSolver(piping.Network);
        fluids = new FluidState[graph.Branches.Length];
        Array.Fill(fluids, start);
    }

    public static Result<PlantState> Solve(PlantGraph graph, PlantConditions conditions) =>
        PlantNetwork
            .Of(graph)
            .Then<PlantState>(piping => new PlantSolver(graph, piping, conditions).Solve());

    private PlantState Solve()
    {
        var meanC = StartC;
        var branchC = new double[graph.Branches.Length];
        Array.Fill(branchC, StartC);
        var steps = 0;
        for (var round = 1; ; round++)
        {
            outsideRangeC = null;
            SetFluids(branchC);
            var report = solver.SolveInPlace(network, warm: round > 1);
            steps += report.Iterations;
            var mean = FluidAt(meanC);
            var heat = Transport(mean).Solve(solver.FlowsKgPerS, mean.HeatCapacityJPerKgK);
            var change = Move(branchC, heat, round);
            var nextMeanC = MeanOf(heat);
            var rests = Math.Max(change, Math.Abs(nextMeanC - meanC)) < TemperatureToleranceK;
            var ended = rests || round == MostRounds || report.Status != SolveStatus.Converged;
            if (ended)
            {
                return new PlantState(
                    graph,
                    solver.Snapshot(network, report),
                    heat,
                    piping.Curves,
                    [.. fluids],
                    mean,
                    meanC,
                    round,
                    steps,
                    rests && heat.Settled && report.Status == SolveStatus.Converged,
                    outsideRangeC
                );
            }

            meanC = nextMeanC;
        }
    }

    private void SetFluids(double[] branchC)
    {
        for (var branch = 0; branch < fluids.Length; branch++)
        {
            fluids[branch] = FluidAt(branchC[branch]);
            network.SetFluid(branch, fluids[branch].DensityKgPerM3, fluids[branch].ViscosityPaS);
        }
    }

    private static double MoveTo(double old, double target, int round) =>
        round < DampedFrom ? target : (old + target) / 2;

    private double Move(double[] branchC, TemperatureField heat, int round)
    {
        var change = 0.0;
        for (var branch = 0; branch < branchC.Length; branch++)
        {
            var target = heat.MeanC(branch) ?? conditions.SurroundingsC;
            change = Math.Max(change, Math.Abs(target - branchC[branch]));
            branchC[branch] = MoveTo(branchC[branch], target, round);
        }

        return change;
    }

    private double MeanOf(TemperatureField heat) =>
        heat
            .NodesC.Where(celsius => celsius is not null)
            .Select(celsius => celsius!.Value)
            .DefaultIfEmpty(StartC)
            .Average();

    // properties outside the fluid's range are taken at its end, and the state says so
    private FluidState FluidAt(double celsius)
    {
        if (conditions.Fluid.TryAt(celsius, out var state))
        {
            return state;
        }

        outsideRangeC = celsius;
        return conditions.Fluid.StateAt(
            Math.Clamp(celsius, conditions.Fluid.LowestC, conditions.Fluid.HighestC)
        );
    }

    private HeatTransport Transport(FluidState mean) =>
        new(
            graph.Nodes.Length,
            [
                .. graph.Branches.Select(
                    (branch, index) => (branch.From, branch.To, LawOf(branch, index, mean))
                ),
            ],
            conditions.SurroundingsC
        );

    private HeatLaw LawOf(PlantBranch branch, int index, FluidState mean) =>
        branch switch
        {
            PlantBranch.InPipe pipe => new HeatLaw.Exchange(
                PipeLossOf(pipe).ConductanceWPerMK * pipe.Join.LengthM,
                conditions.SurroundingsC
            ),
            PlantBranch.InLoop loop => conditions.LoopHeat(
                loop.Index,
                Math.Abs(solver.FlowsKgPerS[index]),
                fluids[index]
            ),
            PlantBranch.InItem { Part: HeaterPart, Item.Off: true } => HeatLaw.Heater.SwitchedOff,
            PlantBranch.InItem { Part: HeaterPart heater } item => new HeatLaw.Heater(
                item.Item.SetPoint!.Value.Si,
                heater.Capacity.Si,
                heater.MinimumFlow.Si * mean.DensityKgPerM3
            ),
            _ => HeatLaw.None,
        };

    private static PipeHeatLoss PipeLossOf(PlantBranch.InPipe pipe) =>
        new(
            pipe.Pipe.Inner.Si,
            pipe.Pipe.Outer.Si,
            PipeConductivity.Of(pipe.Pipe.Material),
            pipe.InsulationM
        );
}
