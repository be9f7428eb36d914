using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>The secondary must draw its water from the first tee.</summary>
public sealed class CloselySpacedTeesPipedBackwards()
    : ReviewRule(
        new()
        {
            Id = "closely-spaced-tees-piped-backwards",
            Title = "A circuit passes its closely spaced tees backwards",
            Severity = Severity.Poor,
            Why =
                "The secondary then takes back the water that it has just returned, and the floor gets hardly any heat.",
            LooksAt = "The sign of primary and secondary flow at the tees.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(CirculatorPipedBackwards)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        foreach (var tees in subject.Plant!.Tees)
        {
            var backwards = (tees.PrimaryFlowM3PerS < 0, tees.SecondaryFlowM3PerS < 0) switch
            {
                (true, false) =>
                    $"the primary circuit ({subject.Show(-tees.PrimaryFlowM3PerS, Shown.Flow)})",
                (false, true) =>
                    $"the secondary circuit ({subject.Show(-tees.SecondaryFlowM3PerS, Shown.Flow)})",
                _ => null,
            };
            if (backwards is not null)
            {
                yield return Find(
                    DesignPlaces.Item(tees.Item),
                    $"At \"{tees.Item}\" {backwards} runs backwards.",
                    "Swap the two connections of that circuit, or turn its circulator round."
                );
            }
        }
    }
}
