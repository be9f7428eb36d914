using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Air;

/// <summary>Air must have a way out.</summary>
public sealed class AirRemovalMissing()
    : ReviewRule(
        new()
        {
            Id = "air-removal-missing",
            Title = "Nothing lets air out",
            Severity = Severity.WillNotWork,
            Why = "Every filling brings air; it collects in the loops, gurgles and stops the flow.",
            LooksAt =
                "Whether the plant has an air separator, an air vent or a manifold with vents.",
            Source = "EN 12828:2012, 4.3 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        if (
            !graph.Inline(InlineFunction.AirSeparator).Any()
            && !graph.Tappings(TappingFunction.AirVent).Any()
            && !graph.Parts<ManifoldPart>().Any(manifold => manifold.Part.Vents)
        )
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "The plant has neither an air separator nor an air vent.",
                "Put an air separator in the pipe right behind the heater, before the circulator, and vents on the manifold."
            );
        }
    }
}
