using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Data;
using Hypocaust.Problems;

namespace Hypocaust.Building;

/// <summary>Generic building materials by name, so that a design may say <c>"material": "mineral wool"</c>.</summary>
/// <source>ISO 10456:2007 tables 3 and 4; status of each row in Data/materials.csv</source>
public static class MaterialTable
{
    private static readonly Lazy<(
        ImmutableArray<Material> All,
        FrozenDictionary<string, Material> ByName
    )> Table = new(Read);

    /// <summary>All materials, in the order of the standard.</summary>
    public static ImmutableArray<Material> All => Table.Value.All;

    /// <summary>Every name that <see cref="Find"/> accepts, in alphabetical order.</summary>
    public static ImmutableArray<string> Names =>
        [.. Table.Value.ByName.Keys.Order(StringComparer.OrdinalIgnoreCase)];

    /// <summary>The material of a name; capitals do not matter.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>The material, or a problem that lists similar names.</returns>
    public static Result<Material> Find(string name) =>
        Table.Value.ByName.TryGetValue(name.Trim(), out var material)
            ? material
            : BuildingProblems.UnknownMaterial(name, Similar(name));

    private static ImmutableArray<string> Similar(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        ImmutableArray<string> similar =
        [
            .. Names.Where(known =>
                words.Any(word => known.Contains(word, StringComparison.OrdinalIgnoreCase))
            ),
        ];
        return similar.IsEmpty ? [.. All.Select(material => material.Name)] : similar;
    }

    private static (ImmutableArray<Material>, FrozenDictionary<string, Material>) Read()
    {
        var all = ImmutableArray.CreateBuilder<Material>();
        var byName = new Dictionary<string, Material>(StringComparer.OrdinalIgnoreCase);
        foreach (var cells in EmbeddedTable.Load("Building/materials.csv").Rows)
        {
            var names = cells[0].Split('|');
            var material = new Material(
                names[0],
                Number(cells[2]),
                Number(cells[1]),
                Number(cells[3]),
                cells[4] == "seen"
            );
            all.Add(material);
            foreach (var name in names)
            {
                byName.Add(name, material);
            }
        }

        return (all.ToImmutable(), byName.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
