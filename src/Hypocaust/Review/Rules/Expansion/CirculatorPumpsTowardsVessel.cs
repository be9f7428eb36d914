using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>A circulator should raise the pressure behind it, not lower the one before it.</summary>
public sealed class CirculatorPumpsTowardsVessel()
    : ReviewRule(
        new()
        {
            Id = "circulator-pumps-towards-vessel",
            Title = "A circulator pumps towards the expansion vessel",
            Severity = Severity.Poor,
            Why =
                "The vessel's connection keeps its pressure; a circulator that pumps towards it lowers the pressure before itself, which draws in air and makes it noisy.",
            LooksAt =
                "How far the pressure at each circulator's inlet falls when it runs, heights taken out, against its pressure rise: more than half is too much.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(ExpansionVesselMissing), typeof(ExpansionVesselCutOff)],
        }
    )
{
    private const double LeastRisePa = 1000;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var plant = subject.Plant!;
        if (subject.Graph!.ItemsOf<VesselPart>().FirstOrDefault() is not { } vessel)
        {
            yield break;
        }

        var atVessel = subject.ItemAnswer(vessel.Name).PressurePa;
        foreach (var circulator in plant.Circulators.Where(pump => pump.Running))
        {
            var height = subject.Graph.Item(circulator.Item).Item.Height.Si;
            var column =
                (height - vessel.Item.Height.Si)
                * plant.Fluid.DensityKgPerM3
                * PhysicalConstants.GravityMPerS2;
            var falls = atVessel - column - circulator.InletPa;
            if (circulator.RisePa < LeastRisePa || !(falls > circulator.RisePa / 2))
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Item(circulator.Item),
                $"\"{circulator.Item}\" makes {subject.Show(circulator.RisePa, Shown.Drop)}, and when it runs the pressure at its inlet falls by {subject.Show(falls.Value, Shown.Drop)}, to {subject.Show(circulator.InletPa!.Value, Shown.Gauge)}.",
                $"Move the tee of \"{vessel.Name}\" to just before the inlet of \"{circulator.Item}\", or the circulator to just behind the vessel."
            );
        }
    }
}
