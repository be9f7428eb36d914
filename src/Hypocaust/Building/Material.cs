namespace Hypocaust.Building;

/// <summary>A generic material with design values.</summary>
/// <param name="Name">Name as shown, for example <c>mineral wool</c>.</param>
/// <param name="ConductivityWPerMK">Thermal conductivity, W/(m·K).</param>
/// <param name="DensityKgPerM3">Density, kg/m³.</param>
/// <param name="HeatCapacityJPerKgK">Specific heat capacity, J/(kg·K), remembered rather than seen for every row.</param>
/// <param name="IsSeen">Whether conductivity and density were read in the source; otherwise they are from memory.</param>
public sealed record Material(
    string Name,
    double ConductivityWPerMK,
    double DensityKgPerM3,
    double HeatCapacityJPerKgK,
    bool IsSeen
)
{
    /// <summary>Heat capacity per volume, J/(m³·K).</summary>
    public double HeatCapacityJPerM3K => DensityKgPerM3 * HeatCapacityJPerKgK;

    /// <summary>Where the values come from, in words for people.</summary>
    public string Source =>
        IsSeen ? "ISO 10456:2007" : "ISO 10456:2007 or usual declared value, from memory";
}
