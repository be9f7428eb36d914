using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Building;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Building;

/// <summary>Reads the worked cases of heat_loss.csv.</summary>
internal static class ReferenceLayers
{
    public static ReferenceCsv.Case Case(string name) =>
        ReferenceCsv.Cases("heat_loss.csv").Single(found => found.Name == name);

    /// <summary>Layers written as thickness:conductivity, separated by semicolons.</summary>
    public static ImmutableArray<Layer> Of(string text) =>
        [
            .. text.Split(';')
                .Select(part => part.Split(':').Select(Number).ToArray())
                .Select((pair, i) => Layer.Of($"layer {i + 1}", pair[0], pair[1])),
        ];

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    public static void ShouldGive(this ReferenceCsv.Case given, string name, double ours)
    {
        var expected = given.Expected[name];
        ours.ShouldBe(expected.Number, expected.Absolute, $"{given.Name} {name}");
    }
}
