using Hypocaust.Floor;
using Hypocaust.Floor.Section;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor;

/// <summary>A row of section2d.csv: layers from the surface down, with a thin covering on top in some.</summary>
internal sealed record Section2D(
    ReferenceCsv.Row Row,
    IReadOnlyList<(double ThicknessM, double ConductivityWPerMK)> Layers,
    EmbeddedTube Tube
)
{
    private const double ThickestCoveringM = 0.025;

    public static Section2D Read(ReferenceCsv.Row row) =>
        new(
            row,
            [
                .. row["layers"]
                    .Split(';')
                    .Select(layer => layer.Split(':'))
                    .Select(pair => (Number(pair[0]), Number(pair[1]))),
            ],
            new EmbeddedTube(
                row.Number("tube_od_m"),
                row.Number("tube_wall_m"),
                row.Number("tube_W_mK")
            )
        );

    private bool HasCovering => Layers[0].ThicknessM <= ThickestCoveringM;

    private (double ThicknessM, double ConductivityWPerMK) Screed => Layers[HasCovering ? 1 : 0];

    private double CoveringM => HasCovering ? Layers[0].ThicknessM : 0;

    private double TubeDepthM => Row.Number("tube_depth_m") - CoveringM;

    private double BelowScreed =>
        Layers.Skip(HasCovering ? 2 : 1).Sum(layer => layer.ThicknessM / layer.ConductivityWPerMK)
        + 1 / Row.Number("alpha_bottom");

    /// <summary>Wall and film for each square metre of floor, in m²·K/W.</summary>
    public double TubeResistance()
    {
        var film = Row.Number("h_film_W_m2K");
        var perMetre =
            Tube.WallResistanceMKPerW
            + (film == 0 ? 0 : 1 / (film * Math.PI * Tube.InnerDiameterM));
        return Row.Number("pitch_m") * perMetre;
    }

    /// <summary>The section as the 2-D solution wants it, with all of its layers.</summary>
    public SectionBuildUp BuildUp()
    {
        var film = Row.Number("h_film_W_m2K");
        return new SectionBuildUp
        {
            SpacingM = Row.Number("pitch_m"),
            Tube = Tube,
            Layers = [.. Layers.Select(l => new SectionLayer(l.ThicknessM, l.ConductivityWPerMK))],
            TubeDepthM = Row.Number("tube_depth_m"),
            FilmMKPerW = film == 0 ? 0 : 1 / (film * Math.PI * Tube.InnerDiameterM),
            SurfaceM2KPerW = 1 / Row.Number("alpha_top"),
            BelowM2KPerW = 1 / Row.Number("alpha_bottom"),
        };
    }

    /// <summary>The slab alone, all below it as a coefficient.</summary>
    public TubeRowSlab Slab() =>
        new(
            Row.Number("pitch_m"),
            Screed.ConductivityWPerMK,
            Tube.OuterDiameterM,
            TubeDepthM,
            Screed.ThicknessM,
            Row.Number("alpha_top"),
            1 / BelowScreed
        );

    /// <summary>The same section as the table method wants it; an adiabatic underside becomes a huge resistance.</summary>
    public WetFloorSpecification Specification() =>
        new()
        {
            SpacingM = Row.Number("pitch_m"),
            Tube = Tube,
            CoverM = TubeDepthM - Tube.OuterDiameterM / 2,
            ScreedConductivityWPerMK = Screed.ConductivityWPerMK,
            CoveringResistanceM2KPerW = HasCovering ? CoveringM / Layers[0].ConductivityWPerMK : 0,
            ScreedBelowM = Math.Max(0, Screed.ThicknessM - TubeDepthM - Tube.OuterDiameterM / 2),
            Below =
            [
                new DownwardLayer(
                    "screed below the tube's crown",
                    (Screed.ThicknessM - TubeDepthM + Tube.OuterDiameterM / 2)
                        / Screed.ConductivityWPerMK
                ),
                new DownwardLayer("all else", Math.Min(BelowScreed, 1e9)),
            ],
        };

    private static double Number(string cell) =>
        double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture);
}
