using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>More flow than the floor can use costs power for nothing.</summary>
public sealed class CirculatorTooStrong()
    : ReviewRule(
        new()
        {
            Id = "circulator-too-strong",
            Title = "A circulator is far stronger than its circuit needs",
            Severity = Severity.Note,
            Why = "It uses power for a flow that warms nothing better.",
            LooksAt =
                "Fall of the water over the loops: below 2 K at the floor's full output the flow is more than three times what is usual.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant | Needs.Floor,
        }
    )
{
    private const double LeastFallK = 2;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var floor = subject.Floor!;
        if (
            floor.SupplyC is not { } supply
            || floor.ReturnC is not { } back
            || !(floor.OutputW > 0)
        )
        {
            yield break;
        }

        var pump = subject
            .Plant!.Circulators.Where(one => one.Running && one.FlowM3PerS > 0)
            .MaxBy(one => one.FlowM3PerS);
        if (pump is not null && supply - back < LeastFallK)
        {
            yield return Find(
                DesignPlaces.Item(pump.Item, "speed"),
                $"The water cools only by {subject.Show(supply - back, Shown.Difference)} in the loops; \"{pump.Item}\" moves {subject.Show(pump.FlowM3PerS, Shown.Flow)}.",
                "Run the circulator at a lower speed."
            );
        }
    }
}
