namespace Hypocaust.Building;

/// <summary>One layer of an element, inside to outside: uniform, or bridged by a second material such as studs.</summary>
/// <remarks>Plain data; <see cref="LayeredElement"/> checks it when it is made.</remarks>
/// <param name="Name">For people.</param>
/// <param name="ResistanceM2KPerW">Resistance of the main part, thickness over conductivity, m²·K/W; above 0.</param>
public sealed record Layer(string Name, double ResistanceM2KPerW)
{
    /// <summary>The part that bridges the layer, if any.</summary>
    public Bridge? Bridge { get; init; }

    /// <summary>Thickness, m, if the layer was given by it.</summary>
    public double? ThicknessM { get; init; }

    /// <summary>Conductivity of the main part, W/(m·K), if the layer was given by it.</summary>
    public double? ConductivityWPerMK { get; init; }

    /// <summary>A layer by thickness (m) and conductivity (W/(m·K)).</summary>
    public static Layer Of(string name, double thicknessM, double conductivityWPerMK) =>
        new(name, thicknessM / conductivityWPerMK)
        {
            ThicknessM = thicknessM,
            ConductivityWPerMK = conductivityWPerMK,
        };

    /// <summary>A layer by thickness (m) and conductivity (W/(m·K)), of which a fraction of the area is another conductivity, such as studs between insulation.</summary>
    public static Layer Bridged(
        string name,
        double thicknessM,
        double conductivityWPerMK,
        double bridgeConductivityWPerMK,
        double bridgeFraction
    ) =>
        Of(name, thicknessM, conductivityWPerMK) with
        {
            Bridge = new(bridgeFraction, thicknessM / bridgeConductivityWPerMK),
        };

    /// <summary>Resistance of the layer with both parts side by side, m²·K/W (the lower bound's layer).</summary>
    public double EquivalentResistanceM2KPerW =>
        Bridge is null
            ? ResistanceM2KPerW
            : 1
                / (
                    (1 - Bridge.AreaFraction) / ResistanceM2KPerW
                    + Bridge.AreaFraction / Bridge.ResistanceM2KPerW
                );
}

/// <summary>The part of a layer that bridges it.</summary>
/// <param name="AreaFraction">Fraction of the area, between 0 and 1.</param>
/// <param name="ResistanceM2KPerW">Resistance of that part, m²·K/W; above 0.</param>
public sealed record Bridge(double AreaFraction, double ResistanceM2KPerW);
