using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Water does not circulate by itself.</summary>
public sealed class CirculatorMissing()
    : ReviewRule(
        new()
        {
            Id = "circulator-missing",
            Title = "There is no circulator",
            Severity = Severity.WillNotWork,
            Why = "Without a circulator hardly any water passes the heater and the floor.",
            LooksAt = "Whether a plant with a heater has a circulator.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        if (graph.ItemsOf<HeaterPart>().Any() && !graph.ItemsOf<CirculatorPart>().Any())
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "The plant has a heater but no circulator.",
                "Put a circulator in the supply, just behind the tee of the expansion vessel, with a shut-off valve on either side."
            );
        }
    }
}
