using System.Diagnostics.CodeAnalysis;

namespace Hypocaust.Design;

/// <summary>Finds parts by name: on the design's own shelf first, then in the built-in list.</summary>
/// <param name="design">The design whose shelf comes first.</param>
public sealed class PartLookup(HeatingDesign design)
{
    /// <summary>All names, the shelf's first.</summary>
    public IEnumerable<string> Names =>
        design.Parts.Names.Concat(Catalogue.Parts.Names).Distinct(StringComparer.Ordinal);

    /// <summary>Looks a part up.</summary>
    public bool TryGet(string name, [MaybeNullWhen(false)] out Part part)
    {
        if (design.Parts.TryGet(name, out part))
        {
            return true;
        }

        return Catalogue.Parts.TryGet(name, out part);
    }

    /// <summary>The part of a name, or null.</summary>
    public Part? Find(string name) => TryGet(name, out var part) ? part : null;

    /// <summary>The part of an item in the plant, or null where there is no such item or part.</summary>
    public Part? OfItem(string item) =>
        design.Plant is { } plant && plant.Items.TryGet(item, out var placed)
            ? Find(placed.Part)
            : null;
}
