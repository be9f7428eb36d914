using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Antifreeze;

/// <summary>Ethylene glycol kills.</summary>
public sealed class EthyleneGlycolIsPoisonous()
    : ReviewRule(
        new()
        {
            Id = "ethylene-glycol-is-poisonous",
            Title = "The antifreeze is poisonous",
            Severity = Severity.Poor,
            Why =
                "A mouthful of ethylene glycol kills, it tastes sweet to children and animals, and a leak or a filling hose can carry it into drinking water.",
            LooksAt = "Whether the fluid is ethylene glycol.",
            Source = "backflow protection: EN 1717 (from memory); toxicity: common knowledge",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var fluid = subject.Design.Plant!.Fluid;
        if (fluid.Kind == FluidKind.EthyleneGlycol)
        {
            yield return Find(
                DesignPlaces.Plant("fluid"),
                $"The plant is filled with {subject.Show(fluid.Share.Si, Shown.Share)} ethylene glycol.",
                "Use propylene glycol made for heating systems, never the automotive kind; keep a backflow preventer or an air gap between it and drinking water, and label the fill valve."
            );
        }
    }
}
