namespace Hypocaust.Floor;

/// <summary>
/// The floor without any table: the row of tubes as line sources in the screed, the covering as a plain resistance on top.
/// Says what the tables should have said, and how much hotter the surface is above a tube.
/// </summary>
/// <remarks>
/// For the output nothing flows downward, as in <see cref="En1264Output"/>. Tubes lying on the insulation
/// (<see cref="WetFloorSpecification.ScreedBelowM"/> 0) are the case in which a line source is least like a tube.
/// </remarks>
/// <source><see cref="TubePlaneResistance"/>; measured against solutions in two dimensions in docs/methods/floor.md</source>
public sealed record LineSourceCrossCheck
{
    private LineSourceCrossCheck(TubePlaneResistance plane) => Plane = plane;

    /// <summary>Resistance between tube wall and tube plane, nothing flowing downward.</summary>
    public TubePlaneResistance Plane { get; }

    /// <summary>Resistance of tube wall and slow film for each square metre of floor in m²·K/W.</summary>
    public double TubeResistanceM2KPerW { get; private init; }

    /// <summary>Resistance from the tube plane to the room in m²·K/W.</summary>
    public double AboveM2KPerW { get; private init; }

    /// <summary>Share of the surface resistance in that of surface and covering, 0 to 1: what the covering leaves of a ripple.</summary>
    public double CoveringShare { get; private init; }

    /// <summary>Heat to the room for each kelvin of excess water temperature in W/(m²·K), to compare with K_H.</summary>
    public double ConductanceWPerM2K =>
        1 / (TubeResistanceM2KPerW + Plane.ResistanceM2KPerW + AboveM2KPerW);

    /// <summary>How far the table's K_H lies above (or below, negative) this value, in per cent of it.</summary>
    public double TablePercent { get; private init; }

    /// <summary>How much hotter the floor surface is above a tube than on average, in K.</summary>
    /// <param name="fluxWPerM2">Heat that the tubes give there, up and down, in W/m².</param>
    public double SurfacePeakK(double fluxWPerM2) =>
        Plane.TopPeakM2KPerW * CoveringShare * fluxWPerM2;

    /// <summary>Computes the cross-check of an output.</summary>
    public static LineSourceCrossCheck Of(En1264Output output)
    {
        var floor = output.Section.Specification;
        var radius = floor.Tube.OuterDiameterM / 2;
        var depth = floor.CoverM + radius;
        var surface = 1 / En1264Output.SurfaceCoefficientWPerM2K;
        var top = surface + floor.CoveringResistanceM2KPerW;
        var plane = TubePlaneResistance.Of(
            new TubeRowSlab(
                floor.SpacingM,
                floor.ScreedConductivityWPerMK,
                floor.Tube.OuterDiameterM,
                depth,
                depth + radius + floor.ScreedBelowM,
                1 / top,
                0
            )
        );
        var check = new LineSourceCrossCheck(plane.Value)
        {
            TubeResistanceM2KPerW =
                floor.SpacingM
                * (floor.Tube.WallResistanceMKPerW + (output.Film?.ExtraResistanceMKPerW ?? 0)),
            AboveM2KPerW = depth / floor.ScreedConductivityWPerMK + top,
            CoveringShare = surface / top,
        };
        return check with
        {
            TablePercent = 100 * (output.ConductanceWPerM2K / check.ConductanceWPerM2K - 1),
        };
    }
}
