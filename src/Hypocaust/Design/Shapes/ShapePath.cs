using Hypocaust.Design.Source;

namespace Hypocaust.Design.Shapes;

/// <summary>Finds what type of value belongs at a place of a design.</summary>
internal static class ShapePath
{
    /// <summary>The shape at a place, or null where nothing belongs.</summary>
    public static ValueShape? Find(SourceNode root, Place place)
    {
        if (place.Parent is not { } parent)
        {
            return ShapeBook.Designs.Record<HeatingDesign>();
        }

        return Find(root, parent) switch
        {
            RecordShape record => record.Find(place.Name ?? "")?.Shape,
            FamilyShape family when root.Find(parent) is { } node => family
                .Find(node)
                ?.Find(place.Name ?? "")
                ?.Shape,
            ICollectionShape collection => collection.Item,
            _ => null,
        };
    }
}
