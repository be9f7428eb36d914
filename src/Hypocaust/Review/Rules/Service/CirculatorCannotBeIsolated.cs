using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Circulators fail and must come out without draining the floor.</summary>
public sealed class CirculatorCannotBeIsolated()
    : ReviewRule(
        new()
        {
            Id = "circulator-cannot-be-isolated",
            Title = "A circulator cannot be taken out without draining the plant",
            Severity = Severity.Poor,
            Why =
                "Circulators wear out first; without valves on both sides the whole plant must be drained, and the floor purged again.",
            LooksAt =
                "Whether shut-off valves, or isolating flanges, part each circulator from heater, manifold and closely spaced tees on both sides.",
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
            .Graph!.Parts<CirculatorPart>()
            .Where(pump => !pump.Part.Isolating && !subject.Graph!.CanBeIsolated(pump.Placed))
            .Select(pump =>
                Find(
                    DesignPlaces.Item(pump.Placed.Name),
                    $"\"{pump.Placed.Name}\" has no shut-off valve on {subject.Graph!.OpenSides(pump.Placed)}.",
                    "Put a ball valve on that side, or take unions with valves."
                )
            );
}
