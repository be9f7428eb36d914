using Hypocaust.Problems;

namespace Hypocaust.Building;

/// <summary>What the loss of a slab on the ground depends on.</summary>
/// <param name="AreaM2">Floor area, m²; above 0.</param>
/// <param name="ExposedPerimeterM">Length of the edges towards outdoors or an unheated space, m; above 0.</param>
/// <param name="WallThicknessM">Full thickness of the walls around, m; 0 or more.</param>
/// <param name="GroundConductivityWPerMK">Of the soil, W/(m·K); above 0. Clay or silt 1.5, sand or gravel 2.0, rock 3.5.</param>
/// <param name="FloorResistanceM2KPerW">Of slab, insulation beneath and covering, m²·K/W; 0 or more. Dense concrete slab and thin coverings may be left out.</param>
public sealed record SlabOnGroundInput(
    double AreaM2,
    double ExposedPerimeterM,
    double WallThicknessM,
    double GroundConductivityWPerMK,
    double FloorResistanceM2KPerW
)
{
    /// <summary>Inside surface resistance, m²·K/W; by default that of downward flow, 0.17.</summary>
    public double InsideSurfaceM2KPerW { get; init; } =
        SurfaceResistance.InsideM2KPerW(HeatFlow.Downward);

    /// <summary>Outside surface resistance, m²·K/W; by default 0.04.</summary>
    public double OutsideSurfaceM2KPerW { get; init; } = SurfaceResistance.OutsideM2KPerW;

    /// <summary>Insulation along the edge, if any.</summary>
    public EdgeInsulation? Edge { get; init; }

    /// <summary>Every problem in these figures.</summary>
    internal IEnumerable<Problem> Check()
    {
        Problem?[] found =
        [
            BuildingProblems.AboveZero("area", AreaM2, "m²"),
            BuildingProblems.AboveZero("exposedPerimeter", ExposedPerimeterM, "m"),
            BuildingProblems.NotNegative("wallThickness", WallThicknessM, "m"),
            BuildingProblems.AboveZero("groundConductivity", GroundConductivityWPerMK, "W/mK"),
            BuildingProblems.NotNegative("floorResistance", FloorResistanceM2KPerW, "m²K/W"),
            BuildingProblems.AboveZero("insideSurface", InsideSurfaceM2KPerW, "m²K/W"),
            BuildingProblems.NotNegative("outsideSurface", OutsideSurfaceM2KPerW, "m²K/W"),
            .. Edge?.Check(GroundConductivityWPerMK) ?? [],
        ];
        return found.OfType<Problem>();
    }
}

/// <summary>Insulation along the edge of a slab: flat under or beside it, or upright in the ground along the foundation.</summary>
/// <param name="IsVertical">Upright along the foundation; otherwise flat.</param>
/// <param name="WidthOrDepthM">How far it reaches inwards or down, m; above 0.</param>
/// <param name="ResistanceM2KPerW">Its resistance, m²·K/W; above that of as much soil.</param>
/// <param name="ThicknessM">Its thickness, m; 0 or more.</param>
public sealed record EdgeInsulation(
    bool IsVertical,
    double WidthOrDepthM,
    double ResistanceM2KPerW,
    double ThicknessM
)
{
    /// <summary>What it resists beyond the soil that it replaces, m²·K/W (R′, ISO 13370:2017 annex D).</summary>
    internal double AdditionalResistance(double groundConductivityWPerMK) =>
        ResistanceM2KPerW - ThicknessM / groundConductivityWPerMK;

    /// <summary>Every problem in these figures.</summary>
    internal IEnumerable<Problem?> Check(double groundConductivityWPerMK)
    {
        yield return BuildingProblems.AboveZero("edgeInsulation.width", WidthOrDepthM, "m");
        yield return BuildingProblems.AboveZero(
            "edgeInsulation.resistance",
            ResistanceM2KPerW,
            "m²K/W"
        );
        yield return BuildingProblems.NotNegative("edgeInsulation.thickness", ThicknessM, "m");
        if (AdditionalResistance(groundConductivityWPerMK) <= 0)
        {
            yield return BuildingProblems.EdgeInsulationUseless(
                ResistanceM2KPerW,
                ThicknessM / groundConductivityWPerMK
            );
        }
    }
}
