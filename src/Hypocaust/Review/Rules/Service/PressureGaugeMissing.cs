using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Without a gauge nobody sees that water is lost.</summary>
public sealed class PressureGaugeMissing()
    : ReviewRule(
        new()
        {
            Id = "pressure-gauge-missing",
            Title = "There is no pressure gauge",
            Severity = Severity.Poor,
            Why = "Filling, testing and finding a leak all need the pressure.",
            LooksAt = "Whether a plant with a heater has a pressure gauge.",
            Source = "EN 12828:2012, 4.6 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        if (graph.ItemsOf<HeaterPart>().Any() && !graph.Tappings(TappingFunction.Gauge).Any())
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "The plant has no pressure gauge.",
                "Put a gauge on a tee beside the expansion vessel where you can read it while filling."
            );
        }
    }
}
