using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Heating;

/// <summary>A heater cannot hold a set point above its own limit.</summary>
public sealed class SetPointAboveHeaterMaximum()
    : ReviewRule(
        new()
        {
            Id = "set-point-above-heater-maximum",
            Title = "A heater is set above its own highest temperature",
            Severity = Severity.Danger,
            Why =
                "Its limiter trips at every heating, or it runs beyond what its maker has tested.",
            LooksAt = "Each heater's set point against the highest set point of its part.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Graph!.Parts<HeaterPart>()
            .Where(heater => heater.Placed.Item.SetPoint?.Si > heater.Part.MaxTemperature?.Si)
            .Select(heater =>
                Find(
                    DesignPlaces.Item(heater.Placed.Name, "setPoint"),
                    $"\"{heater.Placed.Name}\" is set to {subject.Show(heater.Placed.Item.SetPoint!.Value.Si, Shown.Temperature)}; it is made for {subject.Show(heater.Part.MaxTemperature!.Value.Si, Shown.Temperature)} at most.",
                    $"Set it to {subject.Show(heater.Part.MaxTemperature.Value.Si, Shown.Temperature)} or lower."
                )
            );
}
