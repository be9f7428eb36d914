using System.Collections.Immutable;
using Hypocaust.Quantities;

namespace Hypocaust.Verdicts;

/// <summary>Builds a verdict piece by piece.</summary>
/// <param name="units">Units of the reader.</param>
internal sealed class VerdictWriter(UnitSystem units)
{
    private readonly ImmutableArray<Phrase>.Builder phrases =
        ImmutableArray.CreateBuilder<Phrase>();

    public VerdictWriter Say(string words)
    {
        phrases.Add(new Phrase(words));
        return this;
    }

    public VerdictWriter Number(double si, Shown shown, string path)
    {
        phrases.Add(new Phrase(shown.Format(si, units), path));
        return this;
    }

    public Verdict Done() => new(phrases.ToImmutable());
}
