using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Floor.Section;

/// <summary>One layer of the section that conducts in both directions.</summary>
/// <param name="ThicknessM">Thickness in m, above 0.</param>
/// <param name="ConductivityWPerMK">Conductivity in W/(m·K), 0.001 to 1000.</param>
public sealed record SectionLayer(double ThicknessM, double ConductivityWPerMK);

/// <summary>A floor section with a row of tubes as the solution in two dimensions wants it, as stated and not yet checked.</summary>
public sealed record SectionBuildUp
{
    /// <summary>Distance between tube centres in m, above the tube's diameter, at most 5.</summary>
    public required double SpacingM { get; init; }

    /// <summary>The tube.</summary>
    public required EmbeddedTube Tube { get; init; }

    /// <summary>Layers from the top down, in which heat also flows sideways.</summary>
    public required ImmutableArray<SectionLayer> Layers { get; init; }

    /// <summary>Top of the layers to the tube's centre in m; the tube lies wholly inside the layers.</summary>
    public required double TubeDepthM { get; init; }

    /// <summary>Resistance of film in the tube for one metre of it in m·K/W, 0 or more; 0 holds the bore at the water's temperature.</summary>
    public double FilmMKPerW { get; init; }

    /// <summary>Resistance of a covering on top in m²·K/W, 0 or more; through it heat flows straight up.</summary>
    public double CoveringM2KPerW { get; init; }

    /// <summary>Resistance between surface and room in m²·K/W, above 0; 1/10.8 as EN 1264-2 has it (from memory).</summary>
    public double SurfaceM2KPerW { get; init; } = 1 / En1264Output.SurfaceCoefficientWPerM2K;

    /// <summary>Resistance below the layers in m²·K/W, 0 or more; infinite lets nothing through.</summary>
    public double BelowM2KPerW { get; init; } = double.PositiveInfinity;

    /// <summary>Whole thickness of the layers in m.</summary>
    public double ThicknessM => Layers.Sum(layer => layer.ThicknessM);

    /// <summary>The section of a wet floor: slab or screed as one layer, the covering on top and all else below as plain resistances.</summary>
    public static SectionBuildUp Of(WetFloorSpecification floor)
    {
        var diameter = floor.Tube.OuterDiameterM;
        return new SectionBuildUp
        {
            SpacingM = floor.SpacingM,
            Tube = floor.Tube,
            Layers =
            [
                new SectionLayer(
                    floor.CoverM + diameter + floor.ScreedBelowM,
                    floor.ScreedConductivityWPerMK
                ),
            ],
            TubeDepthM = floor.CoverM + (diameter / 2),
            CoveringM2KPerW = floor.CoveringResistanceM2KPerW,
            BelowM2KPerW =
                (floor.Below.IsDefault ? 0 : floor.Below.Sum(layer => layer.ResistanceM2KPerW))
                - (
                    floor.ScreedBelowM == 0
                        ? 0
                        : floor.ScreedBelowM / floor.ScreedConductivityWPerMK
                ),
        };
    }

    /// <summary>Whether two sections are the same in every figure.</summary>
    public bool Equals(SectionBuildUp? other) =>
        other is not null
        && (SpacingM, TubeDepthM, FilmMKPerW, CoveringM2KPerW, SurfaceM2KPerW, BelowM2KPerW)
            == (
                other.SpacingM,
                other.TubeDepthM,
                other.FilmMKPerW,
                other.CoveringM2KPerW,
                other.SurfaceM2KPerW,
                other.BelowM2KPerW
            )
        && Tube == other.Tube
        && Layers.SequenceEqual(other.Layers);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        HashCode.Combine(SpacingM, Tube, TubeDepthM, CoveringM2KPerW, BelowM2KPerW, Layers[0]);

    /// <summary>What is physically impossible about the section.</summary>
    internal IEnumerable<Problem> Problems()
    {
        if (!(Tube.WallM > 0 && Tube.InnerDiameterM > 0))
        {
            yield return FloorProblems.Wall(Tube.WallM);
        }

        if (!IsConductivity(Tube.ConductivityWPerMK))
        {
            yield return FloorProblems.TubeConductivity(Tube.ConductivityWPerMK);
        }

        foreach (var layer in Layers.Where(layer => !IsConductivity(layer.ConductivityWPerMK)))
        {
            yield return FloorProblems.SectionConductivity(layer.ConductivityWPerMK);
        }

        var radius = Tube.OuterDiameterM / 2;
        if (
            !(
                radius > 0
                && SpacingM > 2 * radius
                && SpacingM <= 5
                && TubeDepthM - radius > 0
                && ThicknessM - TubeDepthM - radius >= -1e-9
                && ThicknessM <= 20
                && Layers.All(layer => layer.ThicknessM > 0)
            )
        )
        {
            yield return FloorProblems.TubeNotInside();
        }

        if (!IsResistance(CoveringM2KPerW) || !IsResistance(FilmMKPerW) || !(SurfaceM2KPerW > 0))
        {
            yield return FloorProblems.SectionResistance(CoveringM2KPerW);
        }

        if (!(BelowM2KPerW >= 0))
        {
            yield return FloorProblems.BelowLessThanSlab();
        }
    }

    private static bool IsConductivity(double value) => value.IsWithin(1e-3, 1e3);

    private static bool IsResistance(double value) => value >= 0 && double.IsFinite(value);
}
