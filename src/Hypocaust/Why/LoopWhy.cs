using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why the figures of a loop are what they are.</summary>
internal static class LoopWhy
{
    private const string En1264 = "EN 1264-2, type A (factors from memory; docs/methods/floor.md)";

    public static Derivation? Find(Answer answer, string name, ImmutableArray<int> at)
    {
        var loop = answer.Floor!.Loops[at[0]];
        return name switch
        {
            "indoorC" => Derivation.Given($"Room above {loop.Name}", Shown.Temperature),
            "areaM2" => Derivation.Given($"Area of {loop.Name}", Shown.Area),
            "spacingM" => Derivation.Given($"Tube spacing of {loop.Name}", Shown.Small),
            "leaderM" => Derivation.Given($"Leader of {loop.Name}", Shown.Length),
            "innerM" => Derivation.Given("Inner diameter of the tube", Shown.Small),
            "surfaceLimitC" => new Derivation(
                "Warmest permitted surface",
                Shown.Temperature,
                "29 °C where people stay, 9 K over the room in a bath, 35 °C along outside walls",
                "EN 1264-2"
            ),
            "lengthM" => Length(loop),
            "belowC" => new Derivation(
                "Temperature under the floor",
                Shown.Temperature,
                "as given, or θ_i − 1.45·(θ_i − θ_m) where the floor lies on the ground",
                "EN 12831:2003 (from memory)"
            ).With("θ_i", "room", loop.IndoorC, Shown.Temperature),
            "transmissionWPerM2K" => Transmission(loop),
            "limitFluxWPerM2" when loop.LimitMethod == LoopAnswer.BySection => SectionWhy.Limit(
                loop
            ),
            "limitFluxWPerM2" => new Derivation(
                $"Most that {loop.Name} may give before its surface is too warm",
                Shown.Flux,
                "q_G = φ·B_G·(Δθ_H/φ)^n_G where it meets q = K_H·Δθ_H; φ = ((θ_F,max − θ_i)/9 K)^1.1",
                En1264
            )
                .With("K_H", "transmission", loop.TransmissionWPerM2K, Shown.Transmittance)
                .With("θ_F,max", "limit", loop.SurfaceLimitC, Shown.Temperature)
                .With("θ_i", "room", loop.IndoorC, Shown.Temperature),
            _ when name.StartsWith("factors.", StringComparison.Ordinal) => new Derivation(
                "Factor of K_H",
                Shown.Number,
                "read from the standard's table between its rows",
                En1264
            ),
            _ when name.StartsWith("section.", StringComparison.Ordinal) => SectionWhy.Find(
                loop,
                loop.Section!,
                name["section.".Length..]
            ),
            _ when name.StartsWith("running.", StringComparison.Ordinal) => Running(
                answer,
                loop,
                loop.Running!,
                name["running.".Length..]
            ),
            _ => null,
        };
    }

    private static string SourceOf(LoopAnswer loop) =>
        loop.Method == LoopAnswer.BySection ? SectionWhy.Source : En1264;

    private static Derivation Length(LoopAnswer loop) =>
        loop.LengthIsMeasured
            ? Derivation.Given($"Tube length of {loop.Name}, measured", Shown.Length)
            : new Derivation(
                $"Tube length of {loop.Name}",
                Shown.Length,
                "L = A/T + leader",
                "a metre of tube serves its spacing in width"
            )
                .With("A", "area", loop.AreaM2, Shown.Area)
                .With("T", "spacing", loop.SpacingM, Shown.Small)
                .With("leader", "from the manifold and back", loop.LeaderM, Shown.Length)
                .Computed(v => (v[0] / v[1]) + v[2]);

    private static Derivation Transmission(LoopAnswer loop)
    {
        if (loop.Factors is not { } factors)
        {
            return SectionWhy.Transmission(loop);
        }

        return new Derivation(
            $"Heat for a kelvin between water and room, {loop.Name}",
            Shown.Transmittance,
            "K_H = w/(1/(B·a_B·a_T^m_T·a_U^m_U·a_D^m_D) + R_extra)",
            En1264
        )
            .With(
                "B",
                "system coefficient of this tube, W/m²K",
                factors.SystemWPerM2K,
                Shown.Number
            )
            .With("a_B", "covering", factors.Covering, Shown.Factor)
            .With("a_T", "spacing", factors.Spacing, Shown.Factor)
            .With("m_T", "its exponent", factors.SpacingExponent, Shown.Factor)
            .With("a_U", "cover", factors.Cover, Shown.Factor)
            .With("m_U", "its exponent", factors.CoverExponent, Shown.Factor)
            .With("a_D", "diameter", factors.Diameter, Shown.Factor)
            .With("m_D", "its exponent", factors.DiameterExponent, Shown.Factor)
            .With("w", "0.375 m over spacings beyond it", factors.WideSpacingRatio, Shown.Factor)
            .With("R_extra", "cover beyond the tables", factors.ExtraCoverM2KPerW, Shown.Resistance)
            .Computed(v =>
                v[8]
                / (
                    (
                        1
                        / (
                            v[0]
                            * v[1]
                            * Math.Pow(v[2], v[3])
                            * Math.Pow(v[4], v[5])
                            * Math.Pow(v[6], v[7])
                        )
                    ) + v[9]
                )
            )
            .Noting(loop.Accuracy);
    }

    private static Derivation? Running(Answer answer, LoopAnswer loop, LoopRunning run, string name)
    {
        var cp = answer.Plant!.Fluid.HeatCapacityJPerKgK;
        return name switch
        {
            "flowKgPerS" or "flowM3PerS" => Solved(
                    $"Flow in {loop.Name}",
                    name == "flowKgPerS" ? Shown.MassFlow : Shown.Flow
                )
                .With("Δp", "drop of tube and valve", run.DropPa, Shown.Drop),
            "velocityMPerS" => new Derivation(
                $"Velocity in {loop.Name}",
                Shown.Velocity,
                "v = 4·V̇/(π·d²)",
                "continuity"
            )
                .With("V̇", "flow", run.FlowM3PerS, Shown.Flow)
                .With("d", "inner diameter", loop.InnerM, Shown.Small)
                .Computed(v => 4 * v[0] / (Math.PI * v[1] * v[1])),
            "reynolds" => new Derivation(
                $"Reynolds number in {loop.Name}",
                Shown.Whole,
                "Re = v·d·ρ/μ",
                "definition"
            )
                .With("v", "velocity", Math.Abs(run.VelocityMPerS), Shown.Velocity)
                .With("d", "inner diameter", loop.InnerM, Shown.Small)
                .With("ρ", "density, kg/m³", run.DensityKgPerM3, Shown.Number)
                .With("μ", "viscosity, Pa s", run.ViscosityPaS, Shown.Tiny)
                .Computed(v => v[0] * v[1] * v[2] / v[3])
                .Noting(
                    "Below about 2300 the water glides in layers and gives its heat less readily; above 4000 it mixes."
                ),
            "filmResistanceMKPerW" => new Derivation(
                "Resistance of the slow film of water at the tube wall",
                Shown.Factor,
                "1/(Nu·λ·π) − the same at Re = 4000; 0 above it",
                "Gnielinski 1976; laminar Nu 3.66 (docs/methods/floor.md)"
            ).With("Re", "Reynolds number", run.Reynolds, Shown.Whole),
            "transmissionWPerM2K" => new Derivation(
                $"K_H of {loop.Name} with the film of its flow",
                Shown.Transmittance,
                "K_H, the film's resistance added to the tube's",
                SourceOf(loop)
            )
                .With("K_H", "in turbulent flow", loop.TransmissionWPerM2K, Shown.Transmittance)
                .With("R_film", "film, mK/W", run.FilmResistanceMKPerW, Shown.Factor),
            "densityKgPerM3" or "viscosityPaS" => Fluid(name),
            "dropPa" => new Derivation(
                $"Pressure drop of {loop.Name}",
                Shown.Drop,
                "Δp = f·(L/d)·ρ·v²/2 + 1 bar·(ρ/1000)·(V̇/Kv)²",
                "Darcy–Weisbach with Churchill 1977; IEC 60534 (docs/methods/hydraulics.md)"
            )
                .With("L", "length", loop.LengthM, Shown.Length)
                .With("d", "inner diameter", loop.InnerM, Shown.Small)
                .With("v", "velocity", run.VelocityMPerS, Shown.Velocity),
            "supplyC" => Solved($"Water into {loop.Name}", Shown.Temperature),
            _ => Heat(loop, run, name, cp),
        };
    }

    private static Derivation? Heat(LoopAnswer loop, LoopRunning run, string name, double cp) =>
        name switch
        {
            "returnC" => new Derivation(
                $"Water out of {loop.Name}",
                Shown.Temperature,
                "θ_r = θ_s − (Φ_up + Φ_down)/(ṁ·c_p)",
                "heat balance of the loop"
            )
                .With("θ_s", "water in", run.SupplyC, Shown.Temperature)
                .With("Φ_up", "heat to the room", run.HeatUpW, Shown.SmallHeat)
                .With("Φ_down", "heat downwards", run.HeatDownW, Shown.SmallHeat)
                .With("ṁ", "mass flow, kg/s", Math.Abs(run.FlowKgPerS), Shown.MassFlow)
                .With("c_p", "specific heat, J/kgK", cp, Shown.Whole)
                .Computed(v => v[0] - ((v[1] + v[2]) / (v[3] * v[4]))),
            "meanWaterC" => new Derivation(
                $"Mean water temperature of {loop.Name}",
                Shown.Temperature,
                "θ_m = θ_e + (θ_s − θ_r)/ln((θ_s − θ_e)/(θ_r − θ_e))",
                "EN 1264-2, logarithmic mean, along an exponential fall"
            )
                .With("θ_s", "water in", run.SupplyC, Shown.Temperature)
                .With("θ_r", "water out", run.ReturnC, Shown.Temperature),
            "heatUpW" => new Derivation(
                $"Heat of {loop.Name} to the room",
                Shown.SmallHeat,
                "Φ = A·(K_H·(θ_m − θ_i) + q_0)",
                SourceOf(loop)
            )
                .With(
                    "K_H",
                    "transmission with its film",
                    run.TransmissionWPerM2K,
                    Shown.Transmittance
                )
                .With("A", "area", loop.AreaM2, Shown.Area)
                .With("θ_m", "mean water", run.MeanWaterC ?? loop.IndoorC, Shown.Temperature)
                .With("θ_i", "room", loop.IndoorC, Shown.Temperature)
                .With("q_0", "past the tubes from below", run.AtRoomTemperatureWPerM2, Shown.Flux)
                .Computed(v => v[1] * ((v[0] * (v[2] - v[3])) + v[4]))
                .Noting(loop.Accuracy),
            "heatDownW" => new Derivation(
                $"Heat of {loop.Name} downwards",
                Shown.SmallHeat,
                "Φ = ṁ·c_p·(θ_s − θ_r) − Φ_up",
                "EN 1264-2, downward loss by R_o and R_u (docs/methods/floor.md)"
            )
                .With("ṁ", "mass flow, kg/s", Math.Abs(run.FlowKgPerS), Shown.MassFlow)
                .With("c_p", "specific heat, J/kgK", cp, Shown.Whole)
                .With("θ_s", "water in", run.SupplyC ?? 0, Shown.Temperature)
                .With("θ_r", "water out", run.ReturnC ?? 0, Shown.Temperature)
                .With("Φ_up", "heat to the room", run.HeatUpW, Shown.SmallHeat)
                .Computed(v => (v[0] * v[1] * (v[2] - v[3])) - v[4]),
            "fluxWPerM2" => new Derivation(
                $"Heat flux of {loop.Name}",
                Shown.Flux,
                "q = Φ/A",
                "definition"
            )
                .With("Φ", "heat to the room", run.HeatUpW, Shown.SmallHeat)
                .With("A", "area", loop.AreaM2, Shown.Area)
                .Computed(v => v[0] / v[1]),
            "surfaceMeanC" => new Derivation(
                $"Mean surface of {loop.Name}",
                Shown.Temperature,
                "θ_F = θ_i + (q/8.92)^(1/1.1)",
                "EN 1264-2 (seen in trade articles)"
            )
                .With("θ_i", "room", loop.IndoorC, Shown.Temperature)
                .With("q", "heat flux", run.FluxWPerM2, Shown.Flux)
                .Computed(v => v[1] <= 0 ? v[0] : v[0] + Math.Pow(v[1] / 8.92, 1 / 1.1)),
            "atRoomTemperatureWPerM2" => SectionWhy.AtRoomTemperature(loop),
            "surfaceWarmestC" when loop.LimitMethod == LoopAnswer.BySection => SectionWhy.Warmest(
                loop,
                run
            ),
            "surfaceWarmestC" => new Derivation(
                $"Warmest spot of {loop.Name}, above the tube where the water enters",
                Shown.Temperature,
                "the surface at the supply temperature with the ripple between tubes",
                "EN 1264-2 limit curve (docs/methods/floor.md)"
            )
                .With("θ_s", "water in", run.SupplyC, Shown.Temperature)
                .With("θ_i", "room", loop.IndoorC, Shown.Temperature),
            _ => null,
        };

    internal static Derivation Solved(string title, Shown shown) =>
        new(
            title,
            shown,
            "solved with all other flows, pressures and temperatures, so that mass, pressure and heat close everywhere",
            "docs/methods/hydraulics.md, docs/methods/plant.md"
        );

    internal static Derivation Fluid(string name) =>
        new(
            name.StartsWith("density", StringComparison.Ordinal)
                ? "Density of the fluid, kg/m³"
                : "Viscosity of the fluid, Pa s",
            name.StartsWith("density", StringComparison.Ordinal) ? Shown.Number : Shown.Tiny,
            "from the table or formula at its temperature",
            "water IAPWS SR6-08; glycols ASHRAE Fundamentals (docs/methods/fluids.md)"
        );
}
