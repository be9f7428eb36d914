using Hypocaust.Problems;

namespace Hypocaust.Design.Source;

/// <summary>Lists where every value of a document stands.</summary>
internal static class PlaceIndex
{
    public static IReadOnlyDictionary<string, TextPosition> Of(SourceNode root, SourceText source)
    {
        var places = new Dictionary<string, TextPosition>(StringComparer.Ordinal);
        Add(root, Place.Root, source, places);
        return places;
    }

    private static void Add(
        SourceNode node,
        Place place,
        SourceText source,
        Dictionary<string, TextPosition> places
    )
    {
        places.TryAdd(place.ToString(), source.PositionOf(node.Start));
        foreach (var member in node.Members)
        {
            Add(member.Value, place.Member(member.Name), source, places);
        }

        for (var i = 0; i < node.Items.Count; i++)
        {
            Add(node.Items[i], place.Item(i), source, places);
        }
    }
}
