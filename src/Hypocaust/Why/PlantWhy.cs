using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why the figures of heaters, circulators and tees are what they are.</summary>
internal static class PlantWhy
{
    public static Derivation? Find(Answer answer, string name, ImmutableArray<int> at)
    {
        var plant = answer.Plant!;
        return name switch
        {
            "pipeLossW" => plant
                .Pipes.Aggregate(
                    new Derivation(
                        "Heat lost from the pipes outside the floor",
                        Shown.SmallHeat,
                        "Φ = Σ Φ_pipe",
                        "docs/methods/plant.md"
                    ),
                    (sum, pipe) =>
                        sum.With("Φ", $"{pipe.From} to {pipe.To}", pipe.LossW, Shown.SmallHeat)
                )
                .Computed(v => v.Sum()),
            _ when Under(name, "fluid.") is { } rest => Fluid(rest),
            _ when Under(name, "heater.") is { } rest => Heater(
                plant,
                plant.Heater!,
                rest,
                plant.Heaters.Length
            ),
            _ when Under(name, "heaters[*].") is { } rest => Heater(
                plant,
                plant.Heaters[at[0]],
                rest,
                1
            ),
            _ when Under(name, "circulators[*].") is { } rest => Circulator(
                plant.Circulators[at[0]],
                rest
            ),
            _ when Under(name, "tees[*].") is { } rest => Tees(plant.Tees[at[0]], rest),
            _ when Under(name, "convergence.") is { } rest => Convergence(rest),
            _ => null,
        };
    }

    private static string? Under(string name, string prefix) =>
        name.StartsWith(prefix, StringComparison.Ordinal) ? name[prefix.Length..] : null;

    private static Derivation? Fluid(string name) =>
        name switch
        {
            "antifreezeShare" => Derivation.Given("Share of antifreeze by volume", Shown.Share),
            "freezingPointC" => new Derivation(
                "Freezing point, first crystals",
                Shown.Temperature,
                "read from the table at this share",
                "ASHRAE Fundamentals (docs/methods/fluids.md)"
            ),
            "temperatureC" => new Derivation(
                "Temperature at which the fluid's values are stated",
                Shown.Temperature,
                "mean of all points with flow",
                "docs/methods/plant.md"
            ),
            "heatCapacityJPerKgK" => LoopWhy.Fluid("") with
            {
                Title = "Specific heat of the fluid, J/kgK",
                Shown = Shown.Whole,
            },
            _ => LoopWhy.Fluid(name),
        };

    private static Derivation? Heater(
        PlantAnswer plant,
        HeaterAnswer heater,
        string name,
        int heaters
    ) =>
        name switch
        {
            "capacityW" => Derivation.Given("Power of the heater", Shown.Heat),
            "setPointC" => Derivation.Given("Set point of the heater", Shown.Temperature),
            "minimumFlowM3PerS" => Derivation.Given("Smallest flow of the heater", Shown.Flow),
            "flowKgPerS" => LoopWhy.Solved("Flow through the heater", Shown.MassFlow),
            "flowM3PerS" => LoopWhy.Solved("Flow through the heater", Shown.Flow),
            "inC" => LoopWhy.Solved("Water into the heater", Shown.Temperature),
            "outC" => new Derivation(
                "Water out of the heater",
                Shown.Temperature,
                "the set point, or θ_in + P/(ṁ·c_p) where its power is too small for that",
                "heat balance of the heater"
            )
                .With("θ_set", "set point", heater.SetPointC, Shown.Temperature)
                .With("θ_in", "water in", heater.InC, Shown.Temperature),
            "deliveredW" when heaters > 1 => plant
                .Heaters.Aggregate(
                    new Derivation(
                        "Heat delivered by all heaters",
                        Shown.Heat,
                        "Φ = Σ Φ_heater",
                        "docs/methods/plant.md"
                    ),
                    (sum, one) => sum.With("Φ", one.Item, one.DeliveredW, Shown.Heat)
                )
                .Computed(v => v.Sum()),
            "deliveredW" => new Derivation(
                "Heat that the heater delivers",
                Shown.Heat,
                "Φ = ṁ·c_p·(θ_out − θ_in)",
                "heat balance of the heater"
            )
                .With("ṁ", "mass flow, kg/s", Math.Abs(heater.FlowKgPerS), Shown.MassFlow)
                .With("c_p", "specific heat, J/kgK", plant.Fluid.HeatCapacityJPerKgK, Shown.Whole)
                .With("θ_out", "water out", heater.OutC ?? 0, Shown.Temperature)
                .With("θ_in", "water in", heater.InC ?? 0, Shown.Temperature)
                .Computed(v => v[0] * v[1] * (v[2] - v[3]))
                .Noting(
                    "With the rooms at their temperature and the plant running; a thermostat then switches it as needed."
                ),
            _ => null,
        };

    private static Derivation? Circulator(CirculatorAnswer pump, string name) =>
        name switch
        {
            "speed" or "speeds" => Derivation.Given("Speed of the circulator", Shown.Whole),
            "flowM3PerS" => LoopWhy
                .Solved($"Flow of {pump.Item}", Shown.Flow)
                .With("H", "head", pump.HeadM, Shown.Length),
            "headM" when pump.Running => new Derivation(
                $"Head of {pump.Item}",
                Shown.Head,
                "H = a + b·Q + c·Q², Q in m³/h",
                "its curve: parabola through the given points (docs/methods/hydraulics.md)"
            )
                .With("a", "head without flow, m", pump.CurveCoefficients[0], Shown.Factor)
                .With("b", "m/(m³/h)", pump.CurveCoefficients[1], Shown.Factor)
                .With("c", "m/(m³/h)²", pump.CurveCoefficients[2], Shown.Factor)
                .With("Q", "flow", pump.FlowM3PerS, Shown.Flow)
                .Computed(v =>
                    v[0] + (v[1] * v[3] * 3600) + (v[2] * v[3] * 3600 * Math.Abs(v[3]) * 3600)
                ),
            "headM" => LoopWhy.Solved($"Head across {pump.Item}, standing", Shown.Head),
            "risePa" => new Derivation(
                $"Pressure rise of {pump.Item}",
                Shown.Drop,
                "Δp = ρ·g·H",
                "definition of head"
            ).With("H", "head", pump.HeadM, Shown.Head),
            "inletPa" => LoopWhy.Solved($"Pressure at the inlet of {pump.Item}", Shown.Gauge),
            "powerW" => Derivation.Given($"Electric power of {pump.Item}", Shown.SmallHeat),
            "curveEndM3PerS" => Derivation.Given("Largest flow of its curve", Shown.Flow),
            _ when name.StartsWith("curveCoefficients", StringComparison.Ordinal) => new Derivation(
                "Coefficient of the curve",
                Shown.Factor,
                "least squares through the given points, head falling",
                "docs/methods/hydraulics.md"
            ),
            _ => null,
        };

    private static Derivation? Tees(TeesAnswer tees, string name) =>
        name switch
        {
            "primaryFlowM3PerS" => LoopWhy.Solved("Flow of the heater circuit", Shown.Flow),
            "secondaryFlowM3PerS" => LoopWhy.Solved("Flow of the floor circuit", Shown.Flow),
            "betweenFlowM3PerS" => LoopWhy
                .Solved("Flow between the tees", Shown.Flow)
                .With("V̇_1", "heater circuit", tees.PrimaryFlowM3PerS, Shown.Flow)
                .With("V̇_2", "floor circuit", tees.SecondaryFlowM3PerS, Shown.Flow)
                .Noting(
                    "It is the difference of the two circuits. Positive: hot water turns straight back. Negative: cooler return mixes into the supply."
                ),
            "primaryC" => LoopWhy.Solved("Water from the heater circuit", Shown.Temperature),
            "secondaryC" => LoopWhy
                .Solved("Water to the floor circuit", Shown.Temperature)
                .With("θ_1", "from the heater circuit", tees.PrimaryC, Shown.Temperature)
                .With("θ_r", "back from the floor", tees.SecondaryReturnC, Shown.Temperature),
            "secondaryReturnC" => LoopWhy.Solved(
                "Water back from the floor circuit",
                Shown.Temperature
            ),
            _ => null,
        };

    private static Derivation? Convergence(string name) =>
        name switch
        {
            "residual" => new Derivation(
                "Residual of pressure",
                Shown.Tiny,
                "max |p_from − p_to − Δp(ṁ)| / max |Δp|",
                "docs/methods/hydraulics.md"
            ),
            "massResidual" => new Derivation(
                "Residual of mass",
                Shown.Tiny,
                "max |Σ ṁ| / max |ṁ|",
                "docs/methods/hydraulics.md"
            ),
            "energyResidual" => new Derivation(
                "Residual of heat",
                Shown.Tiny,
                "max |Σ ṁ·c_p·θ| / max |Φ|",
                "docs/methods/plant.md"
            ),
            "rounds" => new Derivation(
                "Rounds of flow and heat",
                Shown.Whole,
                "counted",
                "docs/methods/plant.md"
            ),
            "newtonSteps" => new Derivation(
                "Newton steps in all rounds",
                Shown.Whole,
                "counted",
                "docs/methods/hydraulics.md"
            ),
            _ => null,
        };
}
