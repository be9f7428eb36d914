using Hypocaust.Building;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Building;

public sealed class DryAirTests
{
    [Fact]
    public void At_WorkedCases_AgreesWithTheStandardAtmosphere()
    {
        var cases = ReferenceCsv
            .Cases("heat_loss.csv")
            .Where(found => found.Name.StartsWith("dry-air", StringComparison.Ordinal))
            .ToList();
        cases.Count.ShouldBe(5);
        foreach (var given in cases)
        {
            var air = DryAir.At(given.Input("altitude"), given.Input("temperature")).Value;
            given.ShouldGive("pressure", air.PressurePa);
            given.ShouldGive("density", air.DensityKgPerM3);
            given.ShouldGive("rho_cp", air.HeatCapacityJPerM3K / 3600);
        }
    }

    // EN 12831: 0.34 Wh/(m³·K); dry air at 20 °C and sea level is 1 % below it
    [Fact]
    public void At_RoomTemperatureAndSeaLevel_IsTheFigureOfEn12831() =>
        (DryAir.At(0, 20).Value.HeatCapacityJPerM3K / 3600).ShouldBe(0.34, 0.005);

    // psychrolib, 20 °C and 50 % humidity: moisture makes air lighter by less than 0.5 %, which dry air ignores
    [Fact]
    public void At_RoomTemperature_IsCloseToMoistAir()
    {
        var moist = ReferenceLayers.Case("moist-air-20-50-101325").Expected["density"].Number;
        (DryAir.At(0, 20).Value.DensityKgPerM3 / moist).ShouldBe(1, 0.005);
    }

    [Theory]
    [InlineData(6000, 20)]
    [InlineData(0, 61)]
    [InlineData(double.NaN, 20)]
    public void At_OutsideTheRange_IsAProblem(double altitudeM, double temperatureC) =>
        DryAir.At(altitudeM, temperatureC).Succeeded.ShouldBeFalse();
}
