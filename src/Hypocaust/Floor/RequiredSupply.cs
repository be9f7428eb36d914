using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>The supply temperature that gives a heat flux with a chosen temperature drop, with the values on the way to it.</summary>
/// <source>EN 1264-2/-3 (from memory)</source>
public sealed record RequiredSupply
{
    private RequiredSupply(SurfaceCheck surface) => Surface = surface;

    /// <summary>Heat flux q to the room in W/m².</summary>
    public double FluxWPerM2 { get; private init; }

    /// <summary>Heat flux q_u downward in W/m².</summary>
    public double DownwardFluxWPerM2 { get; private init; }

    /// <summary>Mean excess Δθ_H = q/K_H of the water over the room in K.</summary>
    public double MeanExcessK { get; private init; }

    /// <summary>Mean water temperature in °C.</summary>
    public double MeanWaterC { get; private init; }

    /// <summary>Supply minus return σ in K.</summary>
    public double DropK { get; private init; }

    /// <summary>Supply temperature in °C; exact for the cooling of the water towards the equivalent ambient.</summary>
    public double SupplyC { get; private init; }

    /// <summary>Return temperature in °C.</summary>
    public double ReturnC => SupplyC - DropK;

    /// <summary>Supply temperature in °C by the standard's logarithmic mean over the room, for comparison.</summary>
    public double StandardSupplyC { get; private init; }

    /// <summary>Mass flow times specific heat for one square metre in W/(m²·K): (q + q_u)/σ.</summary>
    public double CapacityRateWPerM2K => (FluxWPerM2 + DownwardFluxWPerM2) / DropK;

    /// <summary>Surface temperatures against the limit.</summary>
    public SurfaceCheck Surface { get; }

    /// <summary>Mass flow in kg/s for a heated area in m² and a specific heat in J/(kg·K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The specific heat is not above 0.</exception>
    public double FlowKgPerS(double areaM2, double specificHeatJPerKgK) =>
        DesignFlow.KgPerS(areaM2, FluxWPerM2, DownwardFluxWPerM2, DropK, specificHeatJPerKgK);

    internal static Result<RequiredSupply> Of(WetFloor floor, double fluxWPerM2, double dropK)
    {
        List<Problem> problems = [.. Check(fluxWPerM2, dropK)];
        if (problems.Count > 0)
        {
            return Result<RequiredSupply>.Failed(problems);
        }

        var characteristic = floor.Characteristic;
        var roomC = floor.Surroundings.RoomC;
        var excess = fluxWPerM2 / characteristic.UpwardConductanceWPerM2K;
        var balanceC = characteristic.EquivalentAmbientC;
        if (!(roomC + excess > balanceC))
        {
            return FloorProblems.NoHeatToCarry(roomC + excess, balanceC);
        }

        var supplyC = balanceC + LogMeanExcess.Supply(roomC + excess - balanceC, dropK);
        return new RequiredSupply(SurfaceCheck.Of(floor, fluxWPerM2, supplyC - roomC))
        {
            FluxWPerM2 = fluxWPerM2,
            DownwardFluxWPerM2 = characteristic.DownwardFluxWPerM2(roomC + excess),
            MeanExcessK = excess,
            MeanWaterC = roomC + excess,
            DropK = dropK,
            SupplyC = supplyC,
            StandardSupplyC = roomC + LogMeanExcess.Supply(excess, dropK),
        };
    }

    private static IEnumerable<Problem> Check(double fluxWPerM2, double dropK)
    {
        if (!fluxWPerM2.IsWithin(1e-6, 1000))
        {
            yield return FloorProblems.Outside(
                "floor-demand-outside",
                nameof(fluxWPerM2),
                "heat flux needed",
                fluxWPerM2,
                "W/m²",
                "Give a flux above 0 and up to 1000 W/m²; floors give up to about 100 W/m²"
            );
        }

        if (!dropK.IsWithin(0.01, 60))
        {
            yield return FloorProblems.Outside(
                "floor-demand-outside",
                nameof(dropK),
                "temperature drop",
                dropK,
                "K",
                "Give a drop from 0.01 K to 60 K; 5 K to 10 K is usual"
            );
        }
    }
}
