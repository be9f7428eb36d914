using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>A closed circuit needs room for the water to grow.</summary>
public sealed class ExpansionVesselMissing()
    : ReviewRule(
        new()
        {
            Id = "expansion-vessel-missing",
            Title = "There is no expansion vessel",
            Severity = Severity.Danger,
            Why =
                "Warm water needs more room; without a gas cushion the pressure shoots up at each heating until the relief valve opens or something bursts.",
            LooksAt = "Whether a plant with a heater has an expansion vessel.",
            Source = "EN 12828:2012, 4.6.3 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        if (!graph.ItemsOf<HeaterPart>().Any() || graph.ItemsOf<VesselPart>().Any())
        {
            yield break;
        }

        var grows = subject.Plant is { } plant
            ? $" Its {subject.Show(plant.Fill.VolumeM3, Shown.Volume)} grow by {subject.Show(plant.Fill.ExpansionM3, Shown.Volume)} when warm."
            : "";
        yield return Find(
            DesignPlaces.Plant("items"),
            $"The plant has a heater but no expansion vessel.{grows}",
            "Put a diaphragm vessel on a tee just before the inlet of the circulator, with no valve between it and the heater."
        );
    }
}
