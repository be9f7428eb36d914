using Hypocaust.Answers;

namespace Hypocaust.Review.Rules.Piping;

/// <summary>Oxygen that creeps through plastic rusts iron.</summary>
public sealed class TubeLetsOxygenIn()
    : ReviewRule(
        new()
        {
            Id = "tube-lets-oxygen-in",
            Title = "Tube without an oxygen barrier feeds iron parts with oxygen",
            Severity = Severity.Poor,
            Why =
                "Oxygen creeps through the plastic all the time; iron parts rust through and the sludge blocks loops.",
            LooksAt =
                "Plastic pipes and tubes without barrier in a plant in which iron or steel touches the water; an expansion vessel is steel.",
            Source = "EN 1264-4, and DIN 4726 for the barrier (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var iron = graph
            .Items.Where(item => item.Part.HasIron)
            .Select(item => item.Name)
            .Concat(
                graph
                    .Pipes()
                    .Where(pipe => pipe.Pipe.HasIron)
                    .Select(pipe => pipe.Pipe.Material.ToString().ToLowerInvariant() + " pipe")
            )
            .Distinct(StringComparer.Ordinal)
            .ToList();
        var open = graph.Pipes().Where(pipe => !pipe.Pipe.OxygenBarrier).ToList();
        if (iron.Count > 0 && open.Count > 0)
        {
            var others = open.Count > 1 ? $" and {open.Count - 1} more" : "";
            yield return Find(
                open[0].Place,
                $"The {open[0].Name}{others} has no oxygen barrier, and water touches iron in {PipingQuestions.Listed(iron)}.",
                "Take tube with an oxygen barrier, or a heat exchanger with only bronze, stainless steel and plastic on the tube's side."
            );
        }
    }
}
