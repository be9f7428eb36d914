using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why the figures of Space are what they are.</summary>
internal static class SpaceWhy
{
    private const string En12831 = "EN 12831 form (docs/methods/building.md)";

    public static Derivation? Find(Answer answer, string name, ImmutableArray<int> at)
    {
        var space = answer.Space!;
        return name switch
        {
            "outdoorC" => Derivation.Given("Outside air on the coldest day", Shown.Temperature),
            "designLossW" => Sum(
                new Derivation(
                    "Design heat loss of the building",
                    Shown.Heat,
                    "Φ = Σ (Φ_zone − Φ_to other zones)",
                    En12831
                ),
                space.Zones.Select(zone => ("Φ", zone.Name, zone.DesignLossW - zone.ToOtherZonesW))
            ),
            "roomLossW" => Sum(
                new Derivation(
                    "Heat that the rooms need",
                    Shown.Heat,
                    "Φ = Σ Φ_zone without its heated floor",
                    En12831
                ),
                space.Zones.Select(zone =>
                    ("Φ", zone.Name, zone.RoomLossW - zone.ToOtherZonesW + HeatedToZones(zone))
                )
            ),
            _ when name.StartsWith("zones[*].elements[*].", StringComparison.Ordinal) => Element(
                space.Zones[at[0]],
                space.Zones[at[0]].Elements[at[1]],
                name["zones[*].elements[*].".Length..]
            ),
            _ when name.StartsWith("zones[*].", StringComparison.Ordinal) => Zone(
                space,
                space.Zones[at[0]],
                name["zones[*].".Length..]
            ),
            _ => null,
        };
    }

    // a heated floor over another zone is not part of either sum
    private static double HeatedToZones(ZoneLossAnswer zone) =>
        zone
            .Elements.Where(element => element.IsHeatedFloor && element.Kind != "ground")
            .Sum(element => element.LossW);

    private static Derivation? Zone(SpaceAnswer space, ZoneLossAnswer zone, string name) =>
        name switch
        {
            "indoorC" => Derivation.Given($"Temperature held in {zone.Name}", Shown.Temperature),
            "floorAreaM2" => Derivation.Given($"Floor area of {zone.Name}", Shown.Area),
            "volumeM3" => Derivation.Given($"Air volume of {zone.Name}", Shown.RoomVolume),
            "airChangesPerH" => Derivation.Given(
                $"Air changes of {zone.Name} in an hour",
                Shown.Number
            ),
            "airHeatJPerM3K" => new Derivation(
                "Heat capacity of the air",
                Shown.Number,
                "ρ·c_p of dry air at the site's pressure",
                "ASHRAE Fundamentals, standard atmosphere (docs/methods/building.md)"
            ).With("θ_i", "room", zone.IndoorC, Shown.Temperature),
            "ventilationW" => new Derivation(
                $"Heat for the outside air in {zone.Name}",
                Shown.SmallHeat,
                "Φ_V = n·V·(ρ·c_p)/3600·(θ_i − θ_e)",
                En12831
            )
                .With("n", "air changes in an hour", zone.AirChangesPerH, Shown.Number)
                .With("V", "air volume", zone.VolumeM3, Shown.RoomVolume)
                .With(
                    "ρ·c_p",
                    "heat of a cubic metre of air, J/K",
                    zone.AirHeatJPerM3K,
                    Shown.Number
                )
                .With("θ_i", "room", zone.IndoorC, Shown.Temperature)
                .With("θ_e", "outside air", space.OutdoorC, Shown.Temperature)
                .Computed(v => v[0] * v[1] * v[2] / 3600 * (v[3] - v[4])),
            "designLossW" => Sum(
                new Derivation(
                    $"Design heat loss of {zone.Name}",
                    Shown.Heat,
                    "Φ = Σ Φ_element + Φ_V",
                    En12831
                ),
                zone.Elements.Select(element => ("Φ", element.Name, element.LossW))
                    .Append(("Φ_V", "outside air", zone.VentilationW))
            ),
            "roomLossW" => Sum(
                    new Derivation(
                        $"Heat that {zone.Name} needs from its floor",
                        Shown.Heat,
                        "Φ = Σ Φ_element + Φ_V, without the heated floor itself",
                        En12831
                    ),
                    zone.Elements.Where(element => !element.IsHeatedFloor)
                        .Select(element => ("Φ", element.Name, element.LossW))
                        .Append(("Φ_V", "outside air", zone.VentilationW))
                )
                .Noting(
                    "What a heated floor loses downwards is counted with the floor, not with the room."
                ),
            "toOtherZonesW" => new Derivation(
                $"Heat that {zone.Name} gives to other zones",
                Shown.SmallHeat,
                "Φ = Σ A·U·(θ_i − θ_zone)",
                En12831
            ),
            _ => null,
        };

    private static Derivation? Element(
        ZoneLossAnswer zone,
        ElementLossAnswer element,
        string name
    ) =>
        name switch
        {
            "areaM2" => Derivation.Given($"Area of the {element.Name}", Shown.Area),
            "transmittanceWPerM2K" => new Derivation(
                $"Transmittance of the {element.Name}",
                Shown.Transmittance,
                "U = 1/R_total",
                element.How
            )
                .With(
                    "R",
                    "resistance from air to air",
                    1 / element.TransmittanceWPerM2K,
                    Shown.Resistance
                )
                .Computed(v => 1 / v[0]),
            "bridgesWPerM2K" => Derivation.Given(
                "Supplement for corners and junctions",
                Shown.Transmittance
            ),
            "farSideC" => element.Kind == "ground"
                ? new Derivation(
                    "Temperature towards which the ground floor loses heat",
                    Shown.Temperature,
                    "θ = θ_i − f_g1·(θ_i − θ_m), f_g1 = 1.45",
                    "EN 12831:2003 (from memory)"
                ).With("θ_i", "room", zone.IndoorC, Shown.Temperature)
                : Derivation.Given($"Temperature behind the {element.Name}", Shown.Temperature),
            "lossW" => new Derivation(
                $"Heat through the {element.Name}",
                Shown.SmallHeat,
                "Φ = A·(U + ΔU)·(θ_i − θ_far)",
                En12831
            )
                .With("A", "area", element.AreaM2, Shown.Area)
                .With("U", "transmittance", element.TransmittanceWPerM2K, Shown.Transmittance)
                .With(
                    "ΔU",
                    "supplement for corners and junctions",
                    element.BridgesWPerM2K,
                    Shown.Transmittance
                )
                .With("θ_i", "room", zone.IndoorC, Shown.Temperature)
                .With("θ_far", "far side", element.FarSideC, Shown.Temperature)
                .Computed(v => v[0] * (v[1] + v[2]) * (v[3] - v[4])),
            _ => null,
        };

    private static Derivation Sum(
        Derivation derivation,
        IEnumerable<(string Symbol, string Meaning, double Value)> terms
    ) =>
        terms
            .Aggregate(
                derivation,
                (sum, term) => sum.With(term.Symbol, term.Meaning, term.Value, Shown.SmallHeat)
            )
            .Computed(v => v.Sum());
}
