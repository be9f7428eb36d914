using Hypocaust.Problems;

namespace Hypocaust.Fluids;

/// <summary>The liquid in the pipes: water or a glycol mixture of fixed strength. Immutable; two fluids of the same kind and fraction are equal.</summary>
/// <source>Water: IAPWS SR6-08(2011). Mixtures: ASHRAE Handbook Fundamentals 2001. See docs/methods/fluids.md</source>
public sealed class Fluid : IEquatable<Fluid>
{
    private const double WaterStepK = 1;
    private const double WaterFreezingPointC = 0;

    private readonly PropertyCurves curves;

    private Fluid(FluidKind kind, double volumeFraction)
    {
        Kind = kind;
        VolumeFraction = volumeFraction;
        HighestC = GlycolTable.HighestC;
        if (volumeFraction == 0)
        {
            FreezingPointC = WaterFreezingPointC;
            LowestC = WaterFreezingPointC;
            curves = Curves(LowestC, WaterStepK, LiquidWater.At);
            return;
        }

        var table = GlycolTable.Of(kind);
        MassFraction = table.MassFraction(volumeFraction);
        FreezingPointC = table.FreezingPointC(volumeFraction);
        var lowestRowC = table.LowestRowC(volumeFraction);
        LowestC = Math.Max(FreezingPointC, lowestRowC);
        curves = Curves(
            lowestRowC,
            GlycolTable.RowStepK,
            rowC => table.AtRow(rowC, volumeFraction)
        );
    }

    /// <summary>Plain water.</summary>
    public static Fluid Water { get; } = new(FluidKind.Water, 0);

    /// <summary>What is mixed into the water.</summary>
    public FluidKind Kind { get; }

    /// <summary>Volume of antifreeze per volume of both before mixing (jugs are measured so), 0 to 0.60.</summary>
    public double VolumeFraction { get; }

    /// <summary>Mass of antifreeze per mass of mixture, 0 to 0.60.</summary>
    public double MassFraction { get; }

    /// <summary>Temperature at which the first ice crystals form, °C. Pipes burst only well below it, but pumps may stop at it.</summary>
    public double FreezingPointC { get; }

    /// <summary>Lowest temperature with published properties of the liquid, °C: the freezing point, or −10 °C to −35 °C where the table ends before it.</summary>
    public double LowestC { get; }

    /// <summary>Highest temperature with published properties, °C.</summary>
    public double HighestC { get; }

    /// <summary>Makes a fluid from the volume fraction of antifreeze.</summary>
    /// <param name="kind">What is mixed in.</param>
    /// <param name="volumeFraction">0 to 0.60 (propylene) or 0.578 (ethylene, 60 % by mass); 0 for water.</param>
    /// <returns>The fluid, or a problem when the fraction is outside the published tables.</returns>
    public static Result<Fluid> Create(FluidKind kind, double volumeFraction)
    {
        if (!double.IsFinite(volumeFraction))
        {
            return FluidProblems.NotANumber(nameof(volumeFraction));
        }

        if (kind == FluidKind.Water)
        {
            return volumeFraction == 0 ? Water : FluidProblems.WaterWithFraction(volumeFraction);
        }

        var highest = GlycolTable.Of(kind).HighestVolumeFraction;
        return volumeFraction >= 0 && volumeFraction <= highest
            ? new Fluid(kind, volumeFraction)
            : FluidProblems.FractionOutOfRange(nameof(volumeFraction), volumeFraction, highest);
    }

    /// <summary>Makes a fluid from the mass fraction of antifreeze.</summary>
    /// <param name="kind">What is mixed in.</param>
    /// <param name="massFraction">0 to 0.60; 0 for water.</param>
    /// <returns>The fluid, or a problem when the fraction is outside the published tables.</returns>
    public static Result<Fluid> CreateByMass(FluidKind kind, double massFraction)
    {
        if (kind == FluidKind.Water || !double.IsFinite(massFraction))
        {
            return Create(kind, massFraction);
        }

        var table = GlycolTable.Of(kind);
        return massFraction >= 0 && massFraction <= table.HighestMassFraction
            ? Create(kind, massFraction == 0 ? 0 : table.VolumeFraction(massFraction))
            : FluidProblems.FractionOutOfRange(
                nameof(massFraction),
                massFraction,
                table.HighestMassFraction
            );
    }

    /// <summary>Largest volume fraction that the published tables cover: 0.60 propylene, 0.578 ethylene, 0 water.</summary>
    public static double HighestVolumeFraction(FluidKind kind) =>
        kind == FluidKind.Water ? 0 : GlycolTable.Of(kind).HighestVolumeFraction;

    /// <summary>Properties at a temperature.</summary>
    /// <param name="temperatureC">°C, from <see cref="LowestC"/> to <see cref="HighestC"/>.</param>
    /// <returns>The properties, or a problem when the fluid would be frozen or is not tabulated there.</returns>
    public Result<FluidState> At(double temperatureC) =>
        TryAt(temperatureC, out var state) ? state
        : double.IsNaN(temperatureC) ? FluidProblems.NotANumber(nameof(temperatureC))
        : temperatureC < LowestC ? FluidProblems.TooCold(temperatureC, this)
        : FluidProblems.TooHot(temperatureC, this);

    /// <summary>Properties at a temperature, without allocating; false outside <see cref="LowestC"/> to <see cref="HighestC"/>.</summary>
    /// <param name="temperatureC">°C.</param>
    /// <param name="state">The properties when true, otherwise all zero.</param>
    public bool TryAt(double temperatureC, out FluidState state)
    {
        var inside = temperatureC >= LowestC && temperatureC <= HighestC;
        state = inside ? curves.At(temperatureC) : default;
        return inside;
    }

    /// <summary>Properties at a temperature that the caller has checked, without allocating.</summary>
    /// <param name="temperatureC">°C, from <see cref="LowestC"/> to <see cref="HighestC"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The caller has not checked it.</exception>
    public FluidState StateAt(double temperatureC) =>
        TryAt(temperatureC, out var state)
            ? state
            : throw new ArgumentOutOfRangeException(
                nameof(temperatureC),
                temperatureC,
                $"{LowestC} to {HighestC} °C"
            );

    /// <summary>Growth in volume between two temperatures, as a fraction of the volume at the first: ρ(from)/ρ(to) − 1; negative when it shrinks.</summary>
    /// <param name="fromC">Temperature at the start, °C.</param>
    /// <param name="toC">Temperature at the end, °C.</param>
    public Result<double> ExpansionFraction(double fromC, double toC) =>
        At(fromC)
            .Then<double>(from =>
                At(toC).Then<double>(to => from.DensityKgPerM3 / to.DensityKgPerM3 - 1)
            );

    /// <inheritdoc/>
    public bool Equals(Fluid? other) =>
        other is not null && Kind == other.Kind && VolumeFraction.Equals(other.VolumeFraction);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Fluid);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Kind, VolumeFraction);

    private PropertyCurves Curves(double firstC, double stepK, Func<double, FluidState> nodeAt)
    {
        var count = (int)Math.Round((HighestC - firstC) / stepK) + 1;
        return PropertyCurves.Through(
            firstC,
            stepK,
            [.. Enumerable.Range(0, count).Select(i => nodeAt(firstC + i * stepK))]
        );
    }
}
