using System.Collections;
using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using Hypocaust.Design;

namespace Hypocaust.Web.Entries;

/// <summary>All values of a design as fields, made from the shape of the design's records: what the records hold, the page can edit.</summary>
public sealed class FieldTree
{
    /// <summary>Stands for the design's own fields among the names of sections.</summary>
    public const string Itself = "$";

    private static readonly ConcurrentDictionary<Type, ImmutableArray<Member>> Shapes = new();
    private readonly FrozenDictionary<string, Field> byPath;

    private FieldTree(FieldGroup root)
    {
        Root = root;
        byPath = root.All().ToFrozenDictionary(field => field.Path, StringComparer.Ordinal);
    }

    /// <summary>The design as a whole.</summary>
    public FieldGroup Root { get; }

    /// <summary>Makes the fields of a design.</summary>
    public static FieldTree Of(HeatingDesign design) =>
        new(Group(Itself, "Design", MeaningOf(typeof(HeatingDesign)), design));

    /// <summary>The field of a path, or null where the design has no such value.</summary>
    public Field? At(string path) => byPath.GetValueOrDefault(path);

    /// <summary>The group of a section (<c>building</c>; <see cref="Itself"/> for the design's own name and units), or null where the design has none.</summary>
    public FieldGroup? Section(string name) =>
        name == Itself
            ? Root with
            {
                Groups = [],
            }
            : Root.Groups.FirstOrDefault(group => group.Path == DesignPath.Member("$", name));

    /// <summary>A value or thing in words, from the outermost name to its own: <c>floor pump, speed</c>; the path itself where the design has no such thing.</summary>
    public string NameOf(string path)
    {
        // The section is known from the page, unless it is meant itself
        var section = Root.Groups.FirstOrDefault(group => group.Holds(path));
        var words = Named(section is null || section.Path == path ? Root : section, path);
        return string.Join(", ", words) is { Length: > 0 } name ? name : path;
    }

    private static IEnumerable<string> Named(FieldGroup group, string path)
    {
        if (group.Fields.FirstOrDefault(field => field.Path == path) is { } own)
        {
            return [own.Label.ToLowerInvariant()];
        }

        return group.Groups.FirstOrDefault(inner => inner.Holds(path)) is { } next
            ? Named(next, path) is var inner && IsMerelyAList(next) && next.Path != path
                ? inner
                : inner.Prepend(next.Label)
            : [];
    }

    // "items", "zones": what is in them has names of its own
    private static bool IsMerelyAList(FieldGroup group) => group.Fields.IsEmpty;

    private static FieldGroup Group(string path, string label, string meaning, object thing)
    {
        var fields = ImmutableArray.CreateBuilder<Field>();
        var groups = ImmutableArray.CreateBuilder<FieldGroup>();
        foreach (var member in Shapes.GetOrAdd(thing.GetType(), ShapeOf))
        {
            var memberPath = DesignPath.Member(path, Words.InFile(member.Name));
            var value = member.Property.GetValue(thing);
            if (member.Form is { } form)
            {
                fields.Add(form.Field(memberPath, member.Label, member.Meaning, value));
            }
            else if (value is not null)
            {
                groups.AddRange(Within(memberPath, member, value));
            }
        }

        return new(path, label, meaning, fields.ToImmutable(), groups.ToImmutable());
    }

    private static IEnumerable<FieldGroup> Within(string path, Member member, object value)
    {
        if (value is not IEnumerable items)
        {
            yield return Group(path, member.Label, member.Meaning, value);
        }
        else if (
            Listed(path, items) is { Fields: var fields, Groups: var groups }
            && fields.Length + groups.Length > 0
        )
        {
            yield return new(path, member.Label, member.Meaning, fields, groups);
        }
    }

    private static (ImmutableArray<Field> Fields, ImmutableArray<FieldGroup> Groups) Listed(
        string path,
        IEnumerable items
    )
    {
        var fields = ImmutableArray.CreateBuilder<Field>();
        var groups = ImmutableArray.CreateBuilder<FieldGroup>();
        var index = 0;
        foreach (var item in items)
        {
            var (itemPath, name, value) = Entry(path, index++, item);
            if (FieldForm.Of(value.GetType()) is { } form)
            {
                fields.Add(form.Field(itemPath, name, "", value));
            }
            else
            {
                groups.Add(Group(itemPath, name, MeaningOf(value.GetType()), value));
            }
        }

        return (fields.ToImmutable(), groups.ToImmutable());
    }

    // An item of a list is known by its number and, where it has one, its name; a named thing by its name
    private static (string Path, string Name, object Value) Entry(
        string path,
        int index,
        object item
    )
    {
        var type = item.GetType();
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(KeyValuePair<,>))
        {
            var key = (string)type.GetProperty("Key")!.GetValue(item)!;
            return (DesignPath.Member(path, key), key, type.GetProperty("Value")!.GetValue(item)!);
        }

        var number = (index + 1).ToString(CultureInfo.InvariantCulture);
        var name = type.GetProperty("Name")?.GetValue(item) as string;
        return (DesignPath.Item(path, index), name is null ? number : $"{number} {name}", item);
    }

    private static ImmutableArray<Member> ShapeOf(Type type) =>
        [
            .. type.GetConstructors()
                .MaxBy(constructor => constructor.GetParameters().Length)!
                .GetParameters()
                .Select(parameter => Member.Of(type, parameter))
                .OfType<Member>(),
        ];

    private static string MeaningOf(MemberInfo type) =>
        type.GetCustomAttribute<MeaningAttribute>()?.Text ?? "";

    private sealed record Member(
        string Name,
        string Label,
        string Meaning,
        PropertyInfo Property,
        FieldForm? Form
    )
    {
        // A parameter without a meaning, or one that is kept as it is, is nothing to edit
        public static Member? Of(Type owner, ParameterInfo parameter)
        {
            var meaning = parameter.GetCustomAttribute<MeaningAttribute>()?.Text;
            var isReserved = parameter.ParameterType == typeof(System.Text.Json.Nodes.JsonObject);
            return meaning is null || isReserved
                ? null
                : new(
                    parameter.Name!,
                    Words.Label(parameter.Name!),
                    meaning,
                    owner.GetProperty(parameter.Name!)!,
                    FieldForm.Of(parameter.ParameterType)
                );
        }
    }
}
