using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Antifreeze;

/// <summary>Ice bursts pipes.</summary>
public sealed class FluidFreezes()
    : ReviewRule(
        new()
        {
            Id = "fluid-freezes",
            Title = "The fluid freezes in the coldest place",
            Severity = Severity.Danger,
            Why =
                "Freezing water bursts pipes, heater and circulators, and the damage shows when it thaws.",
            LooksAt =
                "Freezing point of the fluid against the coldest place in which any part stands while the heating is off.",
            Source = "freezing points: ASHRAE Handbook Fundamentals 2001",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var freezes = subject.Plant!.Fluid.FreezingPointC;
        if (subject.Design.Plant!.ColdestPlace?.Si is not { } coldest || coldest >= freezes)
        {
            yield break;
        }

        yield return Find(
            DesignPlaces.Plant("coldestPlace"),
            $"The coldest place gets {subject.Show(coldest, Shown.Temperature)}; {subject.Plant.Fluid.Name} begins to freeze at {subject.Show(freezes, Shown.Temperature)}.",
            "Add propylene glycol until it freezes a few degrees below that, or keep every part where it never freezes."
        );
    }
}
