using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Hypocaust.Quantities;

namespace Hypocaust.Design.Shapes;

/// <summary>Finds the shape of a type by looking at its declaration, once.</summary>
internal sealed class ShapeBook
{
    private readonly ConcurrentDictionary<Type, ValueShape> known = new();
    private readonly NullabilityInfoContext nullability = new();
    private readonly bool isForAnswers;

    private ShapeBook(bool isForAnswers) => this.isForAnswers = isForAnswers;

    /// <summary>Shapes of what people write: the constructor's parameters, with defaults.</summary>
    public static ShapeBook Designs { get; } = new(isForAnswers: false);

    /// <summary>Shapes of what we compute: every public property, as System.Text.Json writes it.</summary>
    public static ShapeBook Answers { get; } = new(isForAnswers: true);

    /// <summary>The shape of a record type.</summary>
    public RecordShape Record<T>() => (RecordShape)Of(typeof(T));

    /// <summary>The shape of any type that a file may hold.</summary>
    /// <exception cref="InvalidOperationException">A file cannot hold it: a wrong declaration.</exception>
    public ValueShape Of(Type type)
    {
        if (known.TryGetValue(type, out var shape))
        {
            return shape;
        }

        return known[type] = Make(type);
    }

    private ValueShape Make(Type type)
    {
        if (Nullable.GetUnderlyingType(type) is { } inner)
        {
            return Of(inner);
        }

        return Simple(type)
            ?? Generic(type)
            ?? (
                type.IsAbstract ? Family(type)
                : type.IsClass || type.IsValueType ? Record(type, kind: null)
                : throw new InvalidOperationException($"No file holds a {type}.")
            );
    }

    private static ValueShape? Simple(Type type) =>
        type == typeof(string) ? new StringShape()
        : type == typeof(bool) ? new BoolShape()
        : type == typeof(int) || type == typeof(long) ? new IntShape()
        : type == typeof(double) ? new NumberShape()
        : type == typeof(JsonObject) ? new VerbatimShape()
        : type.IsEnum ? new EnumShape(type)
        : null;

    private ValueShape? Generic(Type type)
    {
        var definition = type.IsGenericType ? type.GetGenericTypeDefinition() : null;
        if (definition == typeof(Quantity<>))
        {
            return Create(typeof(QuantityShape<>), type.GenericTypeArguments[0]);
        }

        if (definition == typeof(Named<>))
        {
            var item = type.GenericTypeArguments[0];
            return Create(typeof(NamedShape<>), item, Of(item));
        }

        if (isForAnswers && ValueOfMap(type) is { } mapped)
        {
            return Create(typeof(NamedShape<>), mapped, Of(mapped));
        }

        if (ItemOf(type) is { } listed)
        {
            return Create(typeof(ListShape<>), listed, Of(listed));
        }

        var isText = type.GetInterfaces()
            .Any(one => one.IsGenericType && one.GetGenericTypeDefinition() == typeof(IText<>));
        return isText ? Create(typeof(TextShape<>), type) : null;
    }

    // In answers a dictionary is an object with a member for each name
    private static Type? ValueOfMap(Type type) =>
        type.GetInterfaces()
            .Prepend(type)
            .FirstOrDefault(one =>
                one.IsGenericType
                && one.GetGenericTypeDefinition() == typeof(IReadOnlyDictionary<,>)
                && one.GenericTypeArguments[0] == typeof(string)
            )
            ?.GenericTypeArguments[1];

    // In answers any list will do; in designs only the immutable one
    private Type? ItemOf(Type type)
    {
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>))
        {
            return type.GenericTypeArguments[0];
        }

        return isForAnswers
            ? type.GetInterfaces()
                .Prepend(type)
                .FirstOrDefault(one =>
                    one.IsGenericType && one.GetGenericTypeDefinition() == typeof(IEnumerable<>)
                )
                ?.GenericTypeArguments[0]
            : null;
    }

    private static ValueShape Create(Type shape, Type argument, params object[] with) =>
        (ValueShape)Activator.CreateInstance(shape.MakeGenericType(argument), with)!;

    private FamilyShape Family(Type type) =>
        new(
            type,
            [
                .. type
                    .Assembly.GetTypes()
                    .Where(one => one.BaseType == type && !one.IsAbstract)
                    .OrderBy(one => one.MetadataToken)
                    .Select(one =>
                        Record(one, one.GetCustomAttribute<KindAttribute>()?.Name ?? one.Name)
                    ),
            ]
        );

    private RecordShape Record(Type type, string? kind) =>
        new(type, kind, [.. isForAnswers ? Written(type) : Parameters(type)]);

    private IEnumerable<PropertyShape> Parameters(Type type) =>
        type.GetConstructors()[0].GetParameters().Select(Parameter);

    private PropertyShape Parameter(ParameterInfo parameter)
    {
        var type = parameter.ParameterType;
        var shape = Of(type);
        var defaultText = parameter.GetCustomAttribute<DefaultAttribute>()?.Text;
        var isOptional =
            defaultText is not null
            || (
                parameter.HasDefaultValue
                && !(type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Quantity<>))
            );
        return new PropertyShape(
            CamelCase(parameter.Name!),
            shape,
            !isOptional,
            MayBeNull: false,
            parameter.GetCustomAttribute<MeaningAttribute>()?.Text ?? "",
            defaultText,
            parameter.GetCustomAttribute<WithinAttribute>(),
            isOptional ? Missing(parameter, shape, defaultText) : null
        );
    }

    private static object? Missing(ParameterInfo parameter, ValueShape shape, string? defaultText)
    {
        var type = parameter.ParameterType;
        return defaultText is not null ? shape.ReadDefault(defaultText)
            : type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>)
                ? shape.StandIn
            : type.IsEnum ? Enum.ToObject(type, parameter.DefaultValue!)
            : parameter.DefaultValue;
    }

    private IEnumerable<PropertyShape> Written(Type type)
    {
        var meanings = type.GetConstructors()
            .SelectMany(constructor => constructor.GetParameters())
            .DistinctBy(parameter => parameter.Name)
            .ToDictionary(
                parameter => parameter.Name!,
                parameter => parameter.GetCustomAttribute<MeaningAttribute>()?.Text,
                StringComparer.OrdinalIgnoreCase
            );
        return type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property =>
                property.GetIndexParameters().Length == 0
                && property.GetCustomAttribute<JsonIgnoreAttribute>()
                    is null
                        or { Condition: not JsonIgnoreCondition.Always }
            )
            .Select(property => new PropertyShape(
                property.GetCustomAttribute<JsonPropertyNameAttribute>()?.Name
                    ?? CamelCase(property.Name),
                Of(property.PropertyType),
                IsRequired: true,
                MayBeNull(property),
                property.GetCustomAttribute<MeaningAttribute>()?.Text
                    ?? meanings.GetValueOrDefault(property.Name)
                    ?? "",
                DefaultText: null,
                Within: null,
                Missing: null
            ));
    }

    private bool MayBeNull(PropertyInfo property)
    {
        lock (nullability)
        {
            return nullability.Create(property).ReadState == NullabilityState.Nullable;
        }
    }

    private static string CamelCase(string name) => JsonNamingPolicy.CamelCase.ConvertName(name);
}
