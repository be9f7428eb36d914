using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Building;

/// <summary>A wall, roof or floor of plane layers, with its resistance and U-value by the combined method.</summary>
/// <source>ISO 6946:2017, 6.7.1 (uniform layers) and 6.7.2 (combined method)</source>
public sealed record LayeredElement
{
    /// <summary>Ratio of upper to lower bound above which the combined method is outside its scope.</summary>
    public const double HighestRatioOfBounds = 1.5;

    private LayeredElement(
        string name,
        ImmutableArray<Layer> layers,
        double insideM2KPerW,
        double outsideM2KPerW
    )
    {
        Name = name;
        Layers = layers;
        InsideSurfaceM2KPerW = insideM2KPerW;
        OutsideSurfaceM2KPerW = outsideM2KPerW;
        UpperBoundM2KPerW = 1 / ParallelConductance(0, insideM2KPerW + outsideM2KPerW);
        LowerBoundM2KPerW =
            insideM2KPerW + layers.Sum(layer => layer.EquivalentResistanceM2KPerW) + outsideM2KPerW;
        ResistanceM2KPerW = (UpperBoundM2KPerW + LowerBoundM2KPerW) / 2;
    }

    /// <summary>For people.</summary>
    public string Name { get; }

    /// <summary>The layers, inside to outside.</summary>
    public ImmutableArray<Layer> Layers { get; }

    /// <summary>Surface resistance on the warm side, m²·K/W.</summary>
    public double InsideSurfaceM2KPerW { get; }

    /// <summary>Surface resistance on the cold side, m²·K/W.</summary>
    public double OutsideSurfaceM2KPerW { get; }

    /// <summary>Resistance if heat could not flow sideways, m²·K/W (R′, ISO 6946:2017 eq. 7).</summary>
    public double UpperBoundM2KPerW { get; }

    /// <summary>Resistance if every plane between layers were equally warm, m²·K/W (R″, eqs. 8 and 9).</summary>
    public double LowerBoundM2KPerW { get; }

    /// <summary>Total resistance from air to air, m²·K/W: the mean of both bounds (eq. 6).</summary>
    public double ResistanceM2KPerW { get; }

    /// <summary>Thermal transmittance, W/(m²·K).</summary>
    public double UWPerM2K => 1 / ResistanceM2KPerW;

    /// <summary>Upper over lower bound, 1 without bridges.</summary>
    public double RatioOfBounds => UpperBoundM2KPerW / LowerBoundM2KPerW;

    /// <summary>Largest relative error of the resistance that the bounds admit (ISO 6946:2017, 6.7.2.5).</summary>
    public double LargestRelativeError =>
        (UpperBoundM2KPerW - LowerBoundM2KPerW) / (2 * ResistanceM2KPerW);

    /// <summary>Says that the result should not be relied upon, when metal or the like bridges insulation; otherwise null.</summary>
    public Problem? Caution =>
        RatioOfBounds > HighestRatioOfBounds ? BuildingProblems.BridgeTooStrong(this) : null;

    /// <summary>Makes an element between a room and the open air.</summary>
    /// <param name="name">For people.</param>
    /// <param name="direction">Which way the heat leaves.</param>
    /// <param name="layers">Layers, inside to outside; at least one.</param>
    /// <returns>The element, or every problem in its layers.</returns>
    public static Result<LayeredElement> Create(
        string name,
        HeatFlow direction,
        ImmutableArray<Layer> layers
    ) =>
        Create(
            name,
            layers,
            SurfaceResistance.InsideM2KPerW(direction),
            SurfaceResistance.OutsideM2KPerW
        );

    /// <summary>Makes an element with given surface resistances (m²·K/W, 0 or more).</summary>
    /// <returns>The element, or every problem in its layers.</returns>
    public static Result<LayeredElement> Create(
        string name,
        ImmutableArray<Layer> layers,
        double insideSurfaceM2KPerW,
        double outsideSurfaceM2KPerW
    )
    {
        var problems = Check(name, layers, insideSurfaceM2KPerW, outsideSurfaceM2KPerW).ToList();
        return problems.Count > 0
            ? Result<LayeredElement>.Failed(problems)
            : new LayeredElement(name, layers, insideSurfaceM2KPerW, outsideSurfaceM2KPerW);
    }

    private static IEnumerable<Problem> Check(
        string name,
        ImmutableArray<Layer> layers,
        double insideM2KPerW,
        double outsideM2KPerW
    )
    {
        if (layers.IsDefaultOrEmpty)
        {
            return [BuildingProblems.NoLayers(name)];
        }

        List<Problem?> found =
        [
            BuildingProblems.NotNegative($"{name}.insideSurface", insideM2KPerW, "m²K/W"),
            BuildingProblems.NotNegative($"{name}.outsideSurface", outsideM2KPerW, "m²K/W"),
        ];
        foreach (var layer in layers)
        {
            var place = $"{name}.{layer.Name}";
            found.Add(BuildingProblems.AboveZero(place, layer.ResistanceM2KPerW, "m²K/W"));
            if (layer.Bridge is { } bridge)
            {
                found.Add(
                    BuildingProblems.AboveZero($"{place}.bridge", bridge.ResistanceM2KPerW, "m²K/W")
                );
                found.Add(BuildingProblems.Fraction($"{place}.bridge", bridge.AreaFraction));
            }
        }

        return found.OfType<Problem>();
    }

    /// <summary>Conductance of all ways straight through, from a layer on, after a resistance already passed; bridges of different layers cross at random.</summary>
    private double ParallelConductance(int layer, double passedM2KPerW)
    {
        if (layer == Layers.Length)
        {
            return 1 / passedM2KPerW;
        }

        var (main, bridge) = (Layers[layer].ResistanceM2KPerW, Layers[layer].Bridge);
        var throughMain = ParallelConductance(layer + 1, passedM2KPerW + main);
        return bridge is null
            ? throughMain
            : (1 - bridge.AreaFraction) * throughMain
                + bridge.AreaFraction
                    * ParallelConductance(layer + 1, passedM2KPerW + bridge.ResistanceM2KPerW);
    }
}
