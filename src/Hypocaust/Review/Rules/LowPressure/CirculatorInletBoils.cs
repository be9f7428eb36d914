using Hypocaust.Answers;
using Hypocaust.Building;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.LowPressure;

/// <summary>Water that boils at a circulator's inlet destroys it.</summary>
public sealed class CirculatorInletBoils()
    : ReviewRule(
        new()
        {
            Id = "circulator-inlet-boils",
            Title = "Water can boil at a circulator's inlet",
            Severity = Severity.Poor,
            Why =
                "Steam bubbles that form at the inlet collapse on the wheel: the circulator rattles, loses its flow and is eaten away.",
            LooksAt =
                "Absolute pressure at the inlet, the site's altitude included, less the boiling pressure of water, as a height of water: below 3 m is poor, below 1 m it will not work.",
            Source =
                "IAPWS R7-97(2012), region 4, for the boiling pressure; margin by common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy = [typeof(Expansion.ExpansionVesselMissing)],
        }
    )
{
    private const double ScarceM = 3;
    private const double HopelessM = 1;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var altitude = subject.Design.Site.Altitude.Si;
        if (!DryAir.At(altitude, 15).TryGet(out var air))
        {
            yield break;
        }

        foreach (var circulator in subject.Plant!.Circulators.Where(pump => pump.Running))
        {
            if (
                subject.ItemAnswer(circulator.Item).TemperatureC is not { } celsius
                || circulator.InletPa is not { } gauge
                || !Water.SaturationPressurePa(celsius).TryGet(out var boiling)
            )
            {
                continue;
            }

            var marginM =
                (gauge + air.PressurePa - boiling)
                / (subject.Plant.Fluid.DensityKgPerM3 * PhysicalConstants.GravityMPerS2);
            if (marginM >= ScarceM)
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Item(circulator.Item),
                marginM > 0
                    ? $"At the inlet of \"{circulator.Item}\" ({subject.Show(gauge, Shown.Gauge)}, {subject.Show(celsius, Shown.Temperature)}) only {subject.Show(marginM, Shown.Length)} of water column part the water from boiling."
                    : $"At the inlet of \"{circulator.Item}\" the pressure would be {subject.Show(gauge, Shown.Gauge)} at {subject.Show(celsius, Shown.Temperature)}, where water boils.",
                "Fill to a higher pressure, put the circulator lower or just behind the expansion vessel, or run it slower.",
                marginM < HopelessM ? Severity.WillNotWork : null
            );
        }
    }
}
