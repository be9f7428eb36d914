using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A pipe that is far too narrow eats the head of the circulator.</summary>
public sealed class PipeThrottles()
    : ReviewRule(
        new()
        {
            Id = "pipe-throttles",
            Title = "A run of pipe takes much of the circulator's head",
            Severity = Severity.Poor,
            Why =
                "The circulator works for this pipe instead of for the floor, and the loops behind it get too little.",
            LooksAt =
                "Pressure drop of the pipe in each run against the largest rise of a circulator: more than a quarter is too much.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(WaterTooFast)],
        }
    )
{
    private const double Share = 0.25;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var rise = subject
            .Plant!.Circulators.Where(pump => pump.Running)
            .Select(pump => pump.RisePa)
            .DefaultIfEmpty(0)
            .Max();
        var runs = subject
            .Graph!.Branches.OfType<PlantBranch.InPipe>()
            .Zip(subject.Plant.Pipes)
            .GroupBy(pair => pair.First.Join.Run);
        foreach (var run in runs)
        {
            var drop = run.Sum(pair => Math.Abs(pair.Second.DropPa));
            if (run.Any(pair => pair.Second.FlowKgPerS != 0) && drop > Share * rise)
            {
                var (piece, answer) = run.First();
                yield return Find(
                    DesignPlaces.Run(run.Key, "pipe"),
                    $"The pipe of the run from {piece.Join.From} (\"{answer.Pipe}\", {subject.Show(answer.InnerM, Shown.Small)} inside) takes {subject.Show(drop, Shown.Drop)} of the {subject.Show(rise, Shown.Drop)} that the circulator makes.",
                    "Take the next larger size."
                );
            }
        }
    }
}
