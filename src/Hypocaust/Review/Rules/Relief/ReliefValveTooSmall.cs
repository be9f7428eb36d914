using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Relief;

/// <summary>The relief valves must let off all the heat that the heaters can give.</summary>
public sealed class ReliefValveTooSmall()
    : ReviewRule(
        new()
        {
            Id = "relief-valve-too-small",
            Title = "The relief valve cannot let off the heaters' power",
            Severity = Severity.Danger,
            Why =
                "If the heater's limiter fails, steam forms faster than the valve lets it off, and the pressure rises in spite of it.",
            LooksAt =
                "The relief valves' capacities together against the heaters' together, where every relief valve states its capacity.",
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
        var valves = graph.Parts<ReliefPart>().ToList();
        if (valves.Count == 0 || valves.Any(valve => valve.Part.Capacity is null))
        {
            yield break;
        }

        var letsOff = valves.Sum(valve => valve.Part.Capacity!.Value.Si);
        var heats = graph.Parts<HeaterPart>().Sum(heater => heater.Part.Capacity.Si);
        if (letsOff < heats)
        {
            yield return Find(
                DesignPlaces.Item(valves[0].Placed.Name, "part"),
                $"The heaters can give {subject.Show(heats, Shown.Heat)}, the relief valves let off only {subject.Show(letsOff, Shown.Heat)}.",
                $"Take a relief valve whose label says {subject.Show(heats, Shown.Heat)} or more."
            );
        }
    }
}
