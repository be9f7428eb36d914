using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Air;

/// <summary>Air leaves the water where it is warmest and its pressure lowest.</summary>
public sealed class AirSeparatorNotAtBestPlace()
    : ReviewRule(
        new()
        {
            Id = "air-separator-not-at-best-place",
            Title = "The air separator is not where most air comes out of the water",
            Severity = Severity.Note,
            Why =
                "Warm water under low pressure holds the least air; a separator elsewhere catches only part of it.",
            LooksAt =
                "Temperature at each air separator against the warmest item (1 K), and its running pressure against the lowest among the warm items, heights taken out (10 kPa).",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(Expansion.CirculatorPumpsTowardsVessel)],
        }
    )
{
    private const double SlackK = 1;
    private const double SlackPa = 1e4;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var plant = subject.Plant!;
        var warmest = plant.Items.Max(item => item.TemperatureC);
        var separators = subject.Graph!.Inline(InlineFunction.AirSeparator).ToList();
        foreach (var separator in separators)
        {
            var here = subject.ItemAnswer(separator.Name);
            if (here is not { TemperatureC: { } celsius, PressurePa: { } pascal })
            {
                continue;
            }

            double AtSameHeight(ItemAnswer item) =>
                item.PressurePa!.Value
                + (
                    (item.HeightM - here.HeightM)
                    * plant.Fluid.DensityKgPerM3
                    * PhysicalConstants.GravityMPerS2
                );
            var lowest = plant
                .Items.Where(item =>
                    item.TemperatureC > warmest - SlackK && item.PressurePa is not null
                )
                .Select(AtSameHeight)
                .DefaultIfEmpty(pascal)
                .Min();
            if (celsius >= warmest - SlackK && pascal <= lowest + SlackPa)
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Item(separator.Name),
                $"\"{separator.Name}\" has {subject.Show(celsius, Shown.Temperature)} and {subject.Show(pascal, Shown.Gauge)}; the warmest water has {subject.Show(warmest!.Value, Shown.Temperature)}, at {subject.Show(lowest, Shown.Gauge)} in the best place.",
                "Move it right behind the heater and before the circulator."
            );
        }
    }
}
