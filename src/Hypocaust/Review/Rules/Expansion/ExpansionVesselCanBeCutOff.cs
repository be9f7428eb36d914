using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>A valve between heater and vessel will be closed one day.</summary>
public sealed class ExpansionVesselCanBeCutOff()
    : ReviewRule(
        new()
        {
            Id = "expansion-vessel-can-be-cut-off",
            Title = "A valve stands between a heater and its expansion vessel",
            Severity = Severity.Poor,
            Why =
                "With the valve closed by mistake the heated water has nowhere to grow and the relief valve must save the plant.",
            LooksAt =
                "Whether some way from each heater to a vessel passes no shut-off valve, purge valve, isolating flange or loop; a valve with a lock or cap at the vessel itself counts too.",
            Source = "EN 12828:2012, 4.6.3 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
            CausedBy = [typeof(ExpansionVesselCutOff), typeof(Piping.CircuitWithoutHeater)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var vessels = graph.ItemsOf<VesselPart>().ToList();
        foreach (var heater in graph.ItemsOf<HeaterPart>().Where(_ => vessels.Count > 0))
        {
            var reached = graph.Reach(graph.NodeOf(heater), branch => !branch.CanBeShut());
            if (!vessels.Any(vessel => reached.Contains(graph.NodeOf(vessel))))
            {
                yield return Find(
                    DesignPlaces.Item(vessels[0].Name),
                    $"Every way from \"{heater.Name}\" to {PipingQuestions.Listed(vessels.Select(vessel => vessel.Name))} passes a valve that can be closed.",
                    "Move the vessel's tee to the heater's side of the valves, or take off the handle of the one between and hang a label on it."
                );
            }
        }
    }
}
