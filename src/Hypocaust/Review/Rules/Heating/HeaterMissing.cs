using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Heating;

/// <summary>A plant without a heater warms nothing.</summary>
public sealed class HeaterMissing()
    : ReviewRule(
        new()
        {
            Id = "heater-missing",
            Title = "There is no heater",
            Severity = Severity.WillNotWork,
            Why = "Nothing warms the water.",
            LooksAt = "Whether the plant has a heater.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        if (!subject.Graph!.ItemsOf<HeaterPart>().Any())
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "The plant has no heater.",
                "Add a heater with its set point to the items and write it in a run."
            );
        }
    }
}
