using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A very long loop needs too much pressure and cools too far.</summary>
public sealed class LoopTooLong()
    : ReviewRule(
        new()
        {
            Id = "loop-too-long",
            Title = "A loop is too long",
            Severity = Severity.Poor,
            Why =
                "The pressure drop of a loop grows faster than its length, so a long one starves beside shorter ones and its end stays cool.",
            LooksAt = "Length of each loop, leader included, against 120 m.",
            Source = "common practice, no source",
            Page = Pages.Floor,
            Needs = Needs.Floor,
        }
    )
{
    private const double LongestM = 120;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var loops = subject.Floor!.Loops;
        for (var i = 0; i < loops.Length; i++)
        {
            if (loops[i].LengthM > LongestM)
            {
                yield return Find(
                    DesignPlaces.Loop(i),
                    $"Loop \"{loops[i].Name}\" is {subject.Show(loops[i].LengthM, Shown.Length)} long; {subject.Show(LongestM, Shown.Length)} is about the most.",
                    "Split it into two loops of the same length."
                );
            }
        }
    }
}
