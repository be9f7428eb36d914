using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why the sums of Floor are what they are.</summary>
internal static class FloorWhy
{
    private const string LineOfOutput =
        "At these flows the output follows the supply temperature in a straight line; this is where the line meets the need. Thinner or thicker water at another temperature would shift it a little.";

    public static Derivation? Find(Answer answer, string name, ImmutableArray<int> at)
    {
        var floor = answer.Floor!;
        return name switch
        {
            "neededW" => Sum(
                new Derivation(
                    "Heat needed from the floor",
                    Shown.Heat,
                    "Φ = Σ Φ_zone",
                    "EN 12831 form"
                ),
                floor.Zones.Select(zone => (zone.Name, (double?)zone.NeededW))
            ),
            "outputW" => Sum(
                new Derivation(
                    "Heat that the floor gives",
                    Shown.Heat,
                    "Φ = Σ Φ_loop",
                    "EN 1264-2"
                ),
                floor.Loops.Select(loop => (loop.Name, loop.Running?.HeatUpW))
            ),
            "downW" => Sum(
                new Derivation("Heat lost downwards", Shown.Heat, "Φ = Σ Φ_loop,down", "EN 1264-2"),
                floor.Loops.Select(loop => (loop.Name, loop.Running?.HeatDownW))
            ),
            "supplyC" => Mixed(floor, "Water sent to the loops", loop => loop.SupplyC),
            "returnC" => Mixed(floor, "Water back from the loops", loop => loop.ReturnC),
            "requiredSupplyC" => new Derivation(
                "Lowest supply temperature that is enough",
                Shown.Temperature,
                "max over the zones",
                "EN 1264-2"
            ).Noting(LineOfOutput),
            _ when name.StartsWith("zones[*].", StringComparison.Ordinal) => Zone(
                floor,
                floor.Zones[at[0]],
                name["zones[*].".Length..]
            ),
            _ => null,
        };
    }

    private static Derivation? Zone(FloorAnswer floor, FloorZoneAnswer zone, string name)
    {
        var loops = floor.Loops.Where(loop => loop.Zone == zone.Name);
        return name switch
        {
            "indoorC" => Derivation.Given($"Temperature held in {zone.Name}", Shown.Temperature),
            "heatedAreaM2" => loops
                .Aggregate(
                    new Derivation(
                        $"Area with tube in {zone.Name}",
                        Shown.Area,
                        "A = Σ A_loop",
                        "your design"
                    ),
                    (sum, loop) => sum.With("A", loop.Name, loop.AreaM2, Shown.Area)
                )
                .Computed(v => v.Sum()),
            "neededW" => new Derivation(
                $"Heat that {zone.Name} needs from its floor",
                Shown.Heat,
                "design heat loss without the heated floor itself",
                "EN 12831 form"
            ),
            "outputW" => Sum(
                new Derivation(
                    $"Heat that {zone.Name} gets",
                    Shown.Heat,
                    "Φ = Σ Φ_loop",
                    "EN 1264-2"
                ),
                loops.Select(loop => (loop.Name, loop.Running?.HeatUpW))
            ),
            "requiredSupplyC" => new Derivation(
                $"Lowest supply temperature that is enough for {zone.Name}",
                Shown.Temperature,
                "Σ K_H·A·(θ_mean − θ_i) = Φ_needed, solved for the supply",
                "EN 1264-2"
            )
                .With("Φ_needed", "need", zone.NeededW, Shown.Heat)
                .With("θ_i", "room", zone.IndoorC, Shown.Temperature)
                .Noting(LineOfOutput),
            _ => null,
        };
    }

    private static Derivation Sum(
        Derivation derivation,
        IEnumerable<(string Name, double? Value)> terms
    ) =>
        terms
            .Aggregate(
                derivation,
                (sum, term) => sum.With("Φ", term.Name, term.Value, Shown.SmallHeat)
            )
            .Computed(v => v.Sum());

    private static Derivation Mixed(
        FloorAnswer floor,
        string title,
        Func<LoopRunning, double?> celsius
    )
    {
        var flowing = floor.Loops.Where(loop => loop.Running is { SupplyC: not null }).ToList();
        var derivation = new Derivation(
            $"{title}, mean by flow",
            Shown.Temperature,
            "θ = Σ ṁ·θ_loop / Σ ṁ",
            "heat carried by water of equal specific heat"
        );
        foreach (var loop in flowing)
        {
            derivation = derivation
                .With("ṁ", $"{loop.Name}, kg/s", loop.Running!.FlowKgPerS, Shown.MassFlow)
                .With("θ", loop.Name, celsius(loop.Running), Shown.Temperature);
        }

        return derivation.Computed(v =>
        {
            var flows = v.Where((_, i) => i % 2 == 0).ToList();
            return flows.Select((flow, i) => flow * v[(2 * i) + 1]).Sum() / flows.Sum();
        });
    }
}
