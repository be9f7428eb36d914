using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>A relief valve that works near its setting drips and furs up.</summary>
public sealed class WarmPressureNearRelief()
    : ReviewRule(
        new()
        {
            Id = "warm-pressure-near-relief",
            Title = "The warm pressure comes close to the relief valve's setting",
            Severity = Severity.Poor,
            Why =
                "Relief valves begin to leak shortly below their setting; one that drips often no longer closes well.",
            LooksAt =
                "Running pressure at each relief valve, pump included, against its setting less 0.5 bar, or less a tenth where that is more.",
            Source = "EN 12828:2012, annex D (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Plant,
            CausedBy =
            [
                typeof(ExpansionVesselMissing),
                typeof(ExpansionVesselTooSmall),
                typeof(ExpansionVesselCutOff),
                typeof(Piping.CircuitWithoutHeater),
            ],
        }
    )
{
    private const double LeastGapPa = 0.5e5;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var plant = subject.Plant!;
        foreach (var (placed, part) in subject.Graph!.Parts<ReliefPart>())
        {
            var opens = part.Opens.Si;
            var limit = opens - Math.Max(LeastGapPa, opens / 10);
            var isFull = plant.Fill.VesselM3 is not null && plant.Fill.WarmPa is null;
            var pressure = subject.ItemAnswer(placed.Name).PressurePa;
            if (!isFull && !(pressure > limit))
            {
                continue;
            }

            var what = isFull
                ? $"The expansion vessel is full before the water is warm, so \"{placed.Name}\" opens at {subject.Show(opens, Shown.Gauge)}."
                : $"Warm and running, \"{placed.Name}\" stands at {subject.Show(pressure!.Value, Shown.Gauge)}; it opens at {subject.Show(opens, Shown.Gauge)} and should see no more than {subject.Show(limit, Shown.Gauge)}.";
            yield return Find(
                DesignPlaces.Item(placed.Name),
                what,
                "Fill to a lower pressure, take a larger vessel, or a relief valve with a higher setting if every part stands it.",
                isFull ? Severity.WillNotWork : null
            );
        }
    }
}
