using Hypocaust.Design;

namespace Hypocaust.Plant;

/// <summary>Thermal conductivity of pipe walls.</summary>
/// <source>Copper, steel: ISO 10456:2007, table 3; plastics: EN 1264-2, annex (from memory)</source>
public static class PipeConductivity
{
    /// <summary>Conductivity of a material, W/mK.</summary>
    public static double Of(PipeMaterial material) =>
        material switch
        {
            PipeMaterial.Copper => 380,
            PipeMaterial.Steel => 50,
            PipeMaterial.Pex or PipeMaterial.Pert => 0.35,
            PipeMaterial.Multilayer => 0.43,
            _ => throw new ArgumentOutOfRangeException(
                nameof(material),
                material,
                "Unknown material."
            ),
        };
}
