using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Relief;

/// <summary>Nothing may stand between a heater and its relief valve that can close.</summary>
public sealed class ReliefValveCanBeCutOff()
    : ReviewRule(
        new()
        {
            Id = "relief-valve-can-be-cut-off",
            Title = "A valve stands between a heater and every relief valve",
            Severity = Severity.Danger,
            Why =
                "Somebody closes the valve one day while the heater is on; then nothing lets the pressure out and something bursts.",
            LooksAt =
                "Whether some way from each heater's outlet to a relief valve passes no shut-off valve, purge valve, check valve, isolating flange or loop.",
            Source = "EN 12828:2012, 4.6.2 (from memory)",
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
        var valves = graph.ItemsOf<ReliefPart>().ToList();
        if (valves.Count == 0)
        {
            yield break;
        }

        foreach (var heater in graph.ItemsOf<HeaterPart>())
        {
            bool Reaches(Func<PlantBranch, bool> passes)
            {
                var reached = graph.Reach(graph.NodeOf(heater.Name, Ports.Out), passes);
                return valves.Any(valve => reached.Contains(graph.NodeOf(valve)));
            }

            if (Reaches(branch => !branch.CanBeShut() && !branch.IsOneWay()))
            {
                continue;
            }

            var how =
                !Reaches(_ => true) ? "has no pipe that leads to"
                : Reaches(branch => !branch.IsShut()) ? "can be shut off from"
                : "is shut off at this moment from";
            yield return Find(
                DesignPlaces.Item(heater.Name),
                $"\"{heater.Name}\" {how} {PipingQuestions.Listed(valves.Select(valve => valve.Name))}.",
                $"Put the relief valve on a tee right at the outlet of \"{heater.Name}\", before any valve."
            );
        }
    }
}
