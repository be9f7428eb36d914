using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>A zone without a loop stays cold.</summary>
public sealed class ZoneNotHeated()
    : ReviewRule(
        new()
        {
            Id = "zone-not-heated",
            Title = "No loop heats a zone",
            Severity = Severity.Poor,
            Why = "The zone loses heat on the coldest day and gets none from the floor.",
            LooksAt = "Zones with a heat loss in which no loop lies, where others have loops.",
            Source = "common practice, no source",
            Page = Pages.Floor,
            Needs = Needs.Space | Needs.Floor,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Space!.Zones.Where(zone =>
                zone.RoomLossW > 0
                && !subject.Floor!.Loops.IsEmpty
                && subject.Floor.Loops.All(loop => loop.Zone != zone.Name)
            )
            .Select(zone =>
                Find(
                    DesignPlaces.Zone(zone.Name),
                    $"No loop lies in zone \"{zone.Name}\", which loses {subject.Show(zone.RoomLossW, Shown.SmallHeat)} on the coldest day.",
                    "Lay a loop there, or heat it some other way."
                )
            );
}
