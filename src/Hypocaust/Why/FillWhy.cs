using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why volumes and pressures at rest are what they are.</summary>
internal static class FillWhy
{
    public static Derivation? Find(Answer answer, string name, ImmutableArray<int> at)
    {
        var fill = answer.Plant!.Fill;
        return name switch
        {
            "volumeM3" => new Derivation(
                "Volume of the system",
                Shown.Volume,
                "V = Σ π·d²/4·L of all pipes and loops + heater + manifold",
                "geometry; valves and fittings are not counted"
            ),
            "antifreezeM3" => new Derivation(
                "Antifreeze in the system",
                Shown.Volume,
                "V_a = x·V",
                "volumes taken as additive"
            )
                .With("x", "share by volume", answer.Plant.Fluid.AntifreezeShare, Shown.Share)
                .With("V", "volume of the system", fill.VolumeM3, Shown.Volume)
                .Computed(v => v[0] * v[1]),
            "expansionM3" => new Derivation(
                "Growth of the fluid from filling to its warmest",
                Shown.Volume,
                "V_e = V·(ρ_fill/ρ_warm − 1)",
                "densities of the fluid (docs/methods/fluids.md)"
            )
                .With("V", "volume of the system", fill.VolumeM3, Shown.Volume)
                .With("θ", "warmest", fill.WarmestC, Shown.Temperature),
            "warmestC" => new Derivation(
                "Warmest water counted",
                Shown.Temperature,
                "the highest set point, or the warmest water found",
                "docs/methods/plant.md"
            ),
            "coldPa" => Derivation.Given("Cold filling pressure at the vessel", Shown.Gauge),
            "vesselM3" => Derivation.Given("Expansion vessel installed", Shown.Volume),
            "prechargePa" => Derivation.Given(
                "Gas pressure in the vessel before filling",
                Shown.Gauge
            ),
            "reliefPa" => Derivation.Given("Lowest relief valve setting", Shown.Gauge),
            "warmPa" => new Derivation(
                "Pressure at the vessel when warm",
                Shown.Gauge,
                "p = (p_0 + p_atm)·V_n/(V_n − V_w) − p_atm",
                "Boyle's law; V_w is the water in the vessel when cold plus the growth of the water as warm as it runs"
            )
                .With("p_0", "precharge", fill.PrechargePa, Shown.Gauge)
                .With("V_n", "vessel", fill.VesselM3, Shown.Volume)
                .With("p_cold", "cold filling pressure", fill.ColdPa, Shown.Gauge),
            "vesselNeededM3" => new Derivation(
                "Smallest expansion vessel",
                Shown.Volume,
                "V_n = (V_e + max(0.5 % V, 3 L))·(p_e + 1 bar)/(p_e − p_0), p_e = p_relief − max(0.5 bar, 10 %)",
                "EN 12828:2012, annex D (from memory)"
            )
                .With("V_e", "growth", fill.ExpansionM3, Shown.Volume)
                .With("V", "volume of the system", fill.VolumeM3, Shown.Volume)
                .With("p_relief", "relief valve", fill.ReliefPa, Shown.Gauge)
                .With("p_0", "precharge", fill.PrechargePa, Shown.Gauge)
                .Computed(v =>
                {
                    var final = v[2] - Math.Max(0.5e5, 0.1 * v[2]);
                    return (v[0] + Math.Max(0.005 * v[1], 0.003)) * (final + 1e5) / (final - v[3]);
                }),
            _ => null,
        };
    }
}
