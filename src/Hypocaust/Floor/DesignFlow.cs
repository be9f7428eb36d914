namespace Hypocaust.Floor;

/// <summary>The water flow that carries a floor's heat at a chosen temperature drop.</summary>
/// <source>EN 1264-3, design heating medium flow rate (from memory)</source>
public static class DesignFlow
{
    /// <summary>Mass flow in kg/s: A (q + q_u)/(σ c_p).</summary>
    /// <param name="areaM2">Heated area A in m², above 0.</param>
    /// <param name="upwardWPerM2">Heat flux q to the room in W/m².</param>
    /// <param name="downwardWPerM2">Heat flux q_u downward in W/m².</param>
    /// <param name="dropK">Supply minus return σ in K, above 0.</param>
    /// <param name="specificHeatJPerKgK">Specific heat of the fluid in J/(kg·K), above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Drop or specific heat is not above 0.</exception>
    public static double KgPerS(
        double areaM2,
        double upwardWPerM2,
        double downwardWPerM2,
        double dropK,
        double specificHeatJPerKgK
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dropK);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(specificHeatJPerKgK);
        return areaM2 * (upwardWPerM2 + downwardWPerM2) / (dropK * specificHeatJPerKgK);
    }
}
