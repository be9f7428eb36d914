using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>Feet and furniture bear only so much.</summary>
public sealed class FloorSurfaceTooWarm()
    : ReviewRule(
        new()
        {
            Id = "floor-surface-too-warm",
            Title = "The floor surface gets too warm",
            Severity = Severity.Danger,
            Why = "Above the limit a floor harms feet and veins, and dries out wood.",
            LooksAt =
                "Mean surface temperature of each loop against the limit of its use: above it is a danger; if only the warmest spot, where the water enters, is above it, that is poor.",
            Source =
                "EN 1264-2, 29 °C where people stay, 9 K above a bathroom, 35 °C in edge zones (seen in a planning guide that quotes it)",
            Page = Pages.Floor,
            Needs = Needs.Floor | Needs.Plant,
            CausedBy =
            [
                typeof(Heating.SetPointAboveTubeRating),
                typeof(Heating.WaterTooWarmForScreed),
            ],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var loops = subject.Floor!.Loops;
        var worst = Enumerable
            .Range(0, loops.Length)
            .Where(i =>
                loops[i].Running is { } running && running.SurfaceWarmestC > loops[i].SurfaceLimitC
            )
            .OrderByDescending(i => loops[i].Running!.SurfaceMeanC - loops[i].SurfaceLimitC)
            .ToList();
        if (worst.Count == 0)
        {
            yield break;
        }

        var loop = loops[worst[0]];
        var surface = loop.Running!;
        var others =
            worst.Count > 1
                ? $" {worst.Count - 1} more {(worst.Count == 2 ? "loop is" : "loops are")} too warm as well."
                : "";
        yield return Find(
            DesignPlaces.Loop(worst[0]),
            $"The floor of loop \"{loop.Name}\" gets {subject.Show(surface.SurfaceMeanC, Shown.Temperature)} in the mean and {subject.Show(surface.SurfaceWarmestC, Shown.Temperature)} where the water enters; {subject.Show(loop.SurfaceLimitC, Shown.Temperature)} is the most.{others}",
            "Lower the supply temperature, or lay the tube closer and deeper so that the heat spreads.",
            surface.SurfaceMeanC > loop.SurfaceLimitC ? null : Severity.Poor
        );
    }
}
