using System.Collections.Immutable;

namespace Hypocaust.Hydraulics;

/// <summary>How a branch stands in a solution.</summary>
public enum BranchState
{
    /// <summary>Open; the flow may still be zero.</summary>
    Open,

    /// <summary>Shut by hand or actuator: no flow.</summary>
    Closed,

    /// <summary>A check valve holding back: no flow.</summary>
    CheckValveClosed,
}

/// <summary>How a solve went. A residual that overflowed is <see cref="double.MaxValue"/>.</summary>
/// <param name="Status">Why it ended.</param>
/// <param name="Iterations">Newton steps taken.</param>
/// <param name="HeadResidual">Largest |pressure difference − loss| of an open branch over the largest pressure difference (at least 1 Pa).</param>
/// <param name="MassResidual">Largest |inflow − outflow| of a node without given pressure over the largest flow (at least 1e-6 kg/s).</param>
/// <param name="WorstBranch">Place of the branch with the largest head residual, −1 without branches.</param>
/// <param name="WorstNode">Place of the node with the largest mass residual, −1 where every pressure is given.</param>
public readonly record struct SolveReport(
    SolveStatus Status,
    int Iterations,
    double HeadResidual,
    double MassResidual,
    int WorstBranch,
    int WorstNode
);

/// <summary>Flows and pressures of a network; after a failure the last ones reached.</summary>
/// <param name="Network">The network solved.</param>
/// <param name="Report">Status, iterations, residuals.</param>
/// <param name="FlowsKgPerS">Mass flow of each branch, kg/s, positive from → to.</param>
/// <param name="PressuresPa">Pressure of each node, Pa; <see langword="null"/> where shut valves cut it off from every given pressure.</param>
/// <param name="PressureDifferencesPa">p(from) − p(to) of each branch, Pa, height included; <see langword="null"/> where not determined.</param>
/// <param name="PressureLossesPa">
/// The same without the weight of the fluid column, Pa: friction positive with the flow, a pump's rise negative, for a closed branch what it holds.
/// </param>
/// <param name="States">Open, closed, or check valve closed.</param>
public sealed record NetworkSolution(
    Network Network,
    SolveReport Report,
    ImmutableArray<double> FlowsKgPerS,
    ImmutableArray<double?> PressuresPa,
    ImmutableArray<double?> PressureDifferencesPa,
    ImmutableArray<double?> PressureLossesPa,
    ImmutableArray<BranchState> States
)
{
    /// <summary>Why the solve ended.</summary>
    public SolveStatus Status => Report.Status;

    /// <summary>Whether the equations hold.</summary>
    public bool Converged => Report.Status == SolveStatus.Converged;

    /// <summary>Name of the branch with the largest head residual.</summary>
    public string? WorstBranch =>
        Report.WorstBranch < 0 ? null : Network.Branches[Report.WorstBranch].Id;

    /// <summary>Name of the node with the largest mass residual.</summary>
    public string? WorstNode => Report.WorstNode < 0 ? null : Network.Nodes[Report.WorstNode].Id;

    /// <summary>Mass flow of a branch by name, kg/s.</summary>
    public double FlowKgPerS(string branch) => FlowsKgPerS[Network.BranchIndex(branch)];

    /// <summary>Pressure of a node by name, Pa, if determined.</summary>
    public double? PressurePa(string node) => PressuresPa[Network.NodeIndex(node)];

    /// <summary>p(from) − p(to) of a branch by name, Pa, if determined.</summary>
    public double? PressureDifferencePa(string branch) =>
        PressureDifferencesPa[Network.BranchIndex(branch)];
}

/// <summary>When the solver stops, and where a cold solve starts.</summary>
public sealed record NetworkSolverOptions
{
    /// <summary>The defaults.</summary>
    public static NetworkSolverOptions Default { get; } = new();

    /// <summary>Allowed head and mass residual, relative (see <see cref="SolveReport"/>); default 1e-10.</summary>
    public double Tolerance { get; init; } = 1e-10;

    /// <summary>Newton steps at most, over all rounds of check valves; default 100.</summary>
    public int IterationLimit { get; init; } = 100;

    /// <summary>Velocity everywhere at the start of a cold solve, m/s; default 0.5, an ordinary velocity in heating pipes.</summary>
    public double StartVelocityMPerS { get; init; } = 0.5;

    /// <summary>Whether friction may be computed several branches at a time; default true. Answers agree to rounding.</summary>
    public bool Vectorised { get; init; } = true;
}
