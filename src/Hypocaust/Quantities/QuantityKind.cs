using System.Collections.Immutable;

namespace Hypocaust.Quantities;

/// <summary>What a number measures: its name, its units (the SI one first) and an example to show a person.</summary>
/// <param name="Name">Plain name, for example <c>length</c>.</param>
/// <param name="Example">A value written as a person would.</param>
/// <param name="Units">All units understood; the first is the SI unit in which we compute.</param>
public sealed record QuantityKind(string Name, string Example, ImmutableArray<Unit> Units)
{
    private readonly Dictionary<string, Unit> bySpelling = IndexSpellings(Units);

    /// <summary>The SI unit.</summary>
    public Unit Si => Units[0];

    /// <summary>The units as a person would list them.</summary>
    public string UnitList => string.Join(", ", Units.Select(unit => unit.Symbol));

    /// <summary>The name with its article, for a sentence: <c>a length</c>, <c>an area</c>.</summary>
    public string NameWithArticle => ("aeiou".Contains(Name[0]) ? "an " : "a ") + Name;

    /// <summary>Finds a unit by any of its spellings, or null.</summary>
    public Unit? Find(string spelling) => bySpelling.GetValueOrDefault(Fold(spelling));

    // "m²" and "m^2" fold to the same text; two units that did would be a wrong declaration
    private static Dictionary<string, Unit> IndexSpellings(ImmutableArray<Unit> units)
    {
        var index = new Dictionary<string, Unit>(StringComparer.Ordinal);
        foreach (var unit in units)
        {
            index.Add(Fold(unit.Symbol), unit);
            foreach (var spelling in unit.Spellings)
            {
                if (!index.TryAdd(Fold(spelling), unit) && index[Fold(spelling)] != unit)
                {
                    throw new InvalidOperationException($"\"{spelling}\" names two units.");
                }
            }
        }

        return index;
    }

    // Spelling is forgiving about what keyboards make hard: degree signs, superscripts, middle dots, blanks, capitals.
    private static string Fold(string text) =>
        text.Replace(" ", "", StringComparison.Ordinal)
            .Replace("°", "", StringComparison.Ordinal)
            .Replace("²", "2", StringComparison.Ordinal)
            .Replace("³", "3", StringComparison.Ordinal)
            .Replace("·", "", StringComparison.Ordinal)
            .Replace("⋅", "", StringComparison.Ordinal)
            .Replace("^", "", StringComparison.Ordinal)
            .Replace("(", "", StringComparison.Ordinal)
            .Replace(")", "", StringComparison.Ordinal)
            .ToUpperInvariant();
}

/// <summary>A type that stands for a kind of quantity, so that a length cannot be passed for a pressure.</summary>
public interface IQuantityKind
{
    /// <summary>Units and name of this kind.</summary>
    static abstract QuantityKind Kind { get; }
}
