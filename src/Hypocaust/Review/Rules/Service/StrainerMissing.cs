using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Dirt and swarf end in the circulator.</summary>
public sealed class StrainerMissing()
    : ReviewRule(
        new()
        {
            Id = "strainer-missing",
            Title = "Nothing catches dirt",
            Severity = Severity.Note,
            Why = "Swarf, sand and rust wear circulators and block flow switches and valves.",
            LooksAt = "Whether a plant with a circulator has a strainer or a dirt separator.",
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
        if (
            graph.ItemsOf<CirculatorPart>().Any()
            && !graph.Inline(InlineFunction.Strainer).Any()
            && !graph.Inline(InlineFunction.DirtSeparator).Any()
        )
        {
            yield return Find(
                DesignPlaces.Plant("items"),
                "The plant has neither a strainer nor a dirt separator.",
                "Put a strainer in the return, with a shut-off valve on either side, and clean it after the first weeks."
            );
        }
    }
}
