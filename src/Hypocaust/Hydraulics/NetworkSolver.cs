using System.Collections.Immutable;
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
    private const double NegligibleFlow = 1e-12;

    private readonly NetworkSolverOptions options;
    private readonly BranchOrder order;
    private readonly BranchLaws laws;
    private readonly NodalEquations nodes;
    private readonly NewtonStep step;
    private readonly CheckValves checkValves;
    private readonly double[] publicFlows;
    private readonly NewtonIteration newton;
    private NetworkConditions? prepared;
    private int preparedVersion;

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
        newton = new NewtonIteration(step, nodes, this.options);
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

        newton.Restart();
        var status = Rounds(conditions);
        if (status != SolveStatus.Converged)
        {
            ClearNonNumbers();
        }

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
            var status = newton.Run(checkValves.Anchors);
            if (status != SolveStatus.Converged)
            {
                return status;
            }

            var tolerance = 10 * options.Tolerance * newton.HeadScalePa;
            var negligible = NegligibleFlow * newton.FlowScaleKgPerS;
            if (checkValves.AllRight(round, conditions.Closed, tolerance, negligible))
            {
                return SolveStatus.Converged;
            }
        }

        return SolveStatus.CheckValvesUndecided;
    }

    /// <summary>Equations that overflow leave no numbers; a failed solve shows zero there, and its status says that it failed.</summary>
    private void ClearNonNumbers()
    {
        foreach (var values in (ReadOnlySpan<double[]>)[step.Flow, step.Residual, nodes.Potential])
        {
            for (var i = 0; i < values.Length; i++)
            {
                values[i] = double.IsFinite(values[i]) ? values[i] : 0;
            }
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
            newton.Iterations,
            Finite(newton.HeadResidual),
            Finite(mass / newton.FlowScaleKgPerS),
            worstBranch,
            slot < 0 ? -1 : Array.IndexOf(nodes.Slot, slot)
        );
    }

    private static double Finite(double residual) =>
        double.IsFinite(residual) ? residual : double.MaxValue;
}
