using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>Tube needs enough screed above it.</summary>
public sealed class TubeCoverTooThin()
    : ReviewRule(
        new()
        {
            Id = "tube-cover-too-thin",
            Title = "Too little screed lies above the tube",
            Severity = Severity.Poor,
            Why = "Thin screed cracks along the tube, and the floor shows warm and cool stripes.",
            LooksAt = "Cover above the tube of each section against 30 mm.",
            Source = "EN 1264-4:2021, 4.2.2.9.2 (seen)",
            Page = Pages.Floor,
            Needs = Needs.Design,
        }
    )
{
    private const double LeastM = 0.03;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        (subject.Design.Floor?.Sections ?? Named<FloorBuildUp>.Empty)
            .Where(entry => entry.Value.Cover.Si < LeastM)
            .Select(entry =>
                Find(
                    DesignPlaces.Section(entry.Key, "cover"),
                    $"In \"{entry.Key}\" {subject.Show(entry.Value.Cover.Si, Shown.Small)} lie above the tube; {subject.Show(LeastM, Shown.Small)} is the least.",
                    $"Lay the tube deeper or the screed thicker, {subject.Show(LeastM, Shown.Small)} above the tube or more."
                )
            );
}
