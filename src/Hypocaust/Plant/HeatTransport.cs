using Hypocaust.Answers;

namespace Hypocaust.Plant;

/// <summary>
/// Temperatures in a network whose flows are known: water mixes completely where pipes meet and is carried along without conduction.
/// One specific heat holds for the whole plant, so that heat closes exactly at every node.
/// </summary>
/// <remarks>Still water has no temperature here: it follows its room, and the answer says null.</remarks>
public sealed class HeatTransport
{
    // Ties water that circulates without any exchange to its surroundings so that the equations stay determined; 1e-12 W/K shifts nothing visible.
    private const double TieWPerK = 1e-12;

    // heat below which an imbalance is stated in watts rather than as a share
    private const double LeastHeatW = 1;
    private const int MostHeaterRounds = 30;

    private readonly int[] from;
    private readonly int[] to;
    private readonly HeatLaw[] laws;
    private readonly int nodeCount;
    private readonly double surroundingsC;

    /// <summary>Prepares a network.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <param name="branches">For each branch, node where positive flow enters, node where it leaves, and its law.</param>
    /// <param name="surroundingsC">Temperature of the room in which the plant stands, °C.</param>
    public HeatTransport(
        int nodeCount,
        IReadOnlyCollection<(int From, int To, HeatLaw Law)> branches,
        double surroundingsC
    )
    {
        this.nodeCount = nodeCount;
        this.surroundingsC = surroundingsC;
        from = [.. branches.Select(branch => branch.From)];
        to = [.. branches.Select(branch => branch.To)];
        laws = [.. branches.Select(branch => branch.Law)];
    }

    /// <summary>Flow below which water counts as still, kg/s: less than a drop in a minute.</summary>
    public const double StillKgPerS = 1e-6;

    /// <summary>Finds the temperatures for given flows.</summary>
    /// <param name="flowsKgPerS">Mass flow of each branch, kg/s, positive from its start to its end.</param>
    /// <param name="heatCapacityJPerKgK">Specific heat, J/kgK.</param>
    public TemperatureField Solve(ReadOnlySpan<double> flowsKgPerS, double heatCapacityJPerKgK)
    {
        var flows = flowsKgPerS.ToArray();
        var states = StartStates(flows);
        var rounds = 0;
        double[] nodes;
        bool settled;
        do
        {
            nodes = SolveNodes(flows, heatCapacityJPerKgK, states);
            settled = !MoveStates(flows, heatCapacityJPerKgK, nodes, states);
            rounds++;
        } while (!settled && rounds < MostHeaterRounds);

        return Field(flows, heatCapacityJPerKgK, nodes, states, settled);
    }

    private HeaterState?[] StartStates(double[] flows) =>
        [
            .. laws.Select(
                (law, branch) =>
                    law is HeatLaw.Heater heater ? Start(heater, flows[branch]) : (HeaterState?)null
            ),
        ];

    private static HeaterState Start(HeatLaw.Heater heater, double flow) =>
        heater.CapacityW <= 0 ? HeaterState.Off
        : Math.Abs(flow) <= StillKgPerS || flow < heater.MinimumFlowKgPerS
            ? HeaterState.FlowTooSmall
        : HeaterState.HoldsSetPoint;

    private bool MoveStates(double[] flows, double cp, double[] nodes, HeaterState?[] states)
    {
        var moved = false;
        for (var branch = 0; branch < laws.Length; branch++)
        {
            if (
                laws[branch] is not HeatLaw.Heater heater
                || states[branch] is HeaterState.Off or HeaterState.FlowTooSmall
            )
            {
                continue;
            }

            var inlet = nodes[Upstream(branch, flows[branch])];
            var wanted = Math.Abs(flows[branch]) * cp * (heater.SetPointC - inlet);
            var next =
                wanted <= 0 ? HeaterState.Idle
                : wanted > heater.CapacityW ? HeaterState.FullPower
                : HeaterState.HoldsSetPoint;
            moved |= next != states[branch];
            states[branch] = next;
        }

        return moved;
    }

    // T_out = share · T_in + constant
    private (double Share, double Constant) Outlet(
        int branch,
        double capacityRate,
        HeaterState? state
    ) =>
        laws[branch] switch
        {
            HeatLaw.Exchange exchange => Exponential(exchange, capacityRate),
            HeatLaw.Input input => (1, input.HeatW / capacityRate),
            HeatLaw.Heater heater => state switch
            {
                HeaterState.HoldsSetPoint => (0, heater.SetPointC),
                HeaterState.FullPower => (1, heater.CapacityW / capacityRate),
                _ => (1, 0),
            },
            _ => throw new InvalidOperationException($"Unknown law {laws[branch].GetType().Name}."),
        };

    private static (double Share, double Constant) Exponential(
        HeatLaw.Exchange exchange,
        double capacityRate
    )
    {
        var share = Math.Exp(-exchange.ConductanceWPerK / capacityRate);
        return (share, (1 - share) * exchange.AmbientC);
    }

    private double[] SolveNodes(double[] flows, double cp, HeaterState?[] states)
    {
        var matrix = new double[nodeCount, nodeCount];
        var right = new double[nodeCount];
        for (var node = 0; node < nodeCount; node++)
        {
            matrix[node, node] = TieWPerK;
            right[node] = TieWPerK * surroundingsC;
        }

        for (var branch = 0; branch < laws.Length; branch++)
        {
            var rate = Math.Abs(flows[branch]) * cp;
            if (Math.Abs(flows[branch]) <= StillKgPerS)
            {
                continue;
            }

            var (share, constant) = Outlet(branch, rate, states[branch]);
            var up = Upstream(branch, flows[branch]);
            var down = Downstream(branch, flows[branch]);
            matrix[down, down] += rate;
            matrix[down, up] -= rate * share;
            right[down] += rate * constant;
        }

        DenseLinearSolve.InPlace(matrix, right);
        return right;
    }

    private TemperatureField Field(
        double[] flows,
        double cp,
        double[] nodes,
        HeaterState?[] states,
        bool settled
    )
    {
        var moving = new bool[nodeCount];
        var imbalance = new double[nodeCount];
        var inlets = new double?[laws.Length];
        var outlets = new double?[laws.Length];
        var heats = new double[laws.Length];
        var carried = 0.0;
        for (var branch = 0; branch < laws.Length; branch++)
        {
            var rate = Math.Abs(flows[branch]) * cp;
            if (Math.Abs(flows[branch]) <= StillKgPerS)
            {
                continue;
            }

            var (share, constant) = Outlet(branch, rate, states[branch]);
            var up = Upstream(branch, flows[branch]);
            var down = Downstream(branch, flows[branch]);
            var outlet = (share * nodes[up]) + constant;
            inlets[branch] = nodes[up];
            outlets[branch] = outlet;
            heats[branch] = rate * (outlet - nodes[up]);
            carried = Math.Max(carried, Math.Abs(heats[branch]));
            moving[up] = moving[down] = true;
            imbalance[down] += rate * (outlet - nodes[down]);
        }

        var worst = imbalance.Select(Math.Abs).DefaultIfEmpty(0).Max();
        return new TemperatureField(
            [.. nodes.Select((celsius, node) => moving[node] ? celsius : (double?)null)],
            [.. inlets],
            [.. outlets],
            [.. heats],
            [.. states],
            worst / Math.Max(carried, LeastHeatW),
            settled
        );
    }

    private int Upstream(int branch, double flow) => flow >= 0 ? from[branch] : to[branch];

    private int Downstream(int branch, double flow) => flow >= 0 ? to[branch] : from[branch];
}
