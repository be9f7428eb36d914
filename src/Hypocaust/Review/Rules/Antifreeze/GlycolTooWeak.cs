using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Antifreeze;

/// <summary>Weak glycol feeds bacteria and corrodes.</summary>
public sealed class GlycolTooWeak()
    : ReviewRule(
        new()
        {
            Id = "glycol-too-weak",
            Title = "The antifreeze is too weak",
            Severity = Severity.Poor,
            Why =
                "Below about a fifth the inhibitors are too thin: the mix corrodes metal and bacteria live in it.",
            LooksAt =
                "Share of glycol by volume: below 20 % is poor, below 25 % worth a note; a kind of glycol with a share of 0 is poor.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    private const double Scarce = 0.2;
    private const double Enough = 0.25;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var fluid = subject.Design.Plant!.Fluid;
        if (fluid.Kind != FluidKind.Water && fluid.Share.Si < Enough)
        {
            yield return Find(
                DesignPlaces.Plant("fluid"),
                $"The mix holds {subject.Show(fluid.Share.Si, Shown.Share)} glycol by volume.",
                $"Mix it to {subject.Show(Enough, Shown.Share)} or more, or use plain water where nothing can freeze.",
                fluid.Share.Si < Scarce ? null : Severity.Note
            );
        }
    }
}
