using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>A wet floor (EN 1264 type A: tubes inside the screed or slab) that lies within the reach of the table method.</summary>
public sealed record WetFloorSection
{
    private const int MaximumScreedBelowM = 2;
    private const double MinimumBelowM2KPerW = 0.01;

    private WetFloorSection(WetFloorSpecification specification)
    {
        Specification = specification;
        ResistanceBelowM2KPerW = specification.Below.Sum(layer => layer.ResistanceM2KPerW);
    }

    /// <summary>What the floor is made of.</summary>
    public WetFloorSpecification Specification { get; }

    /// <summary>Sum R_u of the layers below the tubes in m²·K/W, 0.01 or more.</summary>
    public double ResistanceBelowM2KPerW { get; }

    /// <summary>Cover over conductivity s_u/λ_E in m²·K/W: the resistance of the screed above the tube.</summary>
    public double CoverResistanceM2KPerW =>
        Specification.CoverM / Specification.ScreedConductivityWPerMK;

    /// <summary>Checks a floor against <see cref="En1264Validity"/> and gives every problem at once.</summary>
    /// <param name="specification">The floor as stated.</param>
    /// <source>EN 1264-2, types A and C (ranges from memory)</source>
    public static Result<WetFloorSection> Create(WetFloorSpecification specification)
    {
        List<Problem> problems =
        [
            .. Spacing(specification.SpacingM),
            .. Tube(specification.Tube),
            .. Screed(specification),
            .. Below(specification),
        ];
        return problems.Count > 0
            ? Result<WetFloorSection>.Failed(problems)
            : new WetFloorSection(specification);
    }

    private static IEnumerable<Problem> Spacing(double spacingM)
    {
        if (!(spacingM >= En1264Validity.MinimumSpacingM))
        {
            yield return FloorProblems.SpacingTooClose(spacingM);
        }
        else if (spacingM > En1264Validity.MaximumSpacingM)
        {
            yield return FloorProblems.SpacingTooWide(spacingM);
        }
    }

    private static IEnumerable<Problem> Tube(EmbeddedTube tube)
    {
        if (
            !tube.OuterDiameterM.IsWithin(
                En1264Validity.MinimumDiameterM,
                En1264Validity.MaximumDiameterM
            )
        )
        {
            yield return FloorProblems.Diameter(tube.OuterDiameterM);
        }

        if (!(tube.WallM > 0 && tube.InnerDiameterM > 0))
        {
            yield return FloorProblems.Wall(tube.WallM);
        }

        if (!(tube.ConductivityWPerMK > 0 && double.IsFinite(tube.ConductivityWPerMK)))
        {
            yield return FloorProblems.TubeConductivity(tube.ConductivityWPerMK);
        }
    }

    private static IEnumerable<Problem> Screed(WetFloorSpecification floor)
    {
        if (!floor.CoverM.IsWithin(En1264Validity.MinimumCoverM, En1264Validity.MaximumCoverM))
        {
            yield return FloorProblems.Cover(floor.CoverM);
        }
        else if (
            floor.CoverM > En1264Validity.MaximumLightCoverM
            && floor.ScreedConductivityWPerMK < En1264Validity.LightScreedBelowWPerMK
        )
        {
            yield return FloorProblems.LightCover(floor.CoverM);
        }

        if (
            !floor.ScreedConductivityWPerMK.IsWithin(
                En1264Validity.MinimumScreedConductivityWPerMK,
                En1264Validity.MaximumScreedConductivityWPerMK
            )
        )
        {
            yield return FloorProblems.ScreedConductivity(floor.ScreedConductivityWPerMK);
        }

        if (!floor.CoveringResistanceM2KPerW.IsWithin(0, En1264Validity.MaximumCoveringM2KPerW))
        {
            yield return FloorProblems.Covering(floor.CoveringResistanceM2KPerW);
        }
    }

    private static IEnumerable<Problem> Below(WetFloorSpecification floor)
    {
        if (!floor.ScreedBelowM.IsWithin(0, MaximumScreedBelowM))
        {
            yield return FloorProblems.Outside(
                "floor-screed-below-outside",
                "screedBelowM",
                "screed below the tubes",
                floor.ScreedBelowM,
                "m thick",
                $"Give a thickness from 0 m to {MaximumScreedBelowM} m"
            );
        }

        var sum = 0.0;
        foreach (var layer in floor.Below.IsDefault ? [] : floor.Below)
        {
            if (!(layer.ResistanceM2KPerW >= 0 && double.IsFinite(layer.ResistanceM2KPerW)))
            {
                yield return FloorProblems.Below(layer.Name, layer.ResistanceM2KPerW);
            }

            sum += layer.ResistanceM2KPerW;
        }

        if (sum < MinimumBelowM2KPerW)
        {
            yield return FloorProblems.NothingBelow();
        }
    }
}
