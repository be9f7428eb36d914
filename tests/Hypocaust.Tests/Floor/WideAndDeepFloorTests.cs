using Hypocaust.Floor;

namespace Hypocaust.Tests.Floor;

/// <summary>Rules beyond the tables, from memory of EN 1264-2: checked by hand for what they say, not for being the standard's.</summary>
public sealed class WideAndDeepFloorTests
{
    [Fact]
    public void Wider_than_the_table_gives_the_output_of_0375_scaled()
    {
        var table = Output(Floors.Ordinary with { SpacingM = 0.375 });
        var wide = Output(Floors.Ordinary with { SpacingM = 0.5 });
        wide.ConductanceWPerM2K.ShouldBe(table.ConductanceWPerM2K * 0.75, 1e-12);
    }

    [Fact]
    public void Wide_limit_excess_is_that_of_0375_as_long_as_the_cover_is_thin_and_more_when_thick()
    {
        // s_u/T = 0.045/0.5 = 0.09 is below 0.173: f_G = 1
        var thin = Floors.Ordinary with
        {
            SpacingM = 0.5,
        };
        LimitCurve
            .Of(Output(thin))
            .Value.TabulatedExcessK.ShouldBe(
                LimitCurve.Of(Output(thin with { SpacingM = 0.375 })).Value.TabulatedExcessK,
                1e-9
            );
        LimitCurve.Of(Output(thin)).Value.WideSpacingFactor.ShouldBe(1);

        // s_u/T = 0.09/0.4 = 0.225: f_G by hand, (100.007 − (100.007 − q) e^(−20·0.052²))/q
        var thick = Output(Floors.Ordinary with { SpacingM = 0.4, CoverM = 0.09 });
        var curve = LimitCurve.Of(thick).Value;
        var flux = thick.FluxWPerM2(curve.TabulatedExcessK) / curve.WideSpacingFactor;
        curve.WideSpacingFactor.ShouldBe(
            (100.00728 - (100.00728 - flux) * Math.Exp(-20 * 0.052 * 0.052)) / flux,
            1e-6
        );
        curve.WideSpacingFactor.ShouldBeGreaterThan(1);
    }

    [Theory]
    [InlineData(0.15, 0.1)]
    [InlineData(0.2, 0.1)]
    [InlineData(0.3, 0.15)]
    public void Cover_beyond_the_limit_adds_as_a_plain_resistance(double spacing, double limit)
    {
        var atLimit = Output(Floors.Ordinary with { SpacingM = spacing, CoverM = limit });
        var deeper = Output(Floors.Ordinary with { SpacingM = spacing, CoverM = limit + 0.06 });
        deeper.CoverLimitM.ShouldBe(limit, 1e-12);
        (1 / deeper.ConductanceWPerM2K - 1 / atLimit.ConductanceWPerM2K).ShouldBe(0.05, 1e-12);
    }

    private static En1264Output Output(WetFloorSpecification stated) =>
        En1264Output.Of(Floors.Section(stated));
}
