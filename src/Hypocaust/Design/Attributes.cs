namespace Hypocaust.Design;

/// <summary>What a value of the design file means, in one sentence: shown in the schema, in remedies and beside the field on a page.</summary>
/// <param name="text">The sentence.</param>
[AttributeUsage(AttributeTargets.Parameter | AttributeTargets.Class | AttributeTargets.Property)]
public sealed class MeaningAttribute(string text) : Attribute
{
    /// <summary>The sentence.</summary>
    public string Text { get; } = text;
}

/// <summary>The value assumed where the file has none, written as a person would; pages mark it as a default.</summary>
/// <param name="text">The value as text.</param>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class DefaultAttribute(string text) : Attribute
{
    /// <summary>The value as text.</summary>
    public string Text { get; } = text;
}

/// <summary>The values that make physical sense, both ends included, in SI.</summary>
/// <param name="low">Smallest.</param>
/// <param name="high">Largest.</param>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class WithinAttribute(double low, double high) : Attribute
{
    /// <summary>Smallest.</summary>
    public double Low { get; } = low;

    /// <summary>Largest.</summary>
    public double High { get; } = high;
}

/// <summary>Names a record in a family that is told apart by its <c>kind</c>.</summary>
/// <param name="name">The value of <c>kind</c>.</param>
[AttributeUsage(AttributeTargets.Class)]
public sealed class KindAttribute(string name) : Attribute
{
    /// <summary>The value of <c>kind</c>.</summary>
    public string Name { get; } = name;
}
