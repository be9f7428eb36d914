using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>A vessel behind a shut valve is no vessel.</summary>
public sealed class ExpansionVesselCutOff()
    : ReviewRule(
        new()
        {
            Id = "expansion-vessel-cut-off",
            Title = "The expansion vessel is shut off from a heater",
            Severity = Severity.Danger,
            Why = "The heated water has nowhere to grow, so the relief valve opens at once.",
            LooksAt = "Whether each heater reaches a vessel with the valves as they stand.",
            Source = "EN 12828:2012, 4.6.3 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
            CausedBy = [typeof(Piping.CircuitWithoutHeater)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var vessels = graph.ItemsOf<VesselPart>().ToList();
        foreach (var heater in graph.ItemsOf<HeaterPart>())
        {
            var reached = graph.Reach(graph.NodeOf(heater), branch => !branch.IsShut());
            if (vessels.Count > 0 && !vessels.Any(vessel => reached.Contains(graph.NodeOf(vessel))))
            {
                yield return Find(
                    DesignPlaces.Item(vessels[0].Name),
                    $"With the valves as they stand, no open way leads from \"{heater.Name}\" to {PipingQuestions.Listed(vessels.Select(vessel => vessel.Name))}.",
                    "Open the valve between them, and move the vessel to where no valve can cut it off."
                );
            }
        }
    }
}
