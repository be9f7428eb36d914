using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why the figures of items and pipes are what they are.</summary>
internal static class PipingWhy
{
    public static Derivation? Find(Answer answer, string name, ImmutableArray<int> at) =>
        Item(answer, name, at) ?? Pipe(answer, name, at);

    // both lists share names (flowKgPerS, dropPa); their wording fits either
    private static Derivation? Item(Answer answer, string name, ImmutableArray<int> at) =>
        name switch
        {
            "temperatureC" => LoopWhy.Solved("Water temperature here", Shown.Temperature),
            "pressurePa" => LoopWhy
                .Solved("Pressure here, above atmosphere", Shown.Gauge)
                .With(
                    "p_v",
                    "at the expansion vessel, warm",
                    answer.Plant!.Fill.WarmPa ?? answer.Plant.Fill.ColdPa,
                    Shown.Gauge
                )
                .Noting(
                    "Counted from the vessel's connection: friction, pump heads and the weight of the water between."
                ),
            "flowKgPerS" => LoopWhy.Solved("Mass flow", Shown.MassFlow),
            "flowM3PerS" => LoopWhy.Solved("Flow", Shown.Flow),
            "dropPa" => LoopWhy.Solved("Pressure drop", Shown.Drop),
            "heightM" => Derivation.Given("Height above the floor", Shown.Length),
            _ => null,
        };

    private static Derivation? Pipe(Answer answer, string name, ImmutableArray<int> at)
    {
        if (at[0] >= answer.Plant!.Pipes.Length)
        {
            return null;
        }

        var pipe = answer.Plant.Pipes[at[0]];
        return name switch
        {
            "lengthM" => Derivation.Given("Length of the pipe", Shown.Length),
            "innerM" => Derivation.Given("Inner diameter of the pipe", Shown.Small),
            "velocityMPerS" => new Derivation(
                "Velocity in the pipe",
                Shown.Velocity,
                "v = 4·V̇/(π·d²)",
                "continuity"
            )
                .With("V̇", "flow", pipe.FlowM3PerS, Shown.Flow)
                .With("d", "inner diameter", pipe.InnerM, Shown.Small)
                .Computed(v => 4 * v[0] / (Math.PI * v[1] * v[1])),
            "inC" => LoopWhy.Solved("Water at the upstream end", Shown.Temperature),
            "outC" => LoopWhy.Solved("Water at the downstream end", Shown.Temperature),
            "lossW" => new Derivation(
                "Heat that the pipe loses",
                Shown.SmallHeat,
                "Φ = ṁ·c_p·(θ_in − θ_out)",
                "cylinder resistances in series, 10 W/m²K outside (docs/methods/plant.md)"
            )
                .With("ṁ", "mass flow, kg/s", Math.Abs(pipe.FlowKgPerS), Shown.MassFlow)
                .With(
                    "c_p",
                    "specific heat, J/kgK",
                    answer.Plant.Fluid.HeatCapacityJPerKgK,
                    Shown.Whole
                )
                .With("θ_in", "upstream", pipe.InC ?? 0, Shown.Temperature)
                .With("θ_out", "downstream", pipe.OutC ?? 0, Shown.Temperature)
                .Computed(v => v[0] * v[1] * (v[2] - v[3])),
            _ => null,
        };
    }
}
