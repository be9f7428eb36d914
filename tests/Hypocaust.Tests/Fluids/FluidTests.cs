using FsCheck;
using FsCheck.Xunit;
using Hypocaust.Fluids;

namespace Hypocaust.Tests.Fluids;

public sealed class FluidTests
{
    private static readonly FluidKind[] Glycols =
    [
        FluidKind.PropyleneGlycol,
        FluidKind.EthyleneGlycol,
    ];

    [Theory]
    [InlineData(FluidKind.Water, 0.1)]
    [InlineData(FluidKind.Water, double.NaN)]
    [InlineData(FluidKind.PropyleneGlycol, -0.01)]
    [InlineData(FluidKind.PropyleneGlycol, 0.601)]
    [InlineData(FluidKind.EthyleneGlycol, 0.579)]
    [InlineData(FluidKind.EthyleneGlycol, double.PositiveInfinity)]
    public void Create_FractionOutsideTheTables_IsAProblem(FluidKind kind, double fraction)
    {
        Fluid.Create(kind, fraction).Succeeded.ShouldBeFalse();
        Fluid
            .CreateByMass(kind, fraction > 0 ? fraction + 0.05 : fraction)
            .Succeeded.ShouldBeFalse();
    }

    [Theory]
    [InlineData(-0.01, "fluid-frozen")]
    [InlineData(100.01, "fluid-too-hot")]
    [InlineData(double.NaN, "fluid-not-a-number")]
    public void At_WaterOutsideItsRange_SaysWhy(double temperatureC, string code)
    {
        Fluid.Water.At(temperatureC).Problems.Single().Code.ShouldBe(code);
        Fluid.Water.TryAt(temperatureC, out _).ShouldBeFalse();
        Should.Throw<ArgumentOutOfRangeException>(() => Fluid.Water.StateAt(temperatureC));
    }

    [Fact]
    public void At_StrongMixtureBelowTheTable_IsTooColdThoughNotFrozen()
    {
        var fluid = Fluid.Create(FluidKind.PropyleneGlycol, 0.5).Value;
        fluid.LowestC.ShouldBe(-25);
        fluid.FreezingPointC.ShouldBeLessThan(-33);
        fluid.At(-26).Problems.Single().Code.ShouldBe("fluid-too-cold");
    }

    [Fact]
    public void Equal_kind_and_fraction_make_equal_fluids()
    {
        var fluid = Fluid.Create(FluidKind.PropyleneGlycol, 0.3).Value;
        fluid.ShouldBe(Fluid.Create(FluidKind.PropyleneGlycol, 0.3).Value);
        fluid.ShouldNotBe(Fluid.Create(FluidKind.EthyleneGlycol, 0.3).Value);
    }

    [Property(Replay = "(4127,9)", MaxTest = 200)]
    public void Mixtures_get_thinner_and_lighter_when_warmer(byte strength, byte which)
    {
        // where the table prints a weaker and a stronger neighbour: nearer to water its density maximum at 4 °C shows through
        var fraction = 0.1 + 0.47 * strength / 255;
        var fluid = Some(which, fraction);
        var start = fraction switch
        {
            < 0.2 => 0,
            < 0.3 => -5,
            _ => fluid.LowestC,
        };
        // viscosities are printed to 1e-5 Pa·s, so neighbours may be equal but never rise
        var before = fluid.StateAt(start);
        for (var t = start + 0.5; t <= fluid.HighestC; t += 0.5)
        {
            var now = fluid.StateAt(t);
            now.ViscosityPaS.ShouldBeLessThanOrEqualTo(before.ViscosityPaS * (1 + 1e-12));
            now.DensityKgPerM3.ShouldBeLessThan(before.DensityKgPerM3);
            before = now;
        }
    }

    [Property(Replay = "(77,13)", MaxTest = 200)]
    public void Stronger_mixtures_are_thicker_and_carry_less_heat(
        byte strength,
        byte which,
        byte at
    )
    {
        var fraction = 0.01 + 0.5 * strength / 255;
        var (weak, strong) = (Some(which, fraction), Some(which, fraction + 0.02));
        var temperatureC = weak.LowestC + (weak.HighestC - weak.LowestC) * at / 255;
        var (thin, thick) = (weak.StateAt(temperatureC), strong.StateAt(temperatureC));
        thick.ViscosityPaS.ShouldBeGreaterThan(thin.ViscosityPaS);
        thick.HeatCapacityJPerKgK.ShouldBeLessThan(thin.HeatCapacityJPerKgK);
        thick.ConductivityWPerMK.ShouldBeLessThan(thin.ConductivityWPerMK);
        strong.FreezingPointC.ShouldBeLessThan(weak.FreezingPointC);
    }

    [Fact]
    public void Properties_are_continuous_at_every_node()
    {
        foreach (var kind in Glycols)
        {
            var fluid = Fluid.Create(kind, 0.37).Value;
            for (var node = -5.0; node < 100; node += 5)
            {
                var (left, right) = (fluid.StateAt(node - 1e-9), fluid.StateAt(node + 1e-9));
                right.DensityKgPerM3.ShouldBe(left.DensityKgPerM3, 1e-6);
                right.HeatCapacityJPerKgK.ShouldBe(left.HeatCapacityJPerKgK, 1e-6);
                right.ViscosityPaS.ShouldBe(left.ViscosityPaS, 1e-9 * left.ViscosityPaS);
                right.ConductivityWPerMK.ShouldBe(left.ConductivityWPerMK, 1e-9);
            }
        }
    }

    [Fact]
    public void A_vanishing_fraction_tends_to_water()
    {
        foreach (var kind in Glycols)
        {
            Fluid.Create(kind, 0).Value.StateAt(40).ShouldBe(Fluid.Water.StateAt(40));
            var trace = Fluid.Create(kind, 1e-6).Value;
            trace.FreezingPointC.ShouldBe(0, 1e-3);
            foreach (var temperatureC in new[] { 5.0, 20, 40, 60, 95 })
            {
                var (mix, water) = (trace.StateAt(temperatureC), Fluid.Water.StateAt(temperatureC));
                (mix.DensityKgPerM3 / water.DensityKgPerM3).ShouldBe(1, 1e-5);
                (mix.HeatCapacityJPerKgK / water.HeatCapacityJPerKgK).ShouldBe(1, 1e-5);
                (mix.ViscosityPaS / water.ViscosityPaS).ShouldBe(1, 1e-5);
                (mix.ConductivityWPerMK / water.ConductivityWPerMK).ShouldBe(1, 1e-5);
            }
        }
    }

    [Fact]
    public void StateAt_DoesNotAllocate()
    {
        var fluid = Fluid.Create(FluidKind.PropyleneGlycol, 0.3).Value;
        var sum = fluid.StateAt(20).ViscosityPaS;
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++)
        {
            sum += fluid.StateAt(i * 0.09).ViscosityPaS;
        }

        GC.GetAllocatedBytesForCurrentThread().ShouldBe(before);
        sum.ShouldBeGreaterThan(0);
    }

    private static Fluid Some(byte which, double volumeFraction) =>
        Fluid.Create(Glycols[which % 2], volumeFraction).Value;
}
