using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace Hypocaust.Design;

/// <summary>Things by name, in the order in which they were written.</summary>
/// <typeparam name="T">What is named.</typeparam>
public sealed class Named<T> : IReadOnlyList<KeyValuePair<string, T>>
    where T : notnull
{
    private readonly KeyValuePair<string, T>[] ordered;
    private readonly Dictionary<string, T> byName;

    /// <summary>Collects things; a name stands for one thing.</summary>
    /// <exception cref="ArgumentException">A name comes twice.</exception>
    public Named(IEnumerable<KeyValuePair<string, T>> entries)
    {
        ordered = [.. entries];
        byName = new Dictionary<string, T>(ordered, StringComparer.Ordinal);
    }

    /// <summary>Nothing.</summary>
    public static Named<T> Empty { get; } = new([]);

    /// <summary>The names in order.</summary>
    public IEnumerable<string> Names => ordered.Select(entry => entry.Key);

    /// <inheritdoc/>
    public int Count => ordered.Length;

    /// <inheritdoc/>
    public KeyValuePair<string, T> this[int index] => ordered[index];

    /// <summary>The thing of a name.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public T this[string name] => byName[name];

    /// <summary>Looks a name up.</summary>
    public bool TryGet(string name, [MaybeNullWhen(false)] out T found) =>
        byName.TryGetValue(name, out found);

    /// <summary>Whether a name is there.</summary>
    public bool Has(string name) => byName.ContainsKey(name);

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() =>
        ((IEnumerable<KeyValuePair<string, T>>)ordered).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
