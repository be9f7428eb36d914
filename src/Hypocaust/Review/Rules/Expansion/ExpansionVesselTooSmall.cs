using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>The vessel must take the growth of the water and a reserve.</summary>
public sealed class ExpansionVesselTooSmall()
    : ReviewRule(
        new()
        {
            Id = "expansion-vessel-too-small",
            Title = "The expansion vessel is too small",
            Severity = Severity.WillNotWork,
            Why =
                "A vessel that fills up lets the pressure rise to the relief valve, which then drips at each heating until the system is short of water.",
            LooksAt =
                "The vessels' volumes together against what growth and reserve need between precharge and relief setting.",
            Source = "EN 12828:2012, annex D (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(PrechargeTooHigh)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var fill = subject.Plant!.Fill;
        var vessels = subject.Graph!.Parts<VesselPart>().ToList();
        var has = vessels.Sum(vessel => vessel.Part.Size.Si);
        if (fill.VesselNeededM3 is not { } needed || vessels.Count == 0 || has >= needed)
        {
            yield break;
        }

        yield return Find(
            DesignPlaces.Item(vessels[0].Placed.Name, "part"),
            $"The vessel has {subject.Show(has, Shown.Volume)}, but {subject.Show(fill.VolumeM3, Shown.Volume)} of water growing by {subject.Show(fill.ExpansionM3, Shown.Volume)} up to {subject.Show(fill.WarmestC, Shown.Temperature)} need {subject.Show(needed, Shown.Volume)}.",
            $"Take a vessel of {subject.Show(needed, Shown.Volume)} or more, or put a second one beside it."
        );
    }
}
