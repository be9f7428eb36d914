using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Relief;

/// <summary>A closed circuit with a heater needs a safety relief valve.</summary>
public sealed class ReliefValveMissing()
    : ReviewRule(
        new()
        {
            Id = "relief-valve-missing",
            Title = "There is no relief valve",
            Severity = Severity.Danger,
            Why =
                "Water that is heated in a closed circuit grows; if its pressure cannot escape, a pipe or the heater bursts and scalds.",
            LooksAt = "Whether a plant with a heater has a relief valve.",
            Source = "EN 12828:2012, 4.6.2 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        if (graph.ItemsOf<HeaterPart>().Any() && !graph.ItemsOf<ReliefPart>().Any())
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "The plant has a heater but no relief valve.",
                "Put a relief valve on a tee right at the heater's outlet, set below the weakest part, with a discharge pipe that ends where nobody can be scalded."
            );
        }
    }
}
