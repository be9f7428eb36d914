using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Water must leave a circulator at its outlet.</summary>
public sealed class CirculatorPipedBackwards()
    : ReviewRule(
        new()
        {
            Id = "circulator-piped-backwards",
            Title = "Water passes a running circulator backwards",
            Severity = Severity.WillNotWork,
            Why =
                "Two circulators work against each other; the weaker one only resists and wears out.",
            LooksAt = "The sign of the flow through each running circulator.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Plant!.Circulators.Where(pump => pump.Running && pump.FlowM3PerS < 0)
            .Select(pump =>
                Find(
                    DesignPlaces.Item(pump.Item),
                    $"{subject.Show(-pump.FlowM3PerS, Shown.Flow)} pass \"{pump.Item}\" from its outlet to its inlet although it runs.",
                    "Turn one of the circulators round, or part their circuits with closely spaced tees."
                )
            );
}
