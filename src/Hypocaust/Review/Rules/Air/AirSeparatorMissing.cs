using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Air;

/// <summary>Vents at rest catch only the air that comes by.</summary>
public sealed class AirSeparatorMissing()
    : ReviewRule(
        new()
        {
            Id = "air-separator-missing",
            Title = "There is no air separator",
            Severity = Severity.Poor,
            Why = "Small bubbles travel with the water past vents and keep coming back for weeks.",
            LooksAt =
                "Whether a plant with a heater has an air separator; with an air vent on the pipe it is only worth a note.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
            CausedBy = [typeof(AirRemovalMissing)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        if (!graph.ItemsOf<HeaterPart>().Any() || graph.Inline(InlineFunction.AirSeparator).Any())
        {
            yield break;
        }

        var hasVent = graph.Tappings(TappingFunction.AirVent).Any();
        yield return Find(
            DesignPlaces.Plant("items"),
            hasVent
                ? "The plant lets air out through vents only; nothing catches small bubbles."
                : "Only the manifold has vents; the rest of the plant has neither separator nor vent.",
            "Put an air separator in the pipe right behind the heater, before the circulator.",
            hasVent ? Severity.Note : null
        );
    }
}
