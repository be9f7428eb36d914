using Hypocaust.Fluids;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Fluids;

public sealed class WaterTests
{
    [Fact]
    public void SaturationPressurePa_ReferenceTemperatures_AgreesWithIf97()
    {
        foreach (var row in ReferenceCsv.Table("water_vapour_pressure.csv"))
        {
            var expected = row.Number("p_sat_Pa");
            Water.SaturationPressurePa(row.Number("T_C")).Value.ShouldBe(expected, 1e-8 * expected);
        }
    }

    // IAPWS R7-97(2012), table 35 (300 K) and table 36 (0.1 MPa)
    [Fact]
    public void Saturation_CheckValuesOfTheRelease_AllDigits()
    {
        Water.SaturationPressurePa(300 - 273.15).Value.ShouldBe(0.353658941e4, 1e-5);
        Water.BoilingPointC(1e5).Value.ShouldBe(0.372755919e3 - 273.15, 1e-6);
    }

    [Fact]
    public void BoilingPointC_IsTheInverseOfSaturationPressure()
    {
        for (var temperatureC = 1.0; temperatureC < 200; temperatureC += 7)
        {
            Water
                .SaturationPressurePa(temperatureC)
                .Then(Water.BoilingPointC)
                .Value.ShouldBe(temperatureC, 1e-6);
        }
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(200.1)]
    [InlineData(double.NaN)]
    public void SaturationPressurePa_OutsideTheRange_IsAProblem(double temperatureC) =>
        Water.SaturationPressurePa(temperatureC).Succeeded.ShouldBeFalse();

    [Theory]
    [InlineData(600)]
    [InlineData(2e6)]
    [InlineData(double.NaN)]
    public void BoilingPointC_OutsideTheRange_IsAProblem(double pressurePa) =>
        Water.BoilingPointC(pressurePa).Succeeded.ShouldBeFalse();
}
