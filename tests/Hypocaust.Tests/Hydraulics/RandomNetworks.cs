using Hypocaust.Hydraulics;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>Random connected networks in mixed states, from a seed.</summary>
internal static class RandomNetworks
{
    public static (Network Network, NetworkConditions Conditions) Make(
        int seed,
        bool closedValves = true
    )
    {
        var random = new Random(seed);
        var branchCount = random.Next(2, 41);
        var nodeCount = random.Next(2, Math.Min(branchCount + 1, 26) + 1);
        var tall = random.Next(3) == 0;
        var nodes = Enumerable
            .Range(0, nodeCount)
            .Select(i => new Node(
                $"n{i}",
                tall ? random.NextDouble() * 6 : 0,
                i == 0 || random.Next(25) == 0 ? 1e5 + (random.NextDouble() * 2e4) : null
            ))
            .ToList();
        var branches = Enumerable
            .Range(0, branchCount)
            .Select(i => RandomBranch(random, i, nodeCount))
            .ToList();
        var network = Network.Create(nodes, branches).Value;
        var conditions = new NetworkConditions(network, 995, 7e-4);
        for (var branch = 0; branch < branchCount; branch++)
        {
            var glycol = random.Next(2) == 0;
            conditions.SetFluid(
                branch,
                960 + (90 * random.NextDouble()),
                (glycol ? 5e-3 : 5e-4) * (0.6 + random.NextDouble())
            );
            if (network.Branches[branch].Pump is not null)
            {
                conditions.SetPumpSpeed(
                    branch,
                    random.Next(3) == 0 ? 0 : 0.4 + (0.8 * random.NextDouble())
                );
            }

            if (closedValves && random.Next(8) == 0)
            {
                conditions.SetClosed(branch, true);
            }
        }

        return (network, conditions);
    }

    private static Branch RandomBranch(Random random, int i, int nodeCount)
    {
        // the first branches grow a tree, so that everything is connected
        var to = i + 1 < nodeCount ? i + 1 : random.Next(nodeCount);
        var from = i + 1 < nodeCount ? random.Next(i + 1) : random.Next(nodeCount - 1);
        from = from >= to && i + 1 >= nodeCount ? from + 1 : from;
        if (random.Next(2) == 0)
        {
            (from, to) = (to, from);
        }

        var branch = new Branch($"b{i}", $"n{from}", $"n{to}")
        {
            InnerDiameterM = 0.008 + (0.03 * random.NextDouble()),
            RoughnessM = random.Next(2) == 0 ? 1.5e-6 : 7e-6,
        };
        var length = Math.Exp(Math.Log(0.03) + (random.NextDouble() * Math.Log(120 / 0.03)));
        return random.Next(8) switch
        {
            0 => branch with { KvM3PerH = 0.2 + (5 * random.NextDouble()) },
            1 => branch with { KvM3PerH = 1 + (5 * random.NextDouble()), IsCheckValve = true },
            2 => branch with
            {
                LossCoefficient = 2.5,
                IsCheckValve = true,
                CrackingPressurePa = random.Next(2) * 2000 * random.NextDouble(),
            },
            3 => branch with { Pump = RandomPump(random), IsCheckValve = random.Next(3) == 0 },
            4 => branch with { LossCoefficient = 0.2 + (20 * random.NextDouble()) },
            5 => branch with
            {
                LengthM = length,
                LossCoefficient = 4,
                ReverseLossCoefficient = 400,
                CrackingPressurePa = random.Next(2) * 500,
            },
            _ => branch with { LengthM = length, LossCoefficient = 5 * random.NextDouble() },
        };
    }

    private static PumpLaw RandomPump(Random random) =>
        PumpCurve
            .Create(
                1 + (7 * random.NextDouble()),
                -0.4 * random.NextDouble(),
                -0.1 - (0.5 * random.NextDouble())
            )
            .Value.ToLaw() with
        {
            StoppedKvM3PerH = random.Next(2) == 0 ? 4 : null,
        };
}
