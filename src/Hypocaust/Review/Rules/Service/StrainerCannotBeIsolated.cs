using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Service;

/// <summary>A strainer is there to be cleaned.</summary>
public sealed class StrainerCannotBeIsolated()
    : ReviewRule(
        new()
        {
            Id = "strainer-cannot-be-isolated",
            Title = "A strainer cannot be cleaned without draining the plant",
            Severity = Severity.Note,
            Why =
                "A strainer that is a nuisance to clean is not cleaned, and then it stops the flow.",
            LooksAt =
                "Whether shut-off valves part each strainer from heater, manifold and closely spaced tees on both sides.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
            CausedBy = [typeof(Piping.CircuitWithoutHeater)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Graph!.Inline(InlineFunction.Strainer)
            .Where(strainer => !subject.Graph!.CanBeIsolated(strainer))
            .Select(strainer =>
                Find(
                    DesignPlaces.Item(strainer.Name),
                    $"\"{strainer.Name}\" has no shut-off valve on {subject.Graph!.OpenSides(strainer)}.",
                    "Put a shut-off valve close by on that side."
                )
            );
}
