using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Where more water is drawn than comes, return mixes into the supply.</summary>
public sealed class SecondaryFlowAbovePrimary()
    : ReviewRule(
        new()
        {
            Id = "secondary-flow-above-primary",
            Title = "The secondary circuit draws more water than the primary brings",
            Severity = Severity.Note,
            Why =
                "Return water mixes into the supply, so that the floor gets cooler water than the heater makes.",
            LooksAt =
                "Flow from the secondary return back into the secondary supply: more than a fiftieth of the secondary flow.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(ShutValveStopsFlow), typeof(CirculatorMovesNothing)],
        }
    )
{
    private const double Share = 0.02;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        foreach (var tees in subject.Plant!.Tees)
        {
            if (
                -tees.BetweenFlowM3PerS <= Share * Math.Abs(tees.SecondaryFlowM3PerS)
                || tees is not { PrimaryC: { } primary, SecondaryC: { } secondary }
            )
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Item(tees.Item),
                $"At \"{tees.Item}\" the secondary draws {subject.Show(tees.SecondaryFlowM3PerS, Shown.Flow)}, the primary brings {subject.Show(tees.PrimaryFlowM3PerS, Shown.Flow)}; water of {subject.Show(primary, Shown.Temperature)} reaches the floor with {subject.Show(secondary, Shown.Temperature)}.",
                "Run the primary circulator faster or the secondary slower, or set the heater higher by the difference."
            );
        }
    }
}
