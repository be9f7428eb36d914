using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Tests.Design;

/// <summary>What a compact run means, join by join, worked out by hand.</summary>
public sealed class RunRouteTests
{
    [Fact]
    public void A_run_becomes_joins_with_its_pipe_summed() =>
        Route(0)
            .ShouldBe([
                "boiler.out > relief.in direct",
                "relief.in > air.in 0.6096 m 1 elbows 0 tees",
                "air.out > tank.in direct",
                "tank.in > pump1.in direct",
                "pump1.out > tees.primaryIn 0.4572 m 0 elbows 0 tees",
            ]);

    [Fact]
    public void Two_pieces_of_pipe_in_a_row_are_one() =>
        Route(3)
            .ShouldBe([
                "tees.secondaryOut > pump2.in direct",
                "pump2.out > t1.in direct",
                "t1.in > bars.supply 0.508 m 0 elbows 0 tees",
            ]);

    [Fact]
    public void A_tee_is_passed_from_a_to_b_and_a_run_ends_at_an_inlet() =>
        Route(1)
            .ShouldBe([
                "tees.primaryOut > branch.a 1.524 m 3 elbows 1 tees",
                "branch.b > boiler.in 0.3048 m 0 elbows 0 tees",
            ]);

    [Fact]
    public void A_port_written_in_the_middle_turns_the_part_round() =>
        Route(0, TestDesigns.With("\"pump1\", \"1.5 ft\"", "\"pump1.out\", \"1.5 ft\""))
            .Skip(3)
            .ShouldBe([
                "tank.in > pump1.out direct",
                "pump1.in > tees.primaryIn 0.4572 m 0 elbows 0 tees",
            ]);

    private static ImmutableArray<string> Route(int run, string text = TestDesigns.Workshop)
    {
        var design = TestDesigns.Read(text).Design;
        var joins = RunRoute
            .Read(design.Plant!.Runs[run], run, new PartLookup(design).OfItem)
            .Value;
        return
        [
            .. joins.Select(join =>
                $"{join.From} > {join.To} "
                + (
                    join.IsDirect
                        ? "direct"
                        : FormattableString.Invariant(
                            $"{Math.Round(join.LengthM, 9)} m {join.Elbows} elbows {join.Tees} tees"
                        )
                )
            ),
        ];
    }
}
