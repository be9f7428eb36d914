using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Heating;

/// <summary>Plastic tube softens in water above its rating.</summary>
public sealed class SetPointAboveTubeRating()
    : ReviewRule(
        new()
        {
            Id = "set-point-above-tube-rating",
            Title = "A heater is set above what a tube stands",
            Severity = Severity.Danger,
            Why = "Hot plastic loses its strength and bursts under pressure, sooner or later.",
            LooksAt =
                "Each heater's set point against the lowest temperature rating of all pipes and tubes; mixing on the way is not counted on.",
            Source = "temperature ratings as of ISO 15875 and ASTM F876 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var weakest = graph
            .Pipes()
            .Where(pipe => pipe.Pipe.MaxTemperature is not null)
            .OrderBy(pipe => pipe.Pipe.MaxTemperature!.Value.Si)
            .FirstOrDefault();
        var limit = weakest.Pipe?.MaxTemperature?.Si ?? double.PositiveInfinity;
        foreach (var heater in graph.ItemsOf<HeaterPart>())
        {
            if (heater.Item.SetPoint is not { } setPoint || !(setPoint.Si > limit))
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Item(heater.Name, "setPoint"),
                $"\"{heater.Name}\" is set to {subject.Show(setPoint.Si, Shown.Temperature)}; the {weakest.Name} stands {subject.Show(limit, Shown.Temperature)}.",
                $"Set it to {subject.Show(limit, Shown.Temperature)} or lower, or take other tube."
            );
        }
    }
}
