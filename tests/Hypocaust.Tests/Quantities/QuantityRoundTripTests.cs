using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Hypocaust.Quantities;

namespace Hypocaust.Tests.Quantities;

/// <summary>Reading what we write gives the same double, for every kind and unit.</summary>
public sealed class QuantityRoundTripTests
{
    [Property(Replay = "20260117,3", MaxTest = 500)]
    public Property Parse_of_format_is_identity(NormalFloat number) =>
        AllRoundTrip(number.Get).ToProperty();

    [Theory]
    [InlineData(0)]
    [InlineData(1e-300)]
    [InlineData(1.7976931348623157e308)]
    [InlineData(0.1)]
    [InlineData(1.0 / 3)]
    [InlineData(123456789.123456789)]
    public void Parse_of_format_is_identity_at_the_edges(double number) =>
        AllRoundTrip(number).ShouldBeTrue();

    [Property(Replay = "20260117,5", MaxTest = 300)]
    public Property A_number_in_any_unit_reads_as_its_factor_says(PositiveInt thousandths)
    {
        var number = thousandths.Get / 1000.0;
        var text = number.ToString("R", CultureInfo.InvariantCulture);
        return LengthKind
            .Kind.Units.All(unit =>
                Quantity<LengthKind>.Read($"{text} {unit.Symbol}").Value.Si == unit.ToSi(number)
            )
            .ToProperty();
    }

    [Property(Replay = "20260117,7", MaxTest = 300)]
    public Property There_and_back_through_any_unit_loses_at_most_rounding(NormalFloat value)
    {
        var si = Math.Clamp(value.Get, -1e12, 1e12);
        return AllKinds
            .List.SelectMany(kind => kind.Units)
            .All(unit => Math.Abs(unit.ToSi(unit.FromSi(si)) - si) <= 1e-12 * (Math.Abs(si) + 500))
            .ToProperty();
    }

    [Property(Replay = "20260117,9", MaxTest = 2000)]
    public Property Any_text_gives_a_finite_value_or_a_problem(string? text)
    {
        var read = Quantity<LengthKind>.Read(text ?? "");
        return (
            read.TryGet(out var value) ? double.IsFinite(value.Si) : read.Problems.Length == 1
        ).ToProperty();
    }

    [Fact]
    public void No_text_of_likely_characters_makes_reading_throw_or_give_nan()
    {
        var random = new Random(11);
        const string Likely = "0123456789./-+eE '\"½¾ftinmKvCRW²°%,·…";
        for (var i = 0; i < 50_000; i++)
        {
            var text = string.Concat(
                Enumerable.Range(0, random.Next(12)).Select(_ => Likely[random.Next(Likely.Length)])
            );
            Check(Quantity<LengthKind>.Read(text));
            Check(Quantity<ThermalResistanceKind>.Read(text));
            Check(Quantity<FlowCoefficientKind>.Read(text));
        }

        static void Check<TKind>(Hypocaust.Problems.Result<Quantity<TKind>> read)
            where TKind : IQuantityKind
        {
            if (read.TryGet(out var value) && !double.IsFinite(value.Si))
            {
                throw new InvalidOperationException(value.Text);
            }
        }
    }

    private static bool AllRoundTrip(double si) =>
        RoundTrips<LengthKind>(si)
        && RoundTrips<AreaKind>(si)
        && RoundTrips<VolumeKind>(si)
        && RoundTrips<TemperatureKind>(si)
        && RoundTrips<TemperatureDifferenceKind>(si)
        && RoundTrips<PowerKind>(si)
        && RoundTrips<PressureKind>(si)
        && RoundTrips<VolumeFlowKind>(si)
        && RoundTrips<ConductivityKind>(si)
        && RoundTrips<ThermalResistanceKind>(si)
        && RoundTrips<TransmittanceKind>(si)
        && RoundTrips<FractionKind>(si)
        && RoundTrips<AirChangeKind>(si)
        && RoundTrips<FlowCoefficientKind>(si);

    private static bool RoundTrips<TKind>(double si)
        where TKind : IQuantityKind
    {
        var read = Quantity<TKind>.Read(Quantity<TKind>.FromSi(si).Text);
        return read.TryGet(out var back)
            && BitConverter.DoubleToInt64Bits(back.Si + 0.0)
                == BitConverter.DoubleToInt64Bits(si + 0.0);
    }
}
