using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A heater that does not get its flow stays off.</summary>
public sealed class HeaterFlowBelowMinimum()
    : ReviewRule(
        new()
        {
            Id = "heater-flow-below-minimum",
            Title = "A heater gets less flow than it needs",
            Severity = Severity.WillNotWork,
            Why =
                "The heater's flow switch keeps it off, so that the floor stays cold; without a switch it would boil.",
            LooksAt = "Flow through each heater against its stated minimum.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy =
            [
                typeof(CirculatorMissing),
                typeof(ShutValveStopsFlow),
                typeof(CirculatorMovesNothing),
                typeof(CheckValveHoldsBack),
                typeof(Heating.SwitchedOff),
                typeof(Piping.CircuitWithoutHeater),
            ],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        foreach (
            var heater in subject.Plant!.Heaters.Where(one =>
                one.State == HeaterState.FlowTooSmall && one.FlowM3PerS >= 0
            )
        )
        {
            yield return Find(
                DesignPlaces.Item(heater.Item),
                $"\"{heater.Item}\" gets {subject.Show(heater.FlowM3PerS, Shown.Flow)} and switches on only from {subject.Show(heater.MinimumFlowM3PerS, Shown.Flow)}.",
                "Run the circulator that serves it faster, open valves, use wider or shorter pipe, or give the heater its own circuit with closely spaced tees."
            );
        }
    }
}
