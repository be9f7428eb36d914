using System.Collections.Immutable;
using System.Runtime.Intrinsics;
using Hypocaust.Hydraulics.Internal;

namespace Hypocaust.Hydraulics;

/// <summary>
/// Finds steady flows and pressures of a network: Newton's method on all flows and pressures at once, flows eliminated
/// (global gradient method), damped where a full step would overshoot. Build it once for a network and solve as often as conditions change.
/// Not safe for use from several threads at once.
/// </summary>
/// <source>E. Todini, S. Pilati, "A gradient algorithm for the analysis of pipe networks", in: Computer Applications in Water Supply, vol. 1 (1988)</source>
public sealed class NetworkSolver
{
    private const double LeastHeadScalePa = 1;
    private const double LeastFlowScaleKgPerS = 1e-6;
    private const double NegligibleFlow = 1e-12;
    private const double OvershootAllowed = 0.5;
    private const int DampingTrials = 30;

    private readonly NetworkSolverOptions options;
    private readonly BranchOrder order;
    private readonly BranchLaws laws;
    private readonly NodalEquations nodes;
    private readonly NewtonStep step;
    private readonly CheckValves checkValves;
    private readonly double[] publicFlows;
    private readonly int width;
    private NetworkConditions? prepared;
    private int preparedVersion;
    private int iterations;
    private StepMeasures measures;

    /// <summary>Works out everything that depends on the network alone.</summary>
    /// <param name="network">The network.</param>
    /// <param name="options">When to stop; <see langword="null"/>: <see cref="NetworkSolverOptions.Default"/>.</param>
    public NetworkSolver(Network network, NetworkSolverOptions? options = null)
    {
        Network = network;
        this.options = options ?? NetworkSolverOptions.Default;
        order = new BranchOrder(network);
        laws = new BranchLaws(network, order);
        nodes = new NodalEquations(network, order);
        step = new NewtonStep(order, laws);
        checkValves = new CheckValves(network, order, nodes, step, laws);
        publicFlows = new double[order.Count];
        width =
            !this.options.Vectorised ? 1
            : Vector512.IsHardwareAccelerated ? 8
            : Vector256.IsHardwareAccelerated ? 4
            : 1;
    }

    /// <summary>The network solved.</summary>
    public Network Network { get; }

    /// <summary>Mass flow of each branch after the last solve, kg/s.</summary>
    public ReadOnlySpan<double> FlowsKgPerS => publicFlows;

    /// <summary>Solves and hands out the answer.</summary>
    /// <param name="conditions">Fluids, speeds, positions.</param>
    /// <param name="start">An earlier solution to start from; <see langword="null"/>: start cold.</param>
    /// <exception cref="ArgumentException">The conditions or the start belong to another network.</exception>
    public NetworkSolution Solve(NetworkConditions conditions, NetworkSolution? start = null)
    {
        if (start is not null)
        {
            StartFrom(start);
        }

        var report = SolveInPlace(conditions, warm: start is not null);
        return Snapshot(conditions, report);
    }

    /// <summary>Solves without allocating anything; flows are then in <see cref="FlowsKgPerS"/>, the rest in <see cref="Snapshot"/>.</summary>
    /// <param name="conditions">Fluids, speeds, positions.</param>
    /// <param name="warm">Whether to start from the flows, pressures and check valves of the last solve.</param>
    /// <exception cref="ArgumentException">The conditions belong to another network.</exception>
    public SolveReport SolveInPlace(NetworkConditions conditions, bool warm)
    {
        if (!ReferenceEquals(conditions.Network, Network))
        {
            throw new ArgumentException(
                "These conditions were made for another network.",
                nameof(conditions)
            );
        }

        if (!ReferenceEquals(prepared, conditions) || preparedVersion != conditions.Version)
        {
            laws.Prepare(conditions);
            SetGivenPressures();
            prepared = conditions;
            preparedVersion = conditions.Version;
        }

        if (!warm)
        {
            StartCold(conditions);
        }

        iterations = 0;
        var status = Rounds(conditions);
        for (var l = 0; l < order.Count; l++)
        {
            publicFlows[order.Public[l]] = step.Flow[l];
        }

        return Report(status);
    }

    /// <summary>The answer of the last solve as values of its own.</summary>
    /// <param name="conditions">The conditions of that solve.</param>
    /// <param name="report">Its report.</param>
    public NetworkSolution Snapshot(NetworkConditions conditions, SolveReport report)
    {
        var pressures = ImmutableArray.CreateBuilder<double?>(Network.Nodes.Length);
        for (var node = 0; node < Network.Nodes.Length; node++)
        {
            pressures.Add(PressurePa(node));
        }

        var count = order.Count;
        var differences = new double?[count];
        var losses = new double?[count];
        var states = new BranchState[count];
        for (var l = 0; l < count; l++)
        {
            var index = order.Public[l];
            var shut = conditions.Closed[index];
            states[index] =
                shut ? BranchState.Closed
                : checkValves.Closed[l] ? BranchState.CheckValveClosed
                : BranchState.Open;
            if (DifferencePa(l) is { } potential)
            {
                var density = conditions.DensitiesKgPerM3[index];
                differences[index] = potential + laws.ColumnPa(l, laws.ReferenceDensity);
                losses[index] = potential - laws.ColumnPa(l, density - laws.ReferenceDensity);
            }
        }

        return new NetworkSolution(
            Network,
            report,
            [.. publicFlows],
            pressures.MoveToImmutable(),
            [.. differences],
            [.. losses],
            [.. states]
        );
    }

    private double? PressurePa(int node)
    {
        var given = Network.Nodes[node];
        var slot = nodes.Slot[node];
        return given.GivenPressurePa is { } pressure ? pressure
            : checkValves.IsDetermined(slot)
                ? nodes.Potential[slot] + BasePa() - (laws.ReferenceWeight * given.ElevationM)
            : null;
    }

    private double? DifferencePa(int l)
    {
        var known =
            step.Open[l] > 0
            || (checkValves.IsDetermined(nodes.From[l]) && checkValves.IsDetermined(nodes.To[l]));
        return known ? nodes.Potential[nodes.From[l]] - nodes.Potential[nodes.To[l]] : null;
    }

    private double BasePa()
    {
        foreach (var node in Network.Nodes)
        {
            if (node.GivenPressurePa is { } pressure)
            {
                return pressure + (laws.ReferenceWeight * node.ElevationM);
            }
        }

        return 0;
    }

    private void SetGivenPressures()
    {
        var basePa = BasePa();
        for (var node = 0; node < Network.Nodes.Length; node++)
        {
            if (Network.Nodes[node].GivenPressurePa is { } pressure)
            {
                nodes.Potential[nodes.Slot[node]] =
                    pressure + (laws.ReferenceWeight * Network.Nodes[node].ElevationM) - basePa;
            }
        }
    }

    private void StartCold(NetworkConditions conditions)
    {
        Array.Clear(nodes.Potential, 0, nodes.FreeCount);
        Array.Clear(checkValves.Closed);
        for (var l = 0; l < order.Count; l++)
        {
            var index = order.Public[l];
            var volumeFlow = laws.StartFlowM3PerS(
                l,
                options.StartVelocityMPerS,
                conditions.KvM3PerH[index]
            );
            step.Flow[l] = volumeFlow * conditions.DensitiesKgPerM3[index];
        }
    }

    private void StartFrom(NetworkSolution start)
    {
        if (!ReferenceEquals(start.Network, Network))
        {
            throw new ArgumentException("This start belongs to another network.", nameof(start));
        }

        Array.Clear(nodes.Potential, 0, nodes.FreeCount);
        for (var l = 0; l < order.Count; l++)
        {
            var index = order.Public[l];
            step.Flow[l] = start.FlowsKgPerS[index];
            checkValves.Closed[l] = start.States[index] == BranchState.CheckValveClosed;
        }
    }

    private SolveStatus Rounds(NetworkConditions conditions)
    {
        for (var round = 0; round < checkValves.RoundLimit; round++)
        {
            checkValves.Arrange(conditions.Closed);
            var status = Newton();
            if (status != SolveStatus.Converged)
            {
                return status;
            }

            var tolerance =
                10 * options.Tolerance * Math.Max(LeastHeadScalePa, measures.LargestDifference);
            var negligible = NegligibleFlow * Math.Max(LeastFlowScaleKgPerS, measures.LargestFlow);
            if (checkValves.AllRight(round, conditions.Closed, tolerance, negligible))
            {
                return SolveStatus.Converged;
            }
        }

        return SolveStatus.CheckValvesUndecided;
    }

    private SolveStatus Newton()
    {
        nodes.Differences(step.Difference);
        Array.Clear(step.Step);
        Evaluate();
        for (var first = true; iterations < options.IterationLimit; first = false)
        {
            iterations++;
            if (!nodes.Solve(step, checkValves.Anchors))
            {
                return SolveStatus.Breakdown;
            }

            Advance();
            if (HeadsHold() && MassHolds())
            {
                return SolveStatus.Converged;
            }

            // the first step only makes mass balance; from then on each step lowers the content, a convex function of the flows
            if (!first && !HeadsHold())
            {
                Damp();
            }
        }

        return SolveStatus.IterationLimit;
    }

    private bool HeadsHold() =>
        measures.LargestResidual
        <= options.Tolerance * Math.Max(LeastHeadScalePa, measures.LargestDifference);

    private bool MassHolds() =>
        nodes.LargestImbalance(step.Flow, out _)
        <= options.Tolerance * Math.Max(LeastFlowScaleKgPerS, measures.LargestFlow);

    /// <summary>Shortens a step that overshot the lowest content along it, by the slopes at its ends (regula falsi, halved where it sticks).</summary>
    private void Damp()
    {
        var start = measures.SlopeAtStart;
        if (measures.SlopeAtEnd <= -OvershootAllowed * start)
        {
            return;
        }

        var (low, slopeLow, high, slopeHigh, at) = (0.0, start, 1.0, measures.SlopeAtEnd, 1.0);
        for (
            var trial = 0;
            trial < DampingTrials && Math.Abs(measures.SlopeAtEnd) > -OvershootAllowed * start;
            trial++
        )
        {
            var falsi = low + ((high - low) * -slopeLow / (slopeHigh - slopeLow));
            var next = trial % 2 == 0 ? falsi : 0.5 * (low + high);
            Shift(next - at);
            at = next;
            if (measures.SlopeAtEnd > 0)
            {
                (high, slopeHigh) = (at, measures.SlopeAtEnd);
            }
            else
            {
                (low, slopeLow) = (at, measures.SlopeAtEnd);
            }
        }

        measures.SlopeAtStart = start;
    }

    private void Evaluate()
    {
        switch (width)
        {
            case 8:
                step.Evaluate<Lane8>(out measures);
                break;
            case 4:
                step.Evaluate<Lane4>(out measures);
                break;
            default:
                step.Evaluate<Lane1>(out measures);
                break;
        }
    }

    private void Advance()
    {
        switch (width)
        {
            case 8:
                step.Advance<Lane8>(out measures);
                break;
            case 4:
                step.Advance<Lane4>(out measures);
                break;
            default:
                step.Advance<Lane1>(out measures);
                break;
        }
    }

    private void Shift(double part)
    {
        switch (width)
        {
            case 8:
                step.Shift<Lane8>(part, out measures);
                break;
            case 4:
                step.Shift<Lane4>(part, out measures);
                break;
            default:
                step.Shift<Lane1>(part, out measures);
                break;
        }
    }

    private SolveReport Report(SolveStatus status)
    {
        var worstBranch = -1;
        var largest = -1.0;
        for (var l = 0; l < order.Count; l++)
        {
            if (Math.Abs(step.Residual[l]) > largest)
            {
                largest = Math.Abs(step.Residual[l]);
                worstBranch = order.Public[l];
            }
        }

        var mass = nodes.LargestImbalance(step.Flow, out var slot);
        return new SolveReport(
            status,
            iterations,
            measures.LargestResidual / Math.Max(LeastHeadScalePa, measures.LargestDifference),
            mass / Math.Max(LeastFlowScaleKgPerS, measures.LargestFlow),
            worstBranch,
            slot < 0 ? -1 : Array.IndexOf(nodes.Slot, slot)
        );
    }
}
