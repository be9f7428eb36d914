using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>A vessel works only with a known precharge.</summary>
public sealed class PrechargeNotStated()
    : ReviewRule(
        new()
        {
            Id = "precharge-not-stated",
            Title = "Nobody has measured the expansion vessel's gas pressure",
            Severity = Severity.Note,
            Why = "Vessels lose gas on the shelf, and one without gas takes up nothing.",
            LooksAt = "Whether every vessel has a precharge written.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Graph!.ItemsOf<VesselPart>()
            .Where(vessel => vessel.Item.Precharge is null)
            .Select(vessel =>
                Find(
                    DesignPlaces.Item(vessel.Name),
                    $"\"{vessel.Name}\" has no precharge written; {Assumed(subject)} was assumed.",
                    "Measure it with a tyre gauge before filling, pump it to what you need and write it as \"precharge\"."
                )
            );

    private static string Assumed(ReviewSubject subject) =>
        subject.Plant!.Fill.PrechargePa is { } pascal
            ? subject.Show(pascal, Shown.Gauge)
            : "an ordinary one";
}
