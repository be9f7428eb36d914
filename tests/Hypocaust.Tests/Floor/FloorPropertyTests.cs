using System.Collections;
using System.Reflection;
using Hypocaust.Floor;
using Hypocaust.Problems;

namespace Hypocaust.Tests.Floor;

/// <summary>What must hold for every floor inside the validity; 2000 drawn floors, fixed seed.</summary>
public sealed class FloorPropertyTests
{
    private const int Draws = 2000;
    private const double SpecificHeat = 4190;

    [Fact]
    public void Every_drawn_floor_gives_positive_finite_values_throughout()
    {
        var random = new Random(1264);
        for (var i = 0; i < Draws; i++)
        {
            var floor = Draw(random);
            floor.Output.ConductanceWPerM2K.ShouldBeGreaterThan(0);
            floor.Output.SystemCoefficientWPerM2K.ShouldBeGreaterThan(0);
            AllFinite(floor);
            if (Loop(floor, random).TryGet(out var loop))
            {
                AllFinite(loop);
            }

            if (
                floor
                    .SupplyFor(Floors.Pick(random, 5, 150), Floors.Pick(random, 1, 15))
                    .TryGet(out var supply)
            )
            {
                AllFinite(supply);
            }
        }
    }

    [Fact]
    public void Energy_of_a_loop_closes()
    {
        var random = new Random(2);
        var closed = 0;
        for (var i = 0; i < Draws; i++)
        {
            if (!Loop(Draw(random), random).TryGet(out var loop))
            {
                continue;
            }

            var carried = loop.CapacityRateWPerK * loop.Cooling.DropK;
            var given = loop.HeatUpW + loop.HeatDownW;
            // relative to the greater part, since up and down may have opposite signs
            var scale = Math.Max(Math.Abs(loop.HeatUpW), Math.Abs(loop.HeatDownW));
            given.ShouldBe(carried, 1e-12 * scale);
            loop.Cooling.HeatW.ShouldBe(carried, 1e-12 * scale);
            loop.ReturnC.ShouldBe(loop.SupplyC - loop.Cooling.DropK, 1e-12 * 100);
            closed++;
        }

        closed.ShouldBeGreaterThan(Draws / 2);
    }

    [Fact]
    public void Output_rises_with_supply_temperature_and_with_flow()
    {
        var random = new Random(3);
        for (var i = 0; i < Draws; i++)
        {
            var floor = Draw(random);
            if (!floor.OutputOf(15, 45, 0.03, SpecificHeat).TryGet(out var loop))
            {
                continue;
            }

            floor
                .OutputOf(15, 46, 0.03, SpecificHeat)
                .Value.HeatUpW.ShouldBeGreaterThan(loop.HeatUpW);
            floor
                .OutputOf(15, 45, 0.04, SpecificHeat)
                .Value.HeatUpW.ShouldBeGreaterThan(loop.HeatUpW);
        }
    }

    [Fact]
    public void Output_falls_with_spacing_and_with_covering()
    {
        // one more centimetre of spacing or 0.01 m²K/W of covering, anywhere inside the table
        var random = new Random(4);
        for (var i = 0; i < Draws; i++)
        {
            var stated = Floors.Draw(random) with
            {
                SpacingM = Floors.Pick(random, 0.05, 0.99),
                CoveringResistanceM2KPerW = Floors.Pick(random, 0, 0.1399),
            };
            var conductance = Conductance(stated);
            Conductance(stated with { SpacingM = stated.SpacingM + 0.01 })
                .ShouldBeLessThan(conductance, stated.ToString());
            Conductance(
                    stated with
                    {
                        CoveringResistanceM2KPerW = stated.CoveringResistanceM2KPerW + 0.01,
                    }
                )
                .ShouldBeLessThan(conductance, stated.ToString());
        }
    }

    [Fact]
    public void Output_falls_with_cover_and_with_tube_wall_and_does_not_jump_where_the_rules_change()
    {
        var random = new Random(5);
        for (var i = 0; i < Draws; i++)
        {
            var stated = Floors.Draw(random);
            stated = stated with { CoverM = Math.Max(0.01, stated.CoverM - 0.001) };
            var conductance = Conductance(stated);
            Conductance(stated with { CoverM = stated.CoverM + 0.001 })
                .ShouldBeLessThan(conductance);
            Conductance(stated with { CoverM = stated.CoverM + 1e-9 }).ShouldBe(conductance, 1e-6);
            Conductance(stated with { SpacingM = Math.Min(stated.SpacingM + 1e-9, 1) })
                .ShouldBe(conductance, 1e-5);
            var thicker = stated.Tube with { WallM = stated.Tube.WallM + 0.00005 };
            Conductance(stated with { Tube = thicker }).ShouldBeLessThan(conductance);
        }
    }

    [Fact]
    public void Supply_for_a_flux_and_output_at_that_supply_are_inverse()
    {
        var random = new Random(6);
        for (var i = 0; i < Draws; i++)
        {
            var floor = Draw(random);
            var flux = Floors.Pick(random, 10, 100);
            if (
                !floor.SupplyFor(flux, Floors.Pick(random, 2, 12)).TryGet(out var supply)
                || supply.SupplyC > 120
            )
            {
                continue;
            }

            var flow = supply.FlowKgPerS(12, SpecificHeat);
            var loop = floor.OutputOf(12, supply.SupplyC, flow, SpecificHeat).Value;
            loop.UpwardFluxWPerM2.ShouldBe(flux, 1e-9 * flux);
            loop.ReturnC.ShouldBe(supply.ReturnC, 1e-9);
        }
    }

    [Fact]
    public void Hottest_spot_is_at_least_as_warm_as_the_surface_around_it_and_reaches_the_limit_at_the_limit()
    {
        var random = new Random(7);
        var checkedFloors = 0;
        for (var i = 0; i < Draws; i++)
        {
            var floor = Draw(random);
            if (!floor.Limit.TryGet(out var limit))
            {
                continue;
            }

            var room = floor.Surroundings.RoomC;
            (room + limit.Curve.HottestExcessK(limit.WaterExcessK)).ShouldBe(
                limit.MaximumSurfaceC,
                1e-9
            );
            limit.FluxWPerM2.ShouldBeLessThanOrEqualTo(limit.UniformFluxWPerM2 * (1 + 1e-12));
            var mean = SurfaceCurve.ExcessK(floor.Output.FluxWPerM2(20));
            limit.Curve.HottestExcessK(20).ShouldBeGreaterThanOrEqualTo(mean * (1 - 1e-12));
            checkedFloors++;
        }

        checkedFloors.ShouldBeGreaterThan(Draws / 10);
    }

    private static WetFloor Draw(Random random) =>
        Floors.Place(
            Floors.Draw(random),
            Floors.Pick(random, 5, 26),
            Floors.Pick(random, -20, 25),
            (SurfaceZone)random.Next(3)
        );

    private static Result<LoopOutput> Loop(WetFloor floor, Random random) =>
        floor.OutputOf(
            Floors.Pick(random, 0.5, 60),
            Floors.Pick(random, 20, 90),
            Math.Exp(Floors.Pick(random, Math.Log(0.0005), Math.Log(1))),
            Floors.Pick(random, 3300, 4200)
        );

    private static double Conductance(WetFloorSpecification stated) =>
        En1264Output.Of(Floors.Section(stated)).ConductanceWPerM2K;

    /// <summary>Walks every public property, so that no field of a result can hide a NaN.</summary>
    private static void AllFinite(object result)
    {
        foreach (
            var property in result
                .GetType()
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        )
        {
            if (property.GetIndexParameters().Length > 0 || property.Name is "Value" or "Problems")
            {
                continue;
            }

            var value = property.GetValue(result);
            if (value is double number)
            {
                double.IsFinite(number).ShouldBeTrue($"{result.GetType().Name}.{property.Name}");
            }
            else if (
                value is not (null or string or IEnumerable)
                && value.GetType() is { IsEnum: false, Namespace: "Hypocaust.Floor" }
            )
            {
                AllFinite(value);
            }
        }
    }
}
