using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A loop whose water cools far warms its floor unevenly.</summary>
public sealed class LoopCoolsTooFar()
    : ReviewRule(
        new()
        {
            Id = "loop-cools-too-far",
            Title = "The water of a loop cools a lot on its way",
            Severity = Severity.Note,
            Why = "The floor is warm where the water enters and cool where it leaves.",
            LooksAt = "Fall of the water in each loop against 10 K.",
            Source = "common practice, no source",
            Page = Pages.Floor,
            Needs = Needs.Floor | Needs.Plant,
            CausedBy = [typeof(LoopTooLong), typeof(LoopStarved)],
        }
    )
{
    private const double LargestFallK = 10;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var loops = subject.Floor!.Loops;
        for (var i = 0; i < loops.Length; i++)
        {
            var falls = loops[i].Running?.SupplyC - loops[i].Running?.ReturnC;
            if (falls > LargestFallK)
            {
                yield return Find(
                    DesignPlaces.Loop(i),
                    $"In loop \"{loops[i].Name}\" the water cools by {subject.Show(falls.Value, Shown.Difference)}.",
                    "Give it more flow, or shorten it; lay supply and return side by side as a spiral."
                );
            }
        }
    }
}
