using System.Collections;
using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Hypocaust.Why;

/// <summary>Reads a number of an answer by its path, for example <c>floor.loops[2].running.heatUpW</c>.</summary>
public static partial class AnswerPath
{
    /// <summary>The number at a path; null where there is none.</summary>
    /// <param name="root">The answer.</param>
    /// <param name="path">The path, as in the JSON of the answer.</param>
    public static double? Read(object root, string path)
    {
        object? at = root;
        foreach (Match step in Step().Matches(path))
        {
            at = step.Groups["index"].Success
                ? Item(at, step.Groups["index"].Value)
                : Member(at, step.Value);
            if (at is null)
            {
                return null;
            }
        }

        return at switch
        {
            double number => number,
            int count => count,
            _ => null,
        };
    }

    /// <summary>The path with its indices taken out (<c>floor.loops[*].running.heatUpW</c>), and the indices.</summary>
    public static (string Pattern, ImmutableArray<int> Indices) Split(string path) =>
        (
            Index().Replace(path, "[*]"),
            [
                .. Index()
                    .Matches(path)
                    .Select(match =>
                        int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture)
                    ),
            ]
        );

    /// <summary>All numbers of an answer with their paths.</summary>
    public static IEnumerable<(string Path, double Value)> Numbers(object root) =>
        Numbers(root, "");

    private static IEnumerable<(string, double)> Numbers(object? value, string path)
    {
        switch (value)
        {
            case null or string or bool or Enum:
                yield break;
            case double number:
                yield return (path, number);
                yield break;
            case int count:
                yield return (path, count);
                yield break;
            case IEnumerable list:
                foreach (
                    var number in list.Cast<object?>()
                        .SelectMany((item, i) => Numbers(item, $"{path}[{i}]"))
                )
                {
                    yield return number;
                }

                yield break;
        }

        foreach (var property in Properties(value.GetType()))
        {
            var name = JsonNamingPolicy.CamelCase.ConvertName(property.Name);
            foreach (
                var number in Numbers(
                    property.GetValue(value),
                    path.Length == 0 ? name : $"{path}.{name}"
                )
            )
            {
                yield return number;
            }
        }
    }

    private static IEnumerable<PropertyInfo> Properties(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property =>
                property.GetIndexParameters().Length == 0 && property.Name != "EqualityContract"
            );

    private static object? Member(object? owner, string name) =>
        owner is null
            ? null
            : Properties(owner.GetType())
                .FirstOrDefault(property =>
                    JsonNamingPolicy.CamelCase.ConvertName(property.Name) == name
                )
                ?.GetValue(owner);

    private static object? Item(object? list, string index) =>
        list is IList items
        && int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var i)
        && i < items.Count
            ? items[i]
            : null;

    [GeneratedRegex(@"\[(?<index>\d+)\]|[^.\[\]]+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Step();

    [GeneratedRegex(@"\[(?<index>\d+)\]", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Index();
}
