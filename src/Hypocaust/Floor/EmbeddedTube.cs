namespace Hypocaust.Floor;

/// <summary>The tube in the floor.</summary>
/// <param name="OuterDiameterM">Outer diameter D in m; EN 1264-2 type A reaches from 0.008 to 0.030.</param>
/// <param name="WallM">Wall thickness s_R in m, more than 0 and less than half the outer diameter.</param>
/// <param name="ConductivityWPerMK">Thermal conductivity λ_R of the wall in W/(m·K), more than 0.</param>
public sealed record EmbeddedTube(double OuterDiameterM, double WallM, double ConductivityWPerMK)
{
    /// <summary>Inner diameter in m.</summary>
    public double InnerDiameterM => OuterDiameterM - 2 * WallM;

    /// <summary>Resistance of the wall for one metre of tube in m·K/W: ln(D/d)/(2π λ_R), exact for a round tube.</summary>
    public double WallResistanceMKPerW =>
        Math.Log(OuterDiameterM / InnerDiameterM) / (2 * Math.PI * ConductivityWPerMK);
}
