using Hypocaust.Floor.Section;

namespace Hypocaust.Floor;

/// <summary>
/// The resistance method of ISO 11855-2 for embedded tubes: water to tube plane, and from there up and down, as three resistances
/// that meet in one point. Without table and without solution; a third opinion.
/// </summary>
/// <remarks>
/// R_t = R_r + R_x with R_r = T ln(D/d)/(2πλ_R) and R_x = T ln(T/(πD))/(2πλ); its film R_w is left out, so that it compares with the
/// others at a bore of the water's temperature. Valid for a cover above 0.3 T on both sides and D below 0.2 T; on insulation, where
/// there is no such cover below, it is not valid and not given.
/// </remarks>
/// <param name="TubeToPlaneM2KPerW">R_t in m²·K/W.</param>
/// <param name="PlaneToRoomM2KPerW">Tube plane to room in m²·K/W.</param>
/// <param name="PlaneToBelowM2KPerW">Tube plane to the temperature below in m²·K/W.</param>
/// <source>ISO 11855-2 (from memory)</source>
public sealed record Iso11855Output(
    double TubeToPlaneM2KPerW,
    double PlaneToRoomM2KPerW,
    double PlaneToBelowM2KPerW
)
{
    private const double LeastCoverOverSpacing = 0.3;
    private const double MostDiameterOverSpacing = 0.2;

    /// <summary>Heat to the room for each kelvin between water and room in W/(m²·K), to compare with K_H.</summary>
    public double UpWPerM2K => PlaneToBelowM2KPerW / Meeting;

    /// <summary>Heat downward for each kelvin between water and below in W/(m²·K).</summary>
    public double DownWPerM2K => PlaneToRoomM2KPerW / Meeting;

    private double Meeting =>
        (TubeToPlaneM2KPerW * PlaneToRoomM2KPerW)
        + (TubeToPlaneM2KPerW * PlaneToBelowM2KPerW)
        + (PlaneToRoomM2KPerW * PlaneToBelowM2KPerW);

    /// <summary>The method for a section of one material; null where it is not valid.</summary>
    public static Iso11855Output? Of(SectionBuildUp section)
    {
        if (section.Layers is not [var slab] || !double.IsFinite(section.BelowM2KPerW))
        {
            return null;
        }

        var (spacing, diameter) = (section.SpacingM, section.Tube.OuterDiameterM);
        var below = slab.ThicknessM - section.TubeDepthM;
        var least = (LeastCoverOverSpacing * spacing) + (diameter / 2);
        if (
            diameter >= MostDiameterOverSpacing * spacing
            || Math.Min(section.TubeDepthM, below) <= least
        )
        {
            return null;
        }

        var plane =
            spacing
            * Math.Log(spacing / (Math.PI * diameter))
            / (2 * Math.PI * slab.ConductivityWPerMK);
        return new Iso11855Output(
            (spacing * (section.Tube.WallResistanceMKPerW + section.FilmMKPerW)) + plane,
            (section.TubeDepthM / slab.ConductivityWPerMK)
                + section.CoveringM2KPerW
                + section.SurfaceM2KPerW,
            (below / slab.ConductivityWPerMK) + section.BelowM2KPerW
        );
    }
}
