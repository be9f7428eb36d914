using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Water must enter a heater at its inlet.</summary>
public sealed class HeaterPipedBackwards()
    : ReviewRule(
        new()
        {
            Id = "heater-piped-backwards",
            Title = "Water passes a heater from outlet to inlet",
            Severity = Severity.WillNotWork,
            Why =
                "Flow switches and sensors inside a heater work one way only: it stays off or overheats.",
            LooksAt = "The sign of the flow through each heater.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(CirculatorPipedBackwards)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Plant!.Heaters.Where(heater => heater.FlowKgPerS < 0)
            .Select(heater =>
                Find(
                    DesignPlaces.Item(heater.Item),
                    $"{subject.Show(-heater.FlowM3PerS, Shown.Flow)} pass \"{heater.Item}\" from its outlet to its inlet.",
                    "Swap its two connections, or turn the circulator round."
                )
            );
}
