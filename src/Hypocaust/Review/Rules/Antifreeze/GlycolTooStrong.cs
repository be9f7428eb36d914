using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Antifreeze;

/// <summary>More glycol than needed carries less heat.</summary>
public sealed class GlycolTooStrong()
    : ReviewRule(
        new()
        {
            Id = "glycol-too-strong",
            Title = "The antifreeze is stronger than any climate here needs",
            Severity = Severity.Note,
            Why =
                "Strong glycol is thick, carries less heat and costs money; above about 60 % it freezes sooner again.",
            LooksAt =
                "Share of glycol by volume above 50 %, and a freezing point more than 15 K below the coldest place.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    private const double Strong = 0.5;
    private const double EnoughK = 15;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var fluid = subject.Design.Plant!.Fluid;
        var freezes = subject.Plant!.Fluid.FreezingPointC;
        var coldest = subject.Design.Plant.ColdestPlace?.Si ?? subject.Design.Site.DesignOutdoor.Si;
        if (
            fluid.Kind != FluidKind.Water
            && (fluid.Share.Si > Strong || freezes < coldest - EnoughK)
        )
        {
            yield return Find(
                DesignPlaces.Plant("fluid"),
                $"{subject.Show(fluid.Share.Si, Shown.Share)} glycol freezes at {subject.Show(freezes, Shown.Temperature)}; the coldest place gets {subject.Show(coldest, Shown.Temperature)}.",
                "Mix it so that it freezes a few degrees below the coldest place."
            );
        }
    }
}
