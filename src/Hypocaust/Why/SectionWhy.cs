using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why the figures of a section in two dimensions are what they are.</summary>
internal static class SectionWhy
{
    public const string Source = "Fourier's law, finite volumes (docs/methods/section.md)";

    private const string Solved =
        "conduction through half a spacing of the section, solved with all temperatures in it at once";

    private const string Spread =
        "Between the tubes the surface is cooler than above them; the thicker the cover and the closer the tubes, the nearer both come to the mean.";

    public static Derivation? Find(LoopAnswer loop, SectionAnswer section, string name) =>
        name switch
        {
            "transmissionWPerM2K" => Transmission(loop),
            "downWPerM2K" => new Derivation(
                $"Heat downwards for a kelvin between water and below, {loop.Name}",
                Shown.Transmittance,
                Solved,
                Source
            ).With("R_u", "below the slab", section.BelowM2KPerW, Shown.Resistance),
            "throughWPerM2K" => new Derivation(
                $"Heat from the room downwards, past the tubes of {loop.Name}, for a kelvin between them",
                Shown.Transmittance,
                Solved,
                Source
            ).With("R_u", "below the slab", section.BelowM2KPerW, Shown.Resistance),
            "tableDifferencePercent" => new Derivation(
                $"Table method against the section, {loop.Name}, per cent",
                Shown.Number,
                "100·(K_table/K_2D − 1)",
                "EN 1264-2 (from memory) against docs/methods/section.md"
            )
                .With("K_table", "by the tables", loop.TransmissionWPerM2K, Shown.Transmittance)
                .With("K_2D", "by the section", section.TransmissionWPerM2K, Shown.Transmittance)
                .Computed(v => 100 * ((v[0] / v[1]) - 1))
                .Noting(
                    "Both with the bore at the water's temperature. Where they differ, trust the section: the tables know neither your insulation nor your tube's exact place."
                ),
            "errorPercent" => new Derivation(
                "Estimated error of the section, per cent",
                Shown.Number,
                "what halving every cell of the grid changes, and 0.1 for the round tube in a square grid",
                Source
            ),
            "warmestShare" => Share($"Surface above a tube of {loop.Name}"),
            "coldestShare" => Share($"Surface midway between tubes of {loop.Name}"),
            "limitFluxWPerM2" => Limit(loop),
            "belowM2KPerW" => new Derivation(
                "Resistance below the slab, the ground included",
                Shown.Resistance,
                "as written in the design, less the concrete below the tube, and the soil after ISO 13370",
                "your design; ISO 13370"
            ),
            "resistanceMethodWPerM2K" => new Derivation(
                $"Heat to the room for a kelvin between water and room, {loop.Name}, by resistances",
                Shown.Transmittance,
                "R_e/(R_t·R_i + R_t·R_e + R_i·R_e); R_t = T·ln(D/d)/(2π·λ_R) + T·ln(T/(π·D))/(2π·λ)",
                "ISO 11855-2 (from memory)"
            )
                .With("T", "spacing", loop.SpacingM, Shown.Small)
                .Noting(
                    "R_i and R_e run from the plane of the tubes to the room and to below. Valid with much concrete on either side of the tube."
                ),
            "cells" or "iterations" => new Derivation(
                name == "cells" ? "Cells of the finer grid" : "Iterations on the finer grid",
                Shown.Whole,
                "counted",
                Source
            ),
            _ => null,
        };

    public static Derivation Transmission(LoopAnswer loop) =>
        new Derivation(
            $"Heat to the room for a kelvin between water and room, {loop.Name}",
            Shown.Transmittance,
            Solved,
            Source
        )
            .With("T", "spacing", loop.SpacingM, Shown.Small)
            .With("R_u", "below the slab", loop.Section?.BelowM2KPerW, Shown.Resistance)
            .Noting(loop.Accuracy);

    public static Derivation Limit(LoopAnswer loop) =>
        new Derivation(
            $"Most that {loop.Name} may give before its surface is too warm above a tube",
            Shown.Flux,
            "q = 8.92·((θ_F,max − θ_i)/ρ)^1.1",
            "EN 1264-2 surface curve; ρ by the section (docs/methods/section.md)"
        )
            .With("θ_F,max", "limit", loop.SurfaceLimitC, Shown.Temperature)
            .With("θ_i", "room", loop.IndoorC, Shown.Temperature)
            .With("ρ", "above a tube over the mean", loop.Section!.WarmestShare, Shown.Factor)
            .Computed(v => 8.92 * Math.Pow((v[0] - v[1]) / v[2], 1.1));

    public static Derivation AtRoomTemperature(LoopAnswer loop) =>
        new Derivation(
            $"Heat flux of {loop.Name} while its water has room temperature",
            Shown.Flux,
            "what passes the tubes from below; 0 by the tables, which leave it out",
            Source
        )
            .With("θ_u", "below", loop.BelowC, Shown.Temperature)
            .With("θ_i", "room", loop.IndoorC, Shown.Temperature);

    public static Derivation Warmest(LoopAnswer loop, LoopRunning run) =>
        new Derivation(
            $"Warmest spot of {loop.Name}, above the tube where the water enters",
            Shown.Temperature,
            "θ_i + ρ·((K_H·(θ_s − θ_i) + q_0)/8.92)^(1/1.1)",
            "EN 1264-2 surface curve; ρ by the section (docs/methods/section.md)"
        )
            .With("θ_i", "room", loop.IndoorC, Shown.Temperature)
            .With("ρ", "above a tube over the mean", loop.Section!.WarmestShare, Shown.Factor)
            .With("K_H", "transmission with its film", run.TransmissionWPerM2K, Shown.Transmittance)
            .With("θ_s", "water in", run.SupplyC, Shown.Temperature)
            .With("q_0", "past the tubes from below", run.AtRoomTemperatureWPerM2, Shown.Flux);

    private static Derivation Share(string title) =>
        new Derivation(
            title + ", over the room, as a multiple of the mean",
            Shown.Factor,
            Solved,
            Source
        ).Noting(Spread);
}
