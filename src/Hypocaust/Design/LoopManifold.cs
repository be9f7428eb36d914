namespace Hypocaust.Design;

/// <summary>The manifold at which a loop hangs.</summary>
public static class LoopManifold
{
    /// <summary>The manifold named by the loop or, where it names none, the only one of the plant; null where there is none or a choice.</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="plant">The plant.</param>
    /// <param name="partNamed">Finds a part by name.</param>
    public static string? Of(LoopDesign loop, PlantDesign plant, Func<string, Part?> partNamed)
    {
        if (loop.Manifold is { } named)
        {
            return named;
        }

        var manifolds = plant
            .Items.Where(item => partNamed(item.Value.Part) is ManifoldPart)
            .Take(2)
            .ToList();
        return manifolds.Count == 1 ? manifolds[0].Key : null;
    }
}
