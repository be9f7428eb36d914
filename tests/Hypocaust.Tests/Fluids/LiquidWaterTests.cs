using Hypocaust.Fluids;

namespace Hypocaust.Tests.Fluids;

public sealed class LiquidWaterTests
{
    // IAPWS SR6-08(2011), table of check values, all printed digits
    [Theory]
    [InlineData(260, 997.068360, 4300.17472, 3058.36075e-6, 0.515628010)]
    [InlineData(298.15, 997.047013, 4181.44618, 889.996774e-6, 0.606502308)]
    [InlineData(375, 957.009710, 4217.74697, 276.207245e-6, 0.677913788)]
    public void At_CheckTemperatures_GivesThePrintedValues(
        double kelvin,
        double density,
        double heatCapacity,
        double viscosity,
        double conductivity
    )
    {
        var state = LiquidWater.At(kelvin - 273.15);
        state.DensityKgPerM3.ShouldBe(density, 6e-7);
        state.HeatCapacityJPerKgK.ShouldBe(heatCapacity, 6e-6);
        state.ViscosityPaS.ShouldBe(viscosity, 6e-12);
        state.ConductivityWPerMK.ShouldBe(conductivity, 6e-10);
    }

    [Theory]
    [InlineData(-20.1)]
    [InlineData(110.1)]
    [InlineData(double.NaN)]
    public void At_OutsideTheFormulation_Throws(double temperatureC) =>
        Should.Throw<ArgumentOutOfRangeException>(() => LiquidWater.At(temperatureC));
}
