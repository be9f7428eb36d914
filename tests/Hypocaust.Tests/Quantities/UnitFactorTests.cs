using Hypocaust.Quantities;
using UnitsNet.Units;

namespace Hypocaust.Tests.Quantities;

/// <summary>Every unit that we read, against UnitsNet, an independent library; what it does not know, against the definition.</summary>
public sealed class UnitFactorTests
{
    private const double Tolerance = 1e-9; // UnitsNet rounds some of its factors to ten digits

    public static TheoryData<string, string, string, double> Factors
    {
        get
        {
            var rows = new TheoryData<string, string, string, double>();
            void Add(QuantityKind kind, string unit, UnitsNet.IQuantity one, Enum si) =>
                rows.Add(kind.Name, unit, one.GetType().Name, one.As(si));

            Add(LengthKind.Kind, "m", UnitsNet.Length.FromMeters(1), LengthUnit.Meter);
            Add(LengthKind.Kind, "mm", UnitsNet.Length.FromMillimeters(1), LengthUnit.Meter);
            Add(LengthKind.Kind, "cm", UnitsNet.Length.FromCentimeters(1), LengthUnit.Meter);
            Add(LengthKind.Kind, "ft", UnitsNet.Length.FromFeet(1), LengthUnit.Meter);
            Add(LengthKind.Kind, "in", UnitsNet.Length.FromInches(1), LengthUnit.Meter);
            Add(AreaKind.Kind, "m²", UnitsNet.Area.FromSquareMeters(1), AreaUnit.SquareMeter);
            Add(AreaKind.Kind, "ft²", UnitsNet.Area.FromSquareFeet(1), AreaUnit.SquareMeter);
            Add(VolumeKind.Kind, "m³", UnitsNet.Volume.FromCubicMeters(1), VolumeUnit.CubicMeter);
            Add(VolumeKind.Kind, "L", UnitsNet.Volume.FromLiters(1), VolumeUnit.CubicMeter);
            Add(VolumeKind.Kind, "gal", UnitsNet.Volume.FromUsGallons(1), VolumeUnit.CubicMeter);
            Add(VolumeKind.Kind, "ft³", UnitsNet.Volume.FromCubicFeet(1), VolumeUnit.CubicMeter);
            Add(PowerKind.Kind, "W", UnitsNet.Power.FromWatts(1), PowerUnit.Watt);
            Add(PowerKind.Kind, "kW", UnitsNet.Power.FromKilowatts(1), PowerUnit.Watt);
            Add(
                PowerKind.Kind,
                "BTU/h",
                UnitsNet.Power.FromBritishThermalUnitsPerHour(1),
                PowerUnit.Watt
            );
            Add(
                PowerKind.Kind,
                "kBTU/h",
                UnitsNet.Power.FromKilobritishThermalUnitsPerHour(1),
                PowerUnit.Watt
            );
            Add(PressureKind.Kind, "Pa", UnitsNet.Pressure.FromPascals(1), PressureUnit.Pascal);
            Add(
                PressureKind.Kind,
                "kPa",
                UnitsNet.Pressure.FromKilopascals(1),
                PressureUnit.Pascal
            );
            Add(PressureKind.Kind, "bar", UnitsNet.Pressure.FromBars(1), PressureUnit.Pascal);
            Add(PressureKind.Kind, "mbar", UnitsNet.Pressure.FromMillibars(1), PressureUnit.Pascal);
            Add(
                PressureKind.Kind,
                "psi",
                UnitsNet.Pressure.FromPoundsForcePerSquareInch(1),
                PressureUnit.Pascal
            );
            Add(
                VolumeFlowKind.Kind,
                "m³/s",
                UnitsNet.VolumeFlow.FromCubicMetersPerSecond(1),
                VolumeFlowUnit.CubicMeterPerSecond
            );
            Add(
                VolumeFlowKind.Kind,
                "m³/h",
                UnitsNet.VolumeFlow.FromCubicMetersPerHour(1),
                VolumeFlowUnit.CubicMeterPerSecond
            );
            Add(
                VolumeFlowKind.Kind,
                "L/min",
                UnitsNet.VolumeFlow.FromLitersPerMinute(1),
                VolumeFlowUnit.CubicMeterPerSecond
            );
            Add(
                VolumeFlowKind.Kind,
                "L/s",
                UnitsNet.VolumeFlow.FromLitersPerSecond(1),
                VolumeFlowUnit.CubicMeterPerSecond
            );
            Add(
                VolumeFlowKind.Kind,
                "L/h",
                UnitsNet.VolumeFlow.FromLitersPerHour(1),
                VolumeFlowUnit.CubicMeterPerSecond
            );
            Add(
                VolumeFlowKind.Kind,
                "gpm",
                UnitsNet.VolumeFlow.FromUsGallonsPerMinute(1),
                VolumeFlowUnit.CubicMeterPerSecond
            );
            Add(
                TemperatureDifferenceKind.Kind,
                "K",
                UnitsNet.TemperatureDelta.FromKelvins(1),
                TemperatureDeltaUnit.Kelvin
            );
            Add(
                TemperatureDifferenceKind.Kind,
                "°F",
                UnitsNet.TemperatureDelta.FromDegreesFahrenheit(1),
                TemperatureDeltaUnit.Kelvin
            );
            Add(
                ConductivityKind.Kind,
                "W/mK",
                UnitsNet.ThermalConductivity.FromWattsPerMeterKelvin(1),
                ThermalConductivityUnit.WattPerMeterKelvin
            );
            Add(
                TransmittanceKind.Kind,
                "W/m²K",
                UnitsNet.HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1),
                HeatTransferCoefficientUnit.WattPerSquareMeterKelvin
            );
            Add(
                TransmittanceKind.Kind,
                "BTU/h·ft²·°F",
                UnitsNet.HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(1),
                HeatTransferCoefficientUnit.WattPerSquareMeterKelvin
            );
            Add(
                ThermalResistanceKind.Kind,
                "m²K/W",
                UnitsNet.ThermalResistance.From(1, ThermalResistanceUnit.SquareMeterKelvinPerWatt),
                ThermalResistanceUnit.SquareMeterKelvinPerWatt
            );
            Add(
                FractionKind.Kind,
                "1",
                UnitsNet.Ratio.FromDecimalFractions(1),
                RatioUnit.DecimalFraction
            );
            Add(FractionKind.Kind, "%", UnitsNet.Ratio.FromPercent(1), RatioUnit.DecimalFraction);
            // where the library has no unit or only a rounded one (its R-value is 1.1e-5 above the exact factor): made from its others
            var inch = UnitsNet.Length.FromInches(1).Meters;
            var transmittance = UnitsNet
                .HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(1)
                .WattsPerSquareMeterKelvin;
            rows.Add(
                "thermal conductivity",
                "BTU·in/h·ft²·°F",
                "its transmittance times an inch",
                transmittance * inch
            );
            rows.Add(
                "thermal resistance",
                "ft²·°F·h/BTU",
                "one over its transmittance",
                1 / transmittance
            );
            rows.Add("air change rate", "1/h", "definition", 1);
            rows.Add("flow coefficient", "Kv", "definition", 1);
            // one US gallon a minute at 1 psi, seen at 1 bar: IEC 60534-1, Kv = 0.865 Cv
            rows.Add(
                "flow coefficient",
                "Cv",
                "UsGallonsPerMinute",
                UnitsNet.VolumeFlow.FromUsGallonsPerMinute(1).CubicMetersPerHour
                    * Math.Sqrt(UnitsNet.Pressure.FromBars(1).PoundsForcePerSquareInch)
            );
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Factors))]
    public void A_factor_agrees_with_the_independent_library(
        string kind,
        string unit,
        string against,
        double si
    )
    {
        Kind(kind).Find(unit)!.ToSi(1).ShouldBe(si, Tolerance * Math.Abs(si), against);
        Kind(kind).Find(unit)!.FromSi(si).ShouldBe(1, Tolerance, against);
    }

    [Theory]
    [InlineData("°C", -40, TemperatureUnit.DegreeCelsius)]
    [InlineData("°C", 37.5, TemperatureUnit.DegreeCelsius)]
    [InlineData("°F", -40, TemperatureUnit.DegreeFahrenheit)]
    [InlineData("°F", 104, TemperatureUnit.DegreeFahrenheit)]
    [InlineData("K", 300, TemperatureUnit.Kelvin)]
    [InlineData("K", 0, TemperatureUnit.Kelvin)]
    public void A_temperature_agrees_with_the_independent_library(
        string unit,
        double number,
        TemperatureUnit theirs
    ) =>
        TemperatureKind
            .Kind.Find(unit)!
            .ToSi(number)
            .ShouldBe(UnitsNet.Temperature.From(number, theirs).DegreesCelsius, 1e-9);

    // NIST SP 811 (2008), appendix B.8, seven digits; from memory
    [Theory]
    [InlineData("thermal resistance", "ft²·°F·h/BTU", 0.1761102)]
    [InlineData("thermal conductivity", "BTU·in/h·ft²·°F", 0.1442279)]
    [InlineData("thermal transmittance", "BTU/h·ft²·°F", 5.678263)]
    [InlineData("power", "BTU/h", 0.2930711)]
    [InlineData("pressure", "psi", 6894.757)]
    [InlineData("flow", "gpm", 6.309020e-5)]
    public void A_us_factor_agrees_with_the_published_table(string kind, string unit, double si) =>
        Kind(kind).Find(unit)!.ToSi(1).ShouldBe(si, 1e-6 * si);

    [Fact]
    public void No_unit_is_left_unchecked()
    {
        var checkedUnits = Factors.Select(row => (row.Data.Item1, row.Data.Item2)).ToHashSet();
        foreach (var kind in AllKinds.List.Where(kind => kind != TemperatureKind.Kind))
        {
            foreach (var unit in kind.Units)
            {
                checkedUnits.ShouldContain((kind.Name, unit.Symbol));
            }
        }
    }

    private static QuantityKind Kind(string name) =>
        AllKinds.List.Single(kind => kind.Name == name);
}
