using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Places at which a hose fits.</summary>
internal static class HosePoints
{
    /// <summary>Parts through which one can both fill and drain: purge valves, and manifolds with valves for it.</summary>
    public static IEnumerable<PlacedPart> OfBothKinds(PlantGraph graph) =>
        graph
            .Inline(InlineFunction.Purge)
            .Concat(graph.Items.Where(item => item.Part is ManifoldPart { FillAndDrain: true }));

    /// <summary>All places at which a hose fits.</summary>
    public static IEnumerable<PlacedPart> All(PlantGraph graph) =>
        OfBothKinds(graph)
            .Concat(graph.Tappings(TappingFunction.Fill))
            .Concat(graph.Tappings(TappingFunction.Drain));
}
