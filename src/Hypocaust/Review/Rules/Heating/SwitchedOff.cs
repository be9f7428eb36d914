using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Heating;

/// <summary>What is switched off does not heat.</summary>
public sealed class SwitchedOff()
    : ReviewRule(
        new()
        {
            Id = "switched-off",
            Title = "A heater or circulator is switched off",
            Severity = Severity.Poor,
            Why = "The answers show the plant as it stands, with this part at rest.",
            LooksAt =
                "Heaters and circulators that are written as off; if no heater is on, the floor will not get warm.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var nothingHeats = graph.ItemsOf<HeaterPart>().All(heater => heater.Item.Off);
        foreach (
            var item in graph.Items.Where(item =>
                item.Part is HeaterPart or CirculatorPart && item.Item.Off
            )
        )
        {
            yield return Find(
                DesignPlaces.Item(item.Name, "off"),
                $"\"{item.Name}\" ({PartKinds.NameOf(item.Part)}) is switched off.",
                "Switch it on to see the plant in running.",
                nothingHeats && item.Part is HeaterPart ? Severity.WillNotWork : null
            );
        }
    }
}
