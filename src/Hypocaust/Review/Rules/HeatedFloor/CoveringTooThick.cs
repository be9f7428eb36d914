using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>A thick covering keeps the heat in the slab.</summary>
public sealed class CoveringTooThick()
    : ReviewRule(
        new()
        {
            Id = "covering-too-thick",
            Title = "The floor covering insulates too much",
            Severity = Severity.Poor,
            Why =
                "Thick carpet or wood keeps the heat below; the water must be much warmer and more heat goes down.",
            LooksAt = "Resistance of each section's covering against 0.15 m²K/W.",
            Source = "EN 1264-2, range of the tables (from memory)",
            Page = Pages.Floor,
            Needs = Needs.Design,
        }
    )
{
    private const double MostM2KPerW = 0.15;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        (subject.Design.Floor?.Sections ?? Named<FloorBuildUp>.Empty)
            .Where(entry => entry.Value.Covering.Si > MostM2KPerW + 1e-9)
            .Select(entry =>
                Find(
                    DesignPlaces.Section(entry.Key, "covering"),
                    $"The covering of \"{entry.Key}\" has {subject.Show(entry.Value.Covering.Si, Shown.Resistance)}; {subject.Show(MostM2KPerW, Shown.Resistance)} is the most.",
                    "Take tile, stone, or thin wood glued down."
                )
            );
}
