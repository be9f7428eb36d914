using Hypocaust.Layout;

namespace Hypocaust.Tests.Layout;

public sealed class CoilPlanTests
{
    private static CoilPlan Plan(double[] lengths, params double[] coils) =>
        CoilPlan.Of([.. lengths.Select((length, i) => ($"loop {i}", length))], coils);

    // by hand: 120 = 70 + 50 and 60 = 60 leave nothing; longest first into the longest would leave more
    [Fact]
    public void Of_LoopsThatFillCoils_LeavesNothing()
    {
        var plan = Plan([70, 60, 50], 60, 120);
        plan.WasteM.ShouldBe(0, 1e-9);
        plan.IsLeast.ShouldBeTrue();
        plan.Coils.Select(coil => coil.CoilM).ShouldBe([120, 60]);
    }

    [Fact]
    public void Of_TwoEqualWays_BuysFewerCoils() =>
        Plan([60, 60], 60, 120).Coils.ShouldHaveSingleItem().Loops.Length.ShouldBe(2);

    [Fact]
    public void Of_LoopLongerThanAnyCoil_IsNamed()
    {
        var plan = Plan([130, 50], 60, 120);
        plan.TooLong.ShouldBe(["loop 0"]);
        plan.Coils.ShouldHaveSingleItem().CoilM.ShouldBe(60);
    }

    // every way to part a handful of loops, counted out by a recursion of the test's own
    [Fact]
    public void Of_RandomLoops_WastesAsLittleAsTheBestOfAllPartitions()
    {
        var random = new Random(7);
        double[] coils = [60, 90, 120, 150, 200, 240];
        for (var round = 0; round < 60; round++)
        {
            double[] lengths =
            [
                .. Enumerable
                    .Range(0, 1 + random.Next(7))
                    .Select(_ => 20 + (80 * random.NextDouble())),
            ];
            var plan = Plan(lengths, coils);
            plan.WasteM.ShouldBe(Least(lengths, 0, [], coils) - lengths.Sum(), 1e-6);
            plan.Coils.SelectMany(coil => coil.Loops)
                .Order(StringComparer.Ordinal)
                .ShouldBe(lengths.Select((_, i) => $"loop {i}"));
        }
    }

    [Fact]
    public void Of_ManyLoops_HoldsEachOnceAndSaysThatItIsNotProven()
    {
        var plan = Plan([.. Enumerable.Range(0, 30).Select(i => 40 + (i * 1.7))], 60, 120, 240);
        plan.IsLeast.ShouldBeFalse();
        plan.Coils.SelectMany(coil => coil.Loops).Distinct().Count().ShouldBe(30);
        plan.Coils.ShouldAllBe(coil => coil.LeftM >= 0);
    }

    private static double Least(double[] lengths, int at, List<double> groups, double[] coils)
    {
        if (at == lengths.Length)
        {
            return groups.Sum(sum => coils.First(coil => coil >= sum));
        }

        var best = double.PositiveInfinity;
        for (var i = 0; i <= groups.Count; i++)
        {
            List<double> next = [.. groups];
            if (i == groups.Count)
            {
                next.Add(lengths[at]);
            }
            else
            {
                next[i] += lengths[at];
            }

            if (next[i] <= coils[^1])
            {
                best = Math.Min(best, Least(lengths, at + 1, next, coils));
            }
        }

        return best;
    }
}
