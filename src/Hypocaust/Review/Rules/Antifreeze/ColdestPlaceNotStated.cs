using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Antifreeze;

/// <summary>Whether it can freeze depends on where the pipes are.</summary>
public sealed class ColdestPlaceNotStated()
    : ReviewRule(
        new()
        {
            Id = "coldest-place-not-stated",
            Title = "Nobody has said how cold the pipes can get",
            Severity = Severity.Note,
            Why = "Where a power cut or a holiday lets the pipes freeze, plain water bursts them.",
            LooksAt =
                "Whether the coldest place is written where the design day is below the fluid's freezing point.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var freezes = subject.Plant!.Fluid.FreezingPointC;
        var outdoor = subject.Design.Site.DesignOutdoor.Si;
        if (subject.Design.Plant!.ColdestPlace is null && outdoor < 0 && outdoor < freezes)
        {
            yield return Find(
                DesignPlaces.Plant("coldestPlace"),
                $"Outside it gets {subject.Show(outdoor, Shown.Temperature)}, and {subject.Plant.Fluid.Name} freezes at {subject.Show(freezes, Shown.Temperature)}; the design does not say how cold the coldest pipe gets with the heating off.",
                "Write \"coldestPlace\": the temperature of the coldest place with pipe in it after a power cut of a day."
            );
        }
    }
}
