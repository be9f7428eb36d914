using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>The gas must yield to the cold filling, or the vessel is empty when cold.</summary>
public sealed class PrechargeTooHigh()
    : ReviewRule(
        new()
        {
            Id = "precharge-too-high",
            Title = "The expansion vessel is empty when the system is cold",
            Severity = Severity.Poor,
            Why =
                "When the water cools and shrinks, the vessel has none to give back; the pressure falls below atmosphere and air is drawn in.",
            LooksAt =
                "Precharge against the cold filling pressure: at or above it is too high; and against the relief setting.",
            Source = "EN 12828:2012, annex D (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var fill = subject.Plant!.Fill;
        if (fill.PrechargePa is not { } precharge || precharge < fill.ColdPa)
        {
            yield break;
        }

        var vessel = subject.Graph!.ItemsOf<Design.VesselPart>().First();
        yield return Find(
            DesignPlaces.Item(vessel.Name, "precharge"),
            $"The gas in \"{vessel.Name}\" has {subject.Show(precharge, Shown.Gauge)}, the cold system {subject.Show(fill.ColdPa, Shown.Gauge)}.",
            $"Let gas out until it is {subject.Show(0.3e5, Shown.Gauge)} below the filling pressure, or fill to a higher pressure."
        );
    }
}
