using Hypocaust.Design;

namespace Hypocaust.Papers.Plant;

/// <summary>Finds parts by name.</summary>
internal static class Shelf
{
    /// <summary>The part of a name on the person's shelf, or null.</summary>
    public static Part? Find(HeatingDesign design, string name) =>
        design.Parts is { } shelf && shelf.TryGet(name, out var own) ? own : null;
}
