namespace Hypocaust.Plant;

/// <summary>Heat that a pipe in air loses, by cylinder resistances in series; the film inside is neglected, which errs to the safe side.</summary>
/// <param name="InnerM">Inner diameter, m, more than 0.</param>
/// <param name="OuterM">Outer diameter, m, more than the inner.</param>
/// <param name="PipeWPerMK">Conductivity of the pipe wall, W/mK.</param>
/// <param name="InsulationM">Thickness of insulation, m, 0 or more.</param>
/// <param name="InsulationWPerMK">Conductivity of the insulation, W/mK.</param>
/// <param name="OuterCoefficientWPerM2K">Heat transfer at the outer surface, W/m²K.</param>
/// <source>Radial conduction as in EN ISO 12241 (form from memory)</source>
public sealed record PipeHeatLoss(
    double InnerM,
    double OuterM,
    double PipeWPerMK,
    double InsulationM,
    double InsulationWPerMK = PipeHeatLoss.FoamWPerMK,
    double OuterCoefficientWPerM2K = PipeHeatLoss.StillAirWPerM2K
)
{
    /// <summary>Conductivity of common pipe foam at 40 °C, W/mK (common practice, no source).</summary>
    public const double FoamWPerMK = 0.04;

    /// <summary>Heat transfer of a surface in a still room by air and radiation, W/m²K (common practice, no source).</summary>
    public const double StillAirWPerM2K = 10;

    /// <summary>Heat loss for a metre of pipe and a kelvin, W/mK.</summary>
    public double ConductanceWPerMK
    {
        get
        {
            var surfaceM = OuterM + (2 * InsulationM);
            var wall = Math.Log(OuterM / InnerM) / (2 * Math.PI * PipeWPerMK);
            var insulation = Math.Log(surfaceM / OuterM) / (2 * Math.PI * InsulationWPerMK);
            var surface = 1 / (Math.PI * surfaceM * OuterCoefficientWPerM2K);
            return 1 / (wall + insulation + surface);
        }
    }

    /// <summary>Temperature of the outer surface, °C.</summary>
    /// <param name="waterC">Water, °C.</param>
    /// <param name="surroundingsC">Air around, °C.</param>
    public double SurfaceC(double waterC, double surroundingsC) =>
        surroundingsC
        + (
            ConductanceWPerMK
            * (waterC - surroundingsC)
            / (Math.PI * (OuterM + (2 * InsulationM)) * OuterCoefficientWPerM2K)
        );
}
