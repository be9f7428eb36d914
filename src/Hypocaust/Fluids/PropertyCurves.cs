namespace Hypocaust.Fluids;

/// <summary>The properties of one liquid along temperature: monotone cubics between equally spaced nodes, viscosity by its logarithm.</summary>
internal sealed class PropertyCurves
{
    private readonly double firstC;
    private readonly double stepK;
    private readonly Piece[] pieces;

    private PropertyCurves(double firstC, double stepK, Piece[] pieces)
    {
        this.firstC = firstC;
        this.stepK = stepK;
        this.pieces = pieces;
    }

    /// <summary>Curves through the states at <paramref name="firstC"/>, one step on, two steps on, and so forth; at least two.</summary>
    public static PropertyCurves Through(
        double firstC,
        double stepK,
        IReadOnlyList<FluidState> nodes
    )
    {
        double[] temperatures = [.. nodes.Select((_, i) => firstC + i * stepK)];
        var density = Cubics(temperatures, nodes, state => state.DensityKgPerM3);
        var heatCapacity = Cubics(temperatures, nodes, state => state.HeatCapacityJPerKgK);
        var viscosity = Cubics(temperatures, nodes, state => Math.Log(state.ViscosityPaS));
        var conductivity = Cubics(temperatures, nodes, state => state.ConductivityWPerMK);
        return new(
            firstC,
            stepK,
            [
                .. Enumerable
                    .Range(0, nodes.Count - 1)
                    .Select(i => new Piece(
                        density[i],
                        heatCapacity[i],
                        viscosity[i],
                        conductivity[i]
                    )),
            ]
        );
    }

    /// <summary>The state at a temperature within the nodes; the caller has checked that.</summary>
    public FluidState At(double temperatureC)
    {
        var index = Math.Clamp((int)((temperatureC - firstC) / stepK), 0, pieces.Length - 1);
        var distance = temperatureC - firstC - index * stepK;
        ref readonly var piece = ref pieces[index];
        return new(
            piece.Density.At(distance),
            piece.HeatCapacity.At(distance),
            Math.Exp(piece.LogViscosity.At(distance)),
            piece.Conductivity.At(distance)
        );
    }

    private static Cubic[] Cubics(
        double[] temperatures,
        IReadOnlyList<FluidState> nodes,
        Func<FluidState, double> property
    )
    {
        double[] values = [.. nodes.Select(property)];
        var slopes = MonotoneCubic.Slopes(temperatures, values);
        return
        [
            .. Enumerable
                .Range(0, values.Length - 1)
                .Select(i =>
                    Cubic.Hermite(
                        temperatures[i + 1] - temperatures[i],
                        values[i],
                        values[i + 1],
                        slopes[i],
                        slopes[i + 1]
                    )
                ),
        ];
    }

    private readonly record struct Piece(
        Cubic Density,
        Cubic HeatCapacity,
        Cubic LogViscosity,
        Cubic Conductivity
    );
}
