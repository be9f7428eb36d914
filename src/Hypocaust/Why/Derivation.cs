using System.Collections.Immutable;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>How a number came about: what the explanation shows, and the formula as code so that a test can hold the words to it.</summary>
internal sealed record Derivation(string Title, Shown Shown, string Formula, string Source)
{
    public ImmutableArray<ExplainedInput> Inputs { get; init; } = [];

    public string Remark { get; init; } = "";

    /// <summary>Evaluates the formula from the inputs; null where the number is one of many unknowns solved together, or given.</summary>
    public Func<IReadOnlyList<double>, double>? Compute { get; init; }

    public Derivation With(string symbol, string meaning, double? value, Shown shown) =>
        value is { } known
            ? this with
            {
                Inputs = Inputs.Add(new ExplainedInput(symbol, meaning, known, shown)),
            }
            : this;

    public Derivation Computed(Func<IReadOnlyList<double>, double> compute) =>
        this with
        {
            Compute = compute,
        };

    public Derivation Noting(string remark) => this with { Remark = remark };

    /// <summary>A value that the person gave.</summary>
    public static Derivation Given(string title, Shown shown) =>
        new(title, shown, "as written in the design, or assumed there", "your design");
}
