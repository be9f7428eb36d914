using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>How much heat a floor may give in a zone before its hottest spot gets too warm.</summary>
/// <param name="Zone">Use of the area.</param>
/// <param name="MaximumSurfaceC">Highest surface temperature θ_F,max in °C.</param>
/// <param name="Phi">φ = ((θ_F,max − θ_i)/9 K)^1.1, dimensionless.</param>
/// <param name="Curve">The limit curve of the floor.</param>
/// <param name="WaterExcessK">Highest mean water excess Δθ_H,G over the room in K.</param>
/// <param name="FluxWPerM2">Highest heat flux q_G to the room in W/m².</param>
/// <param name="UniformFluxWPerM2">Flux in W/m² of a surface that is θ_F,max everywhere: the bound that no floor passes.</param>
/// <source>EN 1264-2 (limit tables from memory)</source>
public sealed record SurfaceLimit(
    SurfaceZone Zone,
    double MaximumSurfaceC,
    double Phi,
    LimitCurve Curve,
    double WaterExcessK,
    double FluxWPerM2,
    double UniformFluxWPerM2
)
{
    /// <summary>The limit of a floor in a zone of a room.</summary>
    /// <param name="output">The floor's output.</param>
    /// <param name="zone">Use of the area.</param>
    /// <param name="roomC">Room temperature in °C; at or above the limit it is a problem.</param>
    public static Result<SurfaceLimit> Of(En1264Output output, SurfaceZone zone, double roomC)
    {
        var maximum = zone.MaximumSurfaceC(roomC);
        if (!(roomC < maximum))
        {
            return FloorProblems.RoomAboveLimit(roomC, maximum);
        }

        return LimitCurve
            .Of(output)
            .Then<SurfaceLimit>(curve =>
            {
                var phi = LimitCurve.Phi(maximum - roomC);
                var excess = phi * curve.ExcessK;
                return new SurfaceLimit(
                    zone,
                    maximum,
                    phi,
                    curve,
                    excess,
                    output.FluxWPerM2(excess),
                    SurfaceCurve.FluxWPerM2(maximum - roomC)
                );
            });
    }
}
