using Hypocaust.Problems;

namespace Hypocaust.Quantities;

/// <summary>A measured value as a person wrote it, with its value in SI.</summary>
/// <typeparam name="TKind">What it measures.</typeparam>
public readonly record struct Quantity<TKind> : IText<Quantity<TKind>>, IQuantity
    where TKind : IQuantityKind
{
    private readonly string? written;

    private Quantity(double si, string? written, ValueRange? range, bool assumed)
    {
        Si = si;
        this.written = written;
        Range = range;
        IsAssumed = assumed;
    }

    /// <summary>The value in the SI unit of its kind (temperatures in °C); of a range, its middle.</summary>
    public double Si { get; }

    /// <summary>The range, where the person gave one (<c>8..12 W/mK</c>).</summary>
    public ValueRange? Range { get; }

    /// <summary>Whether it is a default that nobody wrote.</summary>
    public bool IsAssumed { get; }

    /// <summary>The text as written, or in SI where the value was computed.</summary>
    public string Text => written ?? QuantityText.Exact(Si, TKind.Kind.Si);

    /// <inheritdoc/>
    public QuantityKind Kind => TKind.Kind;

    /// <inheritdoc/>
    public static TextForm Form =>
        new(TKind.Kind.Name, TKind.Kind.Example, $"A number with its unit: {TKind.Kind.UnitList}.");

    /// <summary>Makes a quantity from a finite SI value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not a finite number.</exception>
    public static Quantity<TKind> FromSi(double si) =>
        double.IsFinite(si)
            ? new(si, null, null, assumed: false)
            : throw new ArgumentOutOfRangeException(
                nameof(si),
                si,
                "A quantity is a finite number."
            );

    /// <inheritdoc/>
    public static Result<Quantity<TKind>> Read(string text)
    {
        var read = QuantityText.Read(text, TKind.Kind);
        if (!read.TryGet(out var value))
        {
            return Result<Quantity<TKind>>.Failed(read.Problems);
        }

        var range = value.High is { } high ? new ValueRange(value.Low, high) : (ValueRange?)null;
        return new Quantity<TKind>(
            range is { } both ? (both.LowSi + both.HighSi) / 2 : value.Low,
            text,
            range,
            false
        );
    }

    /// <summary>The same value, marked as a default that nobody wrote.</summary>
    public Quantity<TKind> Assumed() => new(Si, written, Range, assumed: true);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>A measured value of whatever kind.</summary>
public interface IQuantity
{
    /// <summary>The value in the SI unit of its kind (temperatures in °C).</summary>
    double Si { get; }

    /// <summary>Whether it is a default that nobody wrote.</summary>
    bool IsAssumed { get; }

    /// <summary>The text as written.</summary>
    string Text { get; }

    /// <summary>What it measures.</summary>
    QuantityKind Kind { get; }
}

/// <summary>The ends of a range in SI.</summary>
/// <param name="LowSi">Lower end.</param>
/// <param name="HighSi">Upper end, not below the lower.</param>
public readonly record struct ValueRange(double LowSi, double HighSi);

/// <summary>A value that stands in a file as one string.</summary>
/// <typeparam name="TSelf">The type itself.</typeparam>
public interface IText<TSelf>
    where TSelf : IText<TSelf>
{
    /// <summary>How such a text looks, for the schema and for remedies.</summary>
    static abstract TextForm Form { get; }

    /// <summary>The text from which the value is read again.</summary>
    string Text { get; }

    /// <summary>Reads the text; problems have an empty place, which the caller fills in.</summary>
    static abstract Result<TSelf> Read(string text);
}

/// <summary>How a text value is written.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Example">One that is right.</param>
/// <param name="Meaning">A sentence on the form.</param>
public sealed record TextForm(string Name, string Example, string Meaning);
