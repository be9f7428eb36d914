using System.Collections;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hypocaust.Design.Source;
using Hypocaust.Quantities;

namespace Hypocaust.Design;

/// <summary>A measured value of a design and where it stands.</summary>
/// <param name="Path">Its path, for example <c>$.floor.loops[2].spacing</c>.</param>
/// <param name="Value">The value.</param>
public readonly record struct PlacedQuantity(string Path, IQuantity Value);

/// <summary>Finds every measured value of a design, the assumed ones among them.</summary>
public static class DesignQuantities
{
    /// <summary>The values in the order of the records.</summary>
    public static IEnumerable<PlacedQuantity> Of(HeatingDesign design) => Walk(design, Place.Root);

    private static IEnumerable<PlacedQuantity> Walk(object? value, Place at) =>
        value switch
        {
            null or string or JsonNode or RunStep => [],
            IQuantity quantity => [new PlacedQuantity(at.ToString(), quantity)],
            IEnumerable list => Items(list, at),
            _ when value.GetType().Namespace == typeof(HeatingDesign).Namespace => Members(
                value,
                at
            ),
            _ => [],
        };

    private static IEnumerable<PlacedQuantity> Items(IEnumerable list, Place at)
    {
        var index = 0;
        foreach (var item in list)
        {
            var named =
                item is { } entry
                && entry.GetType() is { IsGenericType: true } type
                && type.GetGenericTypeDefinition() == typeof(KeyValuePair<,>);
            var (value, place) = named ? Entry(item, at) : (item, at.Item(index));
            foreach (var found in Walk(value, place))
            {
                yield return found;
            }

            index++;
        }
    }

    private static (object? Value, Place At) Entry(object entry, Place at)
    {
        var type = entry.GetType();
        return (
            type.GetProperty("Value")!.GetValue(entry),
            at.Member((string)type.GetProperty("Key")!.GetValue(entry)!)
        );
    }

    private static IEnumerable<PlacedQuantity> Members(object record, Place at) =>
        record
            .GetType()
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0)
            .SelectMany(property =>
                Walk(
                    property.GetValue(record),
                    at.Member(JsonNamingPolicy.CamelCase.ConvertName(property.Name))
                )
            );
}
