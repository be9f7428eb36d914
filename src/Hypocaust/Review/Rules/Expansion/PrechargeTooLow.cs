using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>A soft vessel takes its water at filling and has no room left when it counts.</summary>
public sealed class PrechargeTooLow()
    : ReviewRule(
        new()
        {
            Id = "precharge-too-low",
            Title = "The expansion vessel has too little gas",
            Severity = Severity.Poor,
            Why =
                "A soft cushion fills with water already at filling, and little room is left for the growth.",
            LooksAt =
                "Precharge against the weight of the water above the vessel and 0.3 bar, at least 0.7 bar.",
            Source = "EN 12828:2012, annex D (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(ColdFillTooLow)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var columnPa = ColdFillTooLow.ColumnPa(subject);
        var least = VesselSizing.LeastPrechargePa(columnPa);
        return subject
            .Graph!.ItemsOf<VesselPart>()
            .Where(vessel => vessel.Item.Precharge is { } gas && gas.Si < least)
            .Select(vessel =>
                Find(
                    DesignPlaces.Item(vessel.Name, "precharge"),
                    $"The gas in \"{vessel.Name}\" has {subject.Show(vessel.Item.Precharge!.Value.Si, Shown.Gauge)}; this plant needs {subject.Show(least, Shown.Gauge)}.",
                    $"Pump it to {subject.Show(least, Shown.Gauge)} before filling, and fill to {subject.Show(0.3e5, Shown.Gauge)} above that."
                )
            );
    }
}
