using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>Tube far apart leaves cold stripes.</summary>
public sealed class TubeSpacingTooWide()
    : ReviewRule(
        new()
        {
            Id = "tube-spacing-too-wide",
            Title = "A loop lies with its tube too far apart",
            Severity = Severity.Poor,
            Why = "You feel warm and cool stripes underfoot, and the water must be warmer.",
            LooksAt = "Tube spacing of each loop against 300 mm.",
            Source = "common practice, no source",
            Page = Pages.Floor,
            Needs = Needs.Design,
        }
    )
{
    // 12 inches count as 300 mm
    private const double WidestM = 0.3048;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var loops = subject.Design.Floor?.Loops ?? [];
        for (var i = 0; i < loops.Length; i++)
        {
            if (loops[i].Spacing.Si > WidestM)
            {
                yield return Find(
                    DesignPlaces.Loop(i, "spacing"),
                    $"The tube of loop \"{loops[i].Name}\" lies {subject.Show(loops[i].Spacing.Si, Shown.Small)} apart; {subject.Show(WidestM, Shown.Small)} is about the most.",
                    "Lay it closer, with more loops if they get too long."
                );
            }
        }
    }
}
