using Hypocaust.Floor;
using MathNet.Numerics;

namespace Hypocaust.Tests.Floor;

public sealed class LoopTests
{
    [Fact]
    public void Cooling_along_a_loop_agrees_with_the_differential_equation()
    {
        // dT/dA = −(q_up + q_down)/(m c_p), integrated in 4000 steps of Runge–Kutta (MathNet) as an independent check
        var floor = Floors.Place(Floors.Ordinary with { Below = Floors.Insulation(0.8) }, 20, 4);
        var loop = floor.OutputOf(18, 42, 0.03, 4190).Value;
        var characteristic = floor.Characteristic;
        var path = MathNet.Numerics.OdeSolvers.RungeKutta.FourthOrder(
            42,
            0,
            18,
            4001,
            (_, waterC) =>
                -(
                    characteristic.UpwardFluxWPerM2(waterC)
                    + characteristic.DownwardFluxWPerM2(waterC)
                ) / loop.CapacityRateWPerK
        );
        loop.ReturnC.ShouldBe(path[^1], 1e-9);
        loop.Cooling.MeanWaterC.ShouldBe(
            Integrate.GaussLegendre(area => path[(int)Math.Round(area / 18 * 4000)], 0, 18, 128)
                / 18,
            0.01
        );
    }

    [Fact]
    public void Mean_excess_is_the_standards_logarithmic_mean_when_room_and_below_are_equally_warm()
    {
        var loop = Floors.Place(Floors.Ordinary, 20, 20).OutputOf(15, 40, 0.025, 4190).Value;
        loop.MeanExcessK.ShouldBe(loop.StandardExcessK!.Value, 1e-10);
        Floors
            .Place(Floors.Ordinary, 20, 20)
            .SupplyFor(70, 8)
            .Value.ShouldSatisfyAllConditions(supply =>
                supply.SupplyC.ShouldBe(supply.StandardSupplyC, 1e-10)
            );
    }

    [Fact]
    public void Still_water_takes_the_equivalent_ambient_and_gives_nothing()
    {
        var characteristic = Floors.Place(Floors.Ordinary, 20, 10).Characteristic;
        var still = characteristic.Cool(15, 40, 0);
        still.HeatW.ShouldBe(0);
        still.ReturnC.ShouldBe(characteristic.EquivalentAmbientC);
        var balance =
            characteristic.UpwardFluxWPerM2(still.MeanWaterC)
            + characteristic.DownwardFluxWPerM2(still.MeanWaterC);
        balance.ShouldBe(0, 1e-12);
        characteristic.Cool(0, 40, 100).ReturnC.ShouldBe(40);
    }

    [Fact]
    public void Verdict_goes_from_within_by_inlet_to_exceeded_as_the_water_gets_hotter()
    {
        var floor = Floors.Place(Floors.Ordinary, 20, 10);
        SurfaceVerdict At(double supplyC) =>
            floor.OutputOf(15, supplyC, 0.03, 4190).Value.Surface.Verdict;
        At(32).ShouldBe(SurfaceVerdict.Within);
        At(39).ShouldBe(SurfaceVerdict.ExceededAtInlet);
        At(50).ShouldBe(SurfaceVerdict.Exceeded);
    }

    [Fact]
    public void Surface_beyond_the_standards_curve_carries_a_note() =>
        Floors
            .Place(Floors.Ordinary)
            .OutputOf(15, 70, 0.1, 4190)
            .Value.Surface.Notes.Single()
            .Code.ShouldBe("floor-surface-beyond-curve");

    [Fact]
    public void Loops_are_split_so_that_none_is_too_long_and_one_fewer_would_be()
    {
        // 60 m² at 0.15 m is 400 m of field; with 2 × 5 m of leader in 100 m each loop holds 90 m: five loops
        var split = LoopSplit.Equal(60, 0.15, 5, 100).Value;
        split.Count.ShouldBe(5);
        split.Loop.FieldLengthM.ShouldBe(80, 1e-9);
        split.Loop.TubeLengthM.ShouldBe(90, 1e-9);
        split.TotalTubeM.ShouldBe(450, 1e-9);
        LoopSplit.Equal(13.5, 0.15, 5, 100).Value.Count.ShouldBe(1);
        LoopSplit.Equal(10, 0.15, 50, 100).Problems.Single().Code.ShouldBe("floor-leader-too-long");
        LoopSplit.Equal(-1, 0, -1, 100).Problems.Length.ShouldBe(3);
        LoopSplit.Equal(10, 0.15, 1, double.NaN).Succeeded.ShouldBeFalse();
    }
}
