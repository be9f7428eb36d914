using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.LowPressure;

/// <summary>Where the pressure is below the atmosphere's, air comes in.</summary>
public sealed class PressureBelowAtmosphere()
    : ReviewRule(
        new()
        {
            Id = "pressure-below-atmosphere",
            Title = "Somewhere the pressure is hardly above the atmosphere's or below it",
            Severity = Severity.Poor,
            Why =
                "Air enters through vents, packings and plastic where the pressure outside is higher; it stops loops and rusts iron.",
            LooksAt =
                "The lowest running pressure of all items: below 0.1 bar is poor, below 0 it will not work.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy =
            [
                typeof(Expansion.ExpansionVesselMissing),
                typeof(Expansion.ColdFillTooLow),
                typeof(Expansion.CirculatorPumpsTowardsVessel),
                typeof(CirculatorInletBoils),
            ],
        }
    )
{
    private const double LeastPa = 0.1e5;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var lowest = subject.Plant!.Items.Where(item => item.PressurePa < LeastPa).ToList();
        if (lowest.MinBy(item => item.PressurePa) is not { PressurePa: { } pascal } worst)
        {
            yield break;
        }

        yield return Find(
            DesignPlaces.Item(worst.Id),
            $"In running the pressure at \"{worst.Id}\" is {subject.Show(pascal, Shown.Gauge)}.",
            "Fill to a higher pressure, or lower the resistance between the expansion vessel and this place.",
            pascal < 0 ? Severity.WillNotWork : null
        );
    }
}
