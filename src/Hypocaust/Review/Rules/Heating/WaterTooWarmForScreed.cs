using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Heating;

/// <summary>Cement screed cracks and dries out in water that is too warm.</summary>
public sealed class WaterTooWarmForScreed()
    : ReviewRule(
        new()
        {
            Id = "water-too-warm-for-screed",
            Title = "The water is too warm for tube in cement screed",
            Severity = Severity.Danger,
            Why = "Screed at the tube cracks, and the floor above it gets too hot for feet.",
            LooksAt =
                "Each heater's set point against 55 °C where loops lie in the floor; mixing on the way is not counted on.",
            Source = "EN 1264-4 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
            CausedBy = [typeof(SetPointAboveTubeRating)],
        }
    )
{
    private const double HottestC = 55;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var limit = graph.Branches.OfType<PlantBranch.InLoop>().Any()
            ? HottestC
            : double.PositiveInfinity;
        foreach (var heater in graph.ItemsOf<HeaterPart>())
        {
            if (heater.Item.SetPoint is not { } setPoint || !(setPoint.Si > limit))
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Item(heater.Name, "setPoint"),
                $"\"{heater.Name}\" is set to {subject.Show(setPoint.Si, Shown.Temperature)}; at the tube {subject.Show(HottestC, Shown.Temperature)} is the most.",
                $"Set it to {subject.Show(HottestC, Shown.Temperature)} or lower and fit a limit thermostat that stops the circulator above it."
            );
        }
    }
}
