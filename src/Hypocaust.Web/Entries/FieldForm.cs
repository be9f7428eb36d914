using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using Hypocaust.Quantities;

namespace Hypocaust.Web.Entries;

/// <summary>How the values of one type are shown in a field.</summary>
/// <param name="Example">How such a value is written.</param>
/// <param name="Choices">The values that it may have; empty where anything may be written.</param>
/// <param name="Text">The value as it stands in the file.</param>
/// <param name="IsAssumed">Whether it is a default that nobody wrote.</param>
internal sealed record FieldForm(
    string Example,
    ImmutableArray<Choice> Choices,
    Func<object, string> Text,
    Func<object, bool> IsAssumed
)
{
    private static readonly ConcurrentDictionary<Type, FieldForm?> Forms = new();

    /// <summary>The form of a type; null where the type is no single value.</summary>
    public static FieldForm? Of(Type type) => Forms.GetOrAdd(type, Make);

    /// <summary>Shows a value.</summary>
    public Field Field(string path, string label, string meaning, object? value) =>
        new(
            path,
            label,
            meaning,
            value is null ? "" : Text(value),
            value is not null && IsAssumed(value),
            Example,
            Choices
        );

    private static FieldForm? Make(Type type)
    {
        var inner = Nullable.GetUnderlyingType(type) ?? type;
        if (inner == typeof(string))
        {
            return Plain("", value => (string)value);
        }

        if (inner == typeof(int))
        {
            return Plain("1", value => ((int)value).ToString(CultureInfo.InvariantCulture));
        }

        if (inner == typeof(bool))
        {
            return new(
                "",
                [new("false", "no"), new("true", "yes")],
                value => (bool)value ? "true" : "false",
                _ => false
            );
        }

        return inner.IsEnum ? OfEnum(inner)
            : IsText(inner) ? OfText(inner)
            : null;
    }

    private static FieldForm Plain(string example, Func<object, string> text) =>
        new(example, [], text, _ => false);

    private static FieldForm OfEnum(Type type) =>
        new(
            "",
            [
                .. Enum.GetNames(type)
                    .Select(name => new Choice(
                        Words.InFile(name),
                        type == typeof(UnitSystem)
                            ? name.ToUpperInvariant()
                            : Words.Label(name).ToLowerInvariant()
                    )),
            ],
            value => Words.InFile(value.ToString()!),
            _ => false
        );

    private static FieldForm OfText(Type type)
    {
        var text = type.GetProperty("Text")!;
        var assumed = type.GetProperty("IsAssumed");
        var form = (TextForm)
            type.GetProperty("Form", BindingFlags.Public | BindingFlags.Static)!.GetValue(null)!;
        return new(
            form.Example,
            [],
            value => (string)text.GetValue(value)!,
            value => assumed is not null && (bool)assumed.GetValue(value)!
        );
    }

    private static bool IsText(Type type) =>
        type.GetInterfaces()
            .Any(face => face.IsGenericType && face.GetGenericTypeDefinition() == typeof(IText<>));
}
