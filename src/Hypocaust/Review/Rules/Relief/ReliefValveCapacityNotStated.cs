using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Relief;

/// <summary>The label of a relief valve says how much heat it lets off; the design should too.</summary>
public sealed class ReliefValveCapacityNotStated()
    : ReviewRule(
        new()
        {
            Id = "relief-valve-capacity-not-stated",
            Title = "Nobody has said how much heat the relief valve lets off",
            Severity = Severity.Note,
            Why = "A valve that is too small for the heater does not hold the pressure down.",
            LooksAt = "Whether every relief valve states its capacity.",
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
        var heats = graph.Parts<HeaterPart>().Sum(heater => heater.Part.Capacity.Si);
        return heats == 0
            ? []
            : graph
                .Parts<ReliefPart>()
                .Where(valve => valve.Part.Capacity is null)
                .Select(valve =>
                    Find(
                        DesignPlaces.Item(valve.Placed.Name, "part"),
                        $"\"{valve.Placed.Name}\" does not state its capacity; the heaters can give {subject.Show(heats, Shown.Heat)}.",
                        $"Read the label: it should say {subject.Show(heats, Shown.Heat)} or more; write it as the part's \"capacity\"."
                    )
                );
    }
}
