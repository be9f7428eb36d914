using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Piping;

/// <summary>A circuit that no heater reaches stays cold and unsafe.</summary>
public sealed class CircuitWithoutHeater()
    : ReviewRule(
        new()
        {
            Id = "circuit-without-heater",
            Title = "A circuit is not connected to a heater",
            Severity = Severity.WillNotWork,
            Why =
                "What hangs on pipes of its own gets no heat, and a vessel or relief valve there protects nothing.",
            LooksAt = "Whether pipes lead from every item to a heater, valves counted as open.",
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
        var heaters = graph.ItemsOf<HeaterPart>().Select(heater => graph.NodeOf(heater)).ToList();
        var reached = heaters.SelectMany(node => graph.Reach(node, _ => true)).ToHashSet();
        foreach (var item in graph.Items.Where(_ => heaters.Count > 0))
        {
            if (reached.Contains(graph.NodeOf(item)))
            {
                continue;
            }

            var circuit = graph.Reach(graph.NodeOf(item), _ => true);
            reached.UnionWith(circuit);
            var names = graph.Items.Where(other => circuit.Contains(graph.NodeOf(other)));
            yield return Find(
                DesignPlaces.Item(item.Name),
                $"No pipe leads from {PipingQuestions.Listed(names.Select(other => other.Name))} to a heater.",
                "Join these runs to the circuit of the heater."
            );
        }
    }
}
