namespace Hypocaust.Floor.Section;

/// <summary>
/// A section between water, room and what lies below, each at one temperature: heat and surface are linear in the three, so that a
/// few figures say all.
/// </summary>
/// <param name="UpWPerM2K">Heat from the water to the room for each kelvin between them, in W/(m²·K): K_H.</param>
/// <param name="DownWPerM2K">Heat from the water to below for each kelvin between them, in W/(m²·K).</param>
/// <param name="ThroughWPerM2K">Heat from the room to below, past the tubes, for each kelvin between them, in W/(m²·K).</param>
/// <param name="WarmestByWater">Excess over the room of the surface above a tube for each kelvin of the water over the room.</param>
/// <param name="ColdestByWater">The same midway between tubes.</param>
/// <param name="WarmestByBelow">Excess over the room of the surface above a tube for each kelvin of the temperature below over the room.</param>
/// <param name="ColdestByBelow">The same midway between tubes.</param>
public sealed record SectionResponse(
    double UpWPerM2K,
    double DownWPerM2K,
    double ThroughWPerM2K,
    double WarmestByWater,
    double ColdestByWater,
    double WarmestByBelow,
    double ColdestByBelow
)
{
    /// <summary>Heat to the room in W/m² for water and below over the room in K.</summary>
    public double UpFluxWPerM2(double waterExcessK, double belowExcessK) =>
        (UpWPerM2K * waterExcessK) + (ThroughWPerM2K * belowExcessK);

    /// <summary>Heat downward in W/m² for water and below over the room in K.</summary>
    public double DownFluxWPerM2(double waterExcessK, double belowExcessK) =>
        (DownWPerM2K * (waterExcessK - belowExcessK)) - (ThroughWPerM2K * belowExcessK);

    /// <summary>Surface above a tube over the room in K.</summary>
    public double WarmestExcessK(double waterExcessK, double belowExcessK) =>
        (WarmestByWater * waterExcessK) + (WarmestByBelow * belowExcessK);

    /// <summary>Surface midway between tubes over the room in K.</summary>
    public double ColdestExcessK(double waterExcessK, double belowExcessK) =>
        (ColdestByWater * waterExcessK) + (ColdestByBelow * belowExcessK);

    /// <summary>The same section with a further resistance between water and tube.</summary>
    /// <param name="resistanceM2KPerW">Resistance for each square metre of floor in m²·K/W, 0 or more.</param>
    /// <remarks>Exact if the tube's wall has one temperature all around; with a film it is within 0.1 % of a solution with it.</remarks>
    public SectionResponse WithTubeResistance(double resistanceM2KPerW)
    {
        // of each kelvin of the water this much arrives behind the resistance, and this much of each kelvin below
        var arrives = 1 / (1 + (resistanceM2KPerW * (UpWPerM2K + DownWPerM2K)));
        var floats = resistanceM2KPerW * DownWPerM2K * arrives;
        return new SectionResponse(
            UpWPerM2K * arrives,
            DownWPerM2K * arrives,
            ThroughWPerM2K + (floats * UpWPerM2K),
            WarmestByWater * arrives,
            ColdestByWater * arrives,
            WarmestByBelow + (floats * WarmestByWater),
            ColdestByBelow + (floats * ColdestByWater)
        );
    }
}
