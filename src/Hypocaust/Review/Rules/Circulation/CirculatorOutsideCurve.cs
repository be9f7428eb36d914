using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Beyond the given curve nobody knows what a circulator does.</summary>
public sealed class CirculatorOutsideCurve()
    : ReviewRule(
        new()
        {
            Id = "circulator-outside-curve",
            Title = "A circulator works outside its given curve",
            Severity = Severity.Poor,
            Why =
                "The numbers of this plant rest on a guess there, and circulators at the end of their curve are noisy and overloaded.",
            LooksAt =
                "Flow through each running circulator against the range of flows of its curve.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Plant!.Circulators.Where(pump =>
                pump is { Running: true, OutsideCurve: true, FlowM3PerS: > 0 }
            )
            .Select(pump =>
                Find(
                    DesignPlaces.Item(pump.Item),
                    $"\"{pump.Item}\" at speed {pump.Speed} moves {subject.Show(pump.FlowM3PerS, Shown.Flow)}; its curve ends at {subject.Show(pump.CurveEndM3PerS, Shown.Flow)}.",
                    "Run it at a lower speed, throttle its circuit, or enter more of its curve."
                )
            );
}
