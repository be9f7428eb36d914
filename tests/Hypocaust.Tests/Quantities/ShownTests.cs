using Hypocaust.Quantities;

namespace Hypocaust.Tests.Quantities;

public sealed class ShownTests
{
    // by hand: 1 K is 1.8 °F, 1 gpm is 3.785 L/min, 1 kW is 3412 BTU/h
    [Theory]
    [InlineData(1, "+1.00 K", "+1.80 °F")]
    [InlineData(-0.05, "−0.0500 K", "−0.0900 °F")]
    [InlineData(0, "+0 K", "+0 °F")]
    public void A_change_of_temperature_has_no_zero_point(double kelvin, string si, string us)
    {
        Shown.Temperature.FormatDifference(kelvin, UnitSystem.Si).ShouldBe(si);
        Shown.Temperature.FormatDifference(kelvin, UnitSystem.Us).ShouldBe(us);
    }

    [Fact]
    public void A_small_change_keeps_three_figures_and_never_turns_to_powers()
    {
        Shown.Flow.FormatDifference(0.001234 / 60000, UnitSystem.Si).ShouldBe("+0.00123 L/min");
        Shown.Heat.FormatDifference(-1000, UnitSystem.Us).ShouldBe("−3412 BTU/h");
    }

    [Fact]
    public void Nothing_is_not_minus_nothing() =>
        Shown.Heat.Format(-1e-9, UnitSystem.Si).ShouldBe("0.0 kW");
}
