using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Heating;

/// <summary>A heater at full power whose water stays below the set point is at its end.</summary>
public sealed class SetPointNotReached()
    : ReviewRule(
        new()
        {
            Id = "set-point-not-reached",
            Title = "A heater gives all it has and its water stays below the set point",
            Severity = Severity.Note,
            Why =
                "The floor gets cooler water than you set; that is harmless as long as it is warm enough.",
            LooksAt = "Heaters at full power.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(HeaterTooSmall)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        foreach (
            var heater in subject.Plant!.Heaters.Where(heater =>
                heater.State == HeaterState.FullPower
            )
        )
        {
            if (heater is { OutC: { } reached, SetPointC: { } wanted })
            {
                yield return Find(
                    DesignPlaces.Item(heater.Item, "setPoint"),
                    $"\"{heater.Item}\" gives its full {subject.Show(heater.CapacityW, Shown.Heat)} and reaches {subject.Show(reached, Shown.Temperature)}; it is set to {subject.Show(wanted, Shown.Temperature)}.",
                    "Set it no higher than the floor needs, or take a stronger heater."
                );
            }
        }
    }
}
