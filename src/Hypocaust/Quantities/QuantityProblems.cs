using Hypocaust.Problems;

namespace Hypocaust.Quantities;

/// <summary>Every message of this module, made by name. The place is empty: whoever knows it fills it in.</summary>
internal static class QuantityProblems
{
    public static Problem NotAQuantity(string text, QuantityKind kind) =>
        new(
            "not-a-quantity",
            "",
            $"\"{Short(text)}\" is not {kind.NameWithArticle}",
            $"write it like \"{kind.Example}\""
        );

    public static Problem NoUnit(string text, QuantityKind kind) =>
        new(
            "no-unit",
            "",
            $"\"{Short(text)}\" is a number without a unit",
            $"write it like \"{kind.Example}\" (units: {kind.UnitList})"
        );

    public static Problem UnknownUnit(string text, string unit, QuantityKind kind) =>
        AllKinds.Find(unit) is { } other && other != kind
            ? new(
                "wrong-dimension",
                "",
                $"\"{Short(text)}\" is {other.NameWithArticle}, but {kind.NameWithArticle} belongs here",
                $"write it like \"{kind.Example}\" (units: {kind.UnitList})"
            )
            : new(
                "unknown-unit",
                "",
                $"the unit \"{Short(unit)}\" is not known for {kind.NameWithArticle}",
                $"use one of {kind.UnitList}, like \"{kind.Example}\""
            );

    public static Problem CommaInNumber(string text, QuantityKind kind) =>
        new(
            "comma-in-number",
            "",
            $"\"{Short(text)}\" has a comma in the number, which people read in two ways",
            $"use a point for decimals and nothing for thousands, like \"{kind.Example}\""
        );

    public static Problem NotFinite(string text, QuantityKind kind) =>
        new(
            "not-finite",
            "",
            $"\"{Short(text)}\" is too large to compute with",
            $"write an ordinary {kind.Name}, like \"{kind.Example}\""
        );

    public static Problem RangeUpsideDown(string text, QuantityKind kind) =>
        new(
            "range-upside-down",
            "",
            $"the range \"{Short(text)}\" starts above its end",
            $"write the smaller {kind.Name} first"
        );

    private static string Short(string text) => text.Length > 40 ? text[..40] + "…" : text;
}
