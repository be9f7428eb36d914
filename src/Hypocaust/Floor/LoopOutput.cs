using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>What one loop gives at a supply temperature and flow, with the values on the way to it.</summary>
/// <remarks>Leaders between manifold and field are not counted. Energy closes: m c_p (supply − return) = up + down.</remarks>
/// <source>EN 1264-2/-3 (from memory); exponential cooling along the loop is exact for the linear characteristic</source>
public sealed record LoopOutput
{
    private LoopOutput(LoopCooling cooling, SurfaceCheck surface)
    {
        Cooling = cooling;
        Surface = surface;
    }

    /// <summary>Heated area in m².</summary>
    public double AreaM2 { get; private init; }

    /// <summary>Supply temperature in °C.</summary>
    public double SupplyC { get; private init; }

    /// <summary>Mass flow in kg/s.</summary>
    public double FlowKgPerS { get; private init; }

    /// <summary>Mass flow times specific heat in W/K.</summary>
    public double CapacityRateWPerK { get; private init; }

    /// <summary>How the water cools along the loop: NTU, return, mean.</summary>
    public LoopCooling Cooling { get; }

    /// <summary>Return temperature in °C.</summary>
    public double ReturnC => Cooling.ReturnC;

    /// <summary>Mean excess of the water over the room in K.</summary>
    public double MeanExcessK { get; private init; }

    /// <summary>The standard's logarithmic mean over the room in K, for comparison; null if the return is no warmer than the room.</summary>
    public double? StandardExcessK { get; private init; }

    /// <summary>Mean heat flux to the room in W/m².</summary>
    public double UpwardFluxWPerM2 { get; private init; }

    /// <summary>Mean heat flux downward in W/m².</summary>
    public double DownwardFluxWPerM2 { get; private init; }

    /// <summary>Heat to the room in W.</summary>
    public double HeatUpW => UpwardFluxWPerM2 * AreaM2;

    /// <summary>Heat downward in W.</summary>
    public double HeatDownW => DownwardFluxWPerM2 * AreaM2;

    /// <summary>Surface temperatures against the limit.</summary>
    public SurfaceCheck Surface { get; }

    internal static Result<LoopOutput> Of(
        WetFloor floor,
        double areaM2,
        double supplyC,
        double flowKgPerS,
        double specificHeatJPerKgK
    )
    {
        List<Problem> problems = [.. Check(areaM2, supplyC, flowKgPerS, specificHeatJPerKgK)];
        if (problems.Count > 0)
        {
            return Result<LoopOutput>.Failed(problems);
        }

        var characteristic = floor.Characteristic;
        var capacity = flowKgPerS * specificHeatJPerKgK;
        var cooling = characteristic.Cool(areaM2, supplyC, capacity);
        var roomC = floor.Surroundings.RoomC;
        if (!(cooling.MeanWaterC > roomC && supplyC > roomC))
        {
            return FloorProblems.WaterColderThanRoom(cooling.MeanWaterC, roomC);
        }

        if (supplyC <= characteristic.EquivalentAmbientC)
        {
            return FloorProblems.NoHeatToCarry(supplyC, characteristic.EquivalentAmbientC);
        }

        var upward = characteristic.UpwardFluxWPerM2(cooling.MeanWaterC);
        return new LoopOutput(cooling, SurfaceCheck.Of(floor, upward, supplyC - roomC))
        {
            AreaM2 = areaM2,
            SupplyC = supplyC,
            FlowKgPerS = flowKgPerS,
            CapacityRateWPerK = capacity,
            MeanExcessK = cooling.MeanWaterC - roomC,
            StandardExcessK =
                cooling.ReturnC > roomC
                    ? LogMeanExcess.Of(supplyC - roomC, cooling.ReturnC - roomC)
                    : null,
            UpwardFluxWPerM2 = upward,
            DownwardFluxWPerM2 = characteristic.DownwardFluxWPerM2(cooling.MeanWaterC),
        };
    }

    private static IEnumerable<Problem> Check(
        double areaM2,
        double supplyC,
        double flowKgPerS,
        double specificHeatJPerKgK
    )
    {
        if (!(areaM2.IsPositive() && areaM2 <= 1e6))
        {
            yield return Outside(
                nameof(areaM2),
                "heated area",
                areaM2,
                "m²",
                "Give an area above 0"
            );
        }

        if (!supplyC.IsWithin(-50, 120))
        {
            yield return Outside(
                nameof(supplyC),
                "supply temperature",
                supplyC,
                "°C",
                "Give a temperature from -50 °C to 120 °C"
            );
        }

        if (!flowKgPerS.IsWithin(1e-9, 1e6))
        {
            yield return Outside(
                nameof(flowKgPerS),
                "flow",
                flowKgPerS,
                "kg/s",
                "Give a flow above 0; a loop without flow gives no heat"
            );
        }

        if (!specificHeatJPerKgK.IsWithin(500, 10000))
        {
            yield return Outside(
                nameof(specificHeatJPerKgK),
                "specific heat",
                specificHeatJPerKgK,
                "J/kgK",
                "Give the fluid's specific heat; water has about 4190 J/kgK"
            );
        }
    }

    private static Problem Outside(
        string place,
        string quantity,
        double value,
        string unit,
        string remedy
    ) => FloorProblems.Outside("floor-loop-outside", place, quantity, value, unit, remedy);
}
