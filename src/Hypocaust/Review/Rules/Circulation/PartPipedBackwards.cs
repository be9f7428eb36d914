using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Some parts work in one direction only.</summary>
public sealed class PartPipedBackwards()
    : ReviewRule(
        new()
        {
            Id = "part-piped-backwards",
            Title = "Water passes a part against its arrow",
            Severity = Severity.Poor,
            Why =
                "A strainer passed backwards lets its dirt go, a flow switch does not close, a meter reads nothing.",
            LooksAt =
                "The sign of the flow through strainers, separators, flow meters, flow switches and purge valves.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy =
            [
                typeof(CirculatorPipedBackwards),
                typeof(HeaterPipedBackwards),
                typeof(CloselySpacedTeesPipedBackwards),
            ],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Graph!.Parts<InlinePart>()
            .Where(item =>
                item.Part.Function is not (InlineFunction.ShutOff or InlineFunction.Check)
            )
            .Where(item => subject.ItemAnswer(item.Placed.Name).FlowKgPerS < 0)
            .Select(item =>
                Find(
                    DesignPlaces.Item(item.Placed.Name),
                    $"Water passes \"{item.Placed.Name}\" ({PartKinds.NameOf(item.Part)}) from its outlet to its inlet.",
                    "Turn it round so that its arrow points with the flow."
                )
            );
}
