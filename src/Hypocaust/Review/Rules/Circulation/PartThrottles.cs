using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A part that is far too small eats the head of the circulator.</summary>
public sealed class PartThrottles()
    : ReviewRule(
        new()
        {
            Id = "part-throttles",
            Title = "A part takes much of the circulator's head",
            Severity = Severity.Poor,
            Why =
                "The circulator works for this part instead of for the floor; dirt gathers there first.",
            LooksAt =
                "Pressure drop of each valve, strainer, separator and meter against the largest rise of a circulator: more than a quarter is too much.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
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
        foreach (var (placed, part) in subject.Graph!.Parts<InlinePart>())
        {
            var answer = subject.ItemAnswer(placed.Name);
            if (
                answer.DropPa is { } drop
                && answer.FlowKgPerS is { } flow
                && flow != 0
                && drop * Math.Sign(flow) > Share * rise
            )
            {
                yield return Find(
                    DesignPlaces.Item(placed.Name, "part"),
                    $"\"{placed.Name}\" ({PartKinds.NameOf(part)}) takes {subject.Show(Math.Abs(drop), Shown.Drop)} of the {subject.Show(rise, Shown.Drop)} that the circulator makes.",
                    "Take a larger one."
                );
            }
        }
    }
}
