using System.Collections.Immutable;

namespace Hypocaust.Floor;

/// <summary>What a wet floor is made of, as stated and not yet checked; <see cref="WetFloorSection.Create"/> checks it.</summary>
public sealed record WetFloorSpecification
{
    /// <summary>Distance T between tube centres in m.</summary>
    public required double SpacingM { get; init; }

    /// <summary>The tube.</summary>
    public required EmbeddedTube Tube { get; init; }

    /// <summary>Thickness s_u of screed or slab above the top of the tube in m, without the covering.</summary>
    public required double CoverM { get; init; }

    /// <summary>Conductivity λ_E of the screed or slab around and above the tube in W/(m·K).</summary>
    public required double ScreedConductivityWPerMK { get; init; }

    /// <summary>Resistance R_λB of the floor covering (tile, wood, carpet) in m²·K/W; 0 for bare concrete.</summary>
    public required double CoveringResistanceM2KPerW { get; init; }

    /// <summary>
    /// Thickness of the screed or slab below the tube in m; 0 when the tubes lie on the insulation. Used only for the hottest spot
    /// and the cross-check; its resistance belongs to <see cref="Below"/>.
    /// </summary>
    public double ScreedBelowM { get; init; }

    /// <summary>
    /// Everything between the tubes and the temperature below, from the top down: the part of the slab below the tubes,
    /// insulation, ground or ceiling, and the surface resistance of a room below.
    /// </summary>
    public required ImmutableArray<DownwardLayer> Below { get; init; }
}

/// <summary>One layer below the tubes.</summary>
/// <param name="Name">What it is, for the derivation.</param>
/// <param name="ResistanceM2KPerW">Its thermal resistance in m²·K/W, 0 or more.</param>
public sealed record DownwardLayer(string Name, double ResistanceM2KPerW);
