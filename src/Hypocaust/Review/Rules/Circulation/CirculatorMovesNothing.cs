using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A circulator that runs should move water.</summary>
public sealed class CirculatorMovesNothing()
    : ReviewRule(
        new()
        {
            Id = "circulator-moves-nothing",
            Title = "A circulator runs but moves no water",
            Severity = Severity.WillNotWork,
            Why = "It heats the little water in it, wears out, and nothing behind it gets warm.",
            LooksAt = "Flow through each running circulator.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy =
            [
                typeof(ShutValveStopsFlow),
                typeof(CheckValveHoldsBack),
                typeof(Piping.CircuitWithoutHeater),
            ],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Plant!.Circulators.Where(pump => pump.Running && pump.FlowM3PerS == 0)
            .Select(pump =>
                Find(
                    DesignPlaces.Item(pump.Item),
                    $"\"{pump.Item}\" runs and makes {subject.Show(pump.HeadM, Shown.Length)} of head, but no water passes.",
                    "Look for a way that is not joined, a shut valve or a check valve the wrong way round in its circuit."
                )
            );
}
