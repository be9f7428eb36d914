using Hypocaust.Problems;
using Hypocaust.Quantities;

namespace Hypocaust.Tests.Quantities;

/// <summary>Spellings that must and must not be understood. Values by definition of the units.</summary>
public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("12 ft 6 in", 3.81)]
    [InlineData("12' 6\"", 3.81)]
    [InlineData("12'6\"", 3.81)]
    [InlineData("12′ 6″", 3.81)]
    [InlineData("12ft6in", 3.81)]
    [InlineData("12 feet 6 inches", 3.81)]
    [InlineData("12' 6 1/2\"", 3.8227)]
    [InlineData("12 ft 6-1/2 in", 3.8227)]
    [InlineData("-1 ft 6 in", -0.4572)]
    [InlineData("-0 ft 6 in", -0.1524)]
    [InlineData("3/4 in", 0.01905)]
    [InlineData("1 1/4 in", 0.03175)]
    [InlineData("1-1/4\"", 0.03175)]
    [InlineData("6½ in", 0.1651)]
    [InlineData("½ in", 0.0127)]
    [InlineData("5/8''", 0.015875)]
    [InlineData("3500mm", 3.5)]
    [InlineData("3.5 M", 3.5)]
    [InlineData(" 3.5\u00a0m ", 3.5)]
    [InlineData("+3.5 m", 3.5)]
    [InlineData(".5 m", 0.5)]
    [InlineData("5. m", 5)]
    [InlineData("35e-1 m", 3.5)]
    [InlineData("−2 m", -2)]
    [InlineData("0 m", 0)]
    public void A_length_is_understood(string text, double metres) =>
        Quantity<LengthKind>.Read(text).Value.Si.ShouldBe(metres, 1e-12);

    [Theory]
    [InlineData("40 °C", 40)]
    [InlineData("40°C", 40)]
    [InlineData("40 C", 40)]
    [InlineData("−5 °C", -5)]
    [InlineData("104 °F", 40)]
    [InlineData("104F", 40)]
    [InlineData("-40 degF", -40)]
    [InlineData("273.15 K", 0)]
    public void A_temperature_is_understood(string text, double celsius) =>
        Quantity<TemperatureKind>.Read(text).Value.Si.ShouldBe(celsius, 1e-10);

    [Fact]
    public void Other_kinds_are_understood()
    {
        Quantity<PowerKind>.Read("30000 BTU/h").Value.Si.ShouldBe(8792.1321, 1e-3);
        Quantity<PowerKind>.Read("30 MBH").Value.Si.ShouldBe(8792.1321, 1e-3);
        Quantity<ThermalResistanceKind>.Read("R-20").Value.Si.ShouldBe(3.5222, 1e-4);
        Quantity<ThermalResistanceKind>.Read("r20").Value.Si.ShouldBe(3.5222, 1e-4);
        Quantity<TransmittanceKind>.Read("0.2 W/(m2 K)").Value.Si.ShouldBe(0.2);
        Quantity<FlowCoefficientKind>.Read("Cv 10").Value.Si.ShouldBe(8.65, 0.005);
        Quantity<FlowCoefficientKind>.Read("1.6 Kv").Value.Si.ShouldBe(1.6);
        Quantity<FractionKind>.Read("35 %").Value.Si.ShouldBe(0.35, 1e-15);
        Quantity<AirChangeKind>.Read("2 1/h").Value.Si.ShouldBe(2);
        Quantity<AirChangeKind>.Read("0.5 ACH").Value.Si.ShouldBe(0.5);
        Quantity<PressureKind>.Read("12 psi").Value.Si.ShouldBe(82737.1, 0.1);
        Quantity<VolumeFlowKind>.Read("2.5 gpm").Value.Si.ShouldBe(1.57725e-4, 1e-8);
    }

    [Theory]
    [InlineData("", "not-a-quantity")]
    [InlineData("  ", "not-a-quantity")]
    [InlineData("long", "not-a-quantity")]
    [InlineData("NaN m", "not-a-quantity")]
    [InlineData("Infinity m", "not-a-quantity")]
    [InlineData("m", "not-a-quantity")]
    [InlineData("--5 m", "not-a-quantity")]
    [InlineData("9", "no-unit")]
    [InlineData("3/4", "no-unit")]
    [InlineData("3,5 m", "comma-in-number")]
    [InlineData("1,000 mm", "comma-in-number")]
    [InlineData("1e999 m", "not-finite")]
    [InlineData("9 kW", "wrong-dimension")]
    [InlineData("9 m²", "wrong-dimension")]
    [InlineData("9 L/min", "wrong-dimension")]
    [InlineData("9 furlong", "unknown-unit")]
    [InlineData("1/0 in", "unknown-unit")]
    [InlineData("12 ft 13 in", "unknown-unit")]
    [InlineData("12 ft -6 in", "unknown-unit")]
    [InlineData("12 m 6 in", "unknown-unit")]
    [InlineData("5 m..2 m", "range-upside-down")]
    [InlineData("5..2 m", "range-upside-down")]
    [InlineData("5 kW..2 m", "wrong-dimension")]
    [InlineData("5..", "not-a-quantity")]
    [InlineData("1..2..3 m", "unknown-unit")]
    public void A_text_that_is_no_length_is_refused(string text, string code)
    {
        var problem = Quantity<LengthKind>.Read(text).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe(code);
        problem.Remedy.ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("8..12 mm", 0.008, 0.012)]
    [InlineData("8 mm..1.2 cm", 0.008, 0.012)]
    [InlineData("8…12 mm", 0.008, 0.012)]
    [InlineData("-1..1 m", -1, 1)]
    [InlineData("1/2..3/4 in", 0.0127, 0.01905)]
    [InlineData("5 ft 6 in..6 ft", 1.6764, 1.8288)]
    [InlineData("1.5..1.5 m", 1.5, 1.5)]
    public void A_range_has_both_ends_and_its_middle(string text, double low, double high)
    {
        var range = Quantity<LengthKind>.Read(text).Value;
        range.Range!.Value.LowSi.ShouldBe(low, 1e-12);
        range.Range!.Value.HighSi.ShouldBe(high, 1e-12);
        range.Si.ShouldBe((low + high) / 2, 1e-12);
    }

    [Fact]
    public void A_problem_of_another_dimension_says_what_was_written_and_what_belongs()
    {
        Problem problem = Quantity<AreaKind>.Read("9 kW").Problems[0];
        problem.What.ShouldBe("\"9 kW\" is a power, but an area belongs here");
        problem.Remedy.ShouldContain("m², ft²");
    }

    [Fact]
    public void A_quantity_is_never_made_from_a_number_that_is_none() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Quantity<LengthKind>.FromSi(double.NaN));

    [Fact]
    public void Written_text_is_kept()
    {
        var length = Quantity<LengthKind>.Read(" 12' 6\" ").Value;
        length.Text.ShouldBe(" 12' 6\" ");
        length.IsAssumed.ShouldBeFalse();
        length.Assumed().IsAssumed.ShouldBeTrue();
        length.Assumed().Text.ShouldBe(length.Text);
    }
}
