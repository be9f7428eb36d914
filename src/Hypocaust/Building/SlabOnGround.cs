using Hypocaust.Problems;

namespace Hypocaust.Building;

/// <summary>Steady heat loss of a slab on the ground.</summary>
/// <remarks>A two-dimensional solution of a strip lies 3 to 5 % above this standard; see docs/methods/building.md.</remarks>
/// <source>ISO 13370:2017, 7.1 to 7.3 and annex D; formulas from memory, checked against a 2-D solution</source>
public sealed record SlabOnGround
{
    private SlabOnGround(SlabOnGroundInput input)
    {
        Input = input;
        CharacteristicDimensionM = input.AreaM2 / (0.5 * input.ExposedPerimeterM);
        EquivalentThicknessM =
            input.WallThicknessM
            + input.GroundConductivityWPerMK
                * (
                    input.InsideSurfaceM2KPerW
                    + input.FloorResistanceM2KPerW
                    + input.OutsideSurfaceM2KPerW
                );
        CentreUWPerM2K = IsWellInsulated
            ? input.GroundConductivityWPerMK
                / (0.457 * CharacteristicDimensionM + EquivalentThicknessM)
            : 2
                * input.GroundConductivityWPerMK
                / (Math.PI * CharacteristicDimensionM + EquivalentThicknessM)
                * Math.Log(Math.PI * CharacteristicDimensionM / EquivalentThicknessM + 1);
        EdgeTransmittanceWPerMK = input.Edge is { } edge ? Edge(edge) : 0;
    }

    /// <summary>What it was computed from.</summary>
    public SlabOnGroundInput Input { get; }

    /// <summary>Characteristic dimension B′: area over half the exposed perimeter, m.</summary>
    public double CharacteristicDimensionM { get; }

    /// <summary>Equivalent thickness d_t: metres of soil that resist like wall, floor and surfaces, m.</summary>
    public double EquivalentThicknessM { get; }

    /// <summary>Whether d_t ≥ B′, so that the formula for well insulated floors holds.</summary>
    public bool IsWellInsulated => EquivalentThicknessM >= CharacteristicDimensionM;

    /// <summary>Transmittance without edge insulation, W/(m²·K).</summary>
    public double CentreUWPerM2K { get; }

    /// <summary>Correction for edge insulation per metre of exposed perimeter, W/(m·K); zero or negative.</summary>
    public double EdgeTransmittanceWPerMK { get; }

    /// <summary>Steady heat loss coefficient A·U + P·ψ, W/K.</summary>
    public double HeatLossCoefficientWPerK =>
        Input.AreaM2 * CentreUWPerM2K + Input.ExposedPerimeterM * EdgeTransmittanceWPerMK;

    /// <summary>Transmittance with the edge insulation spread over the area, W/(m²·K): the U to give to an <see cref="EnvelopeElement"/>.</summary>
    public double UWPerM2K => HeatLossCoefficientWPerK / Input.AreaM2;

    /// <summary>Computes the loss.</summary>
    /// <returns>The loss with its intermediate values, or every problem in the input.</returns>
    public static Result<SlabOnGround> Create(SlabOnGroundInput input)
    {
        var problems = input.Check().ToList();
        return problems.Count > 0 ? Result<SlabOnGround>.Failed(problems) : new SlabOnGround(input);
    }

    private double Edge(EdgeInsulation edge)
    {
        var conductivity = Input.GroundConductivityWPerMK;
        var extent = edge.IsVertical ? 2 * edge.WidthOrDepthM : edge.WidthOrDepthM;
        var additionalThicknessM = edge.AdditionalResistance(conductivity) * conductivity;
        return -conductivity
            / Math.PI
            * (
                Math.Log(extent / EquivalentThicknessM + 1)
                - Math.Log(extent / (EquivalentThicknessM + additionalThicknessM) + 1)
            );
    }
}
