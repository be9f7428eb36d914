using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Expansion;

/// <summary>The filling pressure must lift the water over the highest point.</summary>
public sealed class ColdFillTooLow()
    : ReviewRule(
        new()
        {
            Id = "cold-fill-too-low",
            Title = "The filling pressure is too low for the height of the plant",
            Severity = Severity.Poor,
            Why =
                "At the highest point the pressure falls below atmosphere, air is drawn in at vents and collects where it stops the flow.",
            LooksAt =
                "Cold filling pressure less the weight of the water up to the highest item: 0.3 bar should remain there; below 0 it will not work.",
            Source = "EN 12828:2012, annex D (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    private const double LeastAtTopPa = 0.3e5;

    /// <summary>Weight of the water between the vessel (without one, the lowest item) and the highest item, Pa.</summary>
    internal static double ColumnPa(ReviewSubject subject)
    {
        var items = subject.Graph!.Items;
        var top = items.Max(item => item.Item.Height.Si);
        var vessel = items.FirstOrDefault(item => item.Part is VesselPart);
        var from = vessel?.Item.Height.Si ?? items.Min(item => item.Item.Height.Si);
        return Math.Max(0, top - from)
            * subject.Plant!.Fluid.DensityKgPerM3
            * PhysicalConstants.GravityMPerS2;
    }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var coldPa = subject.Plant!.Fill.ColdPa;
        var column = ColumnPa(subject);
        var atTop = coldPa - column;
        if (atTop >= LeastAtTopPa)
        {
            yield break;
        }

        var highest = subject.Graph!.Items.MaxBy(item => item.Item.Height.Si)!;
        yield return Find(
            DesignPlaces.Plant("coldFill"),
            $"Filled to {subject.Show(coldPa, Shown.Gauge)}, only {subject.Show(atTop, Shown.Gauge)} remain at \"{highest.Name}\", {subject.Show(highest.Item.Height.Si, Shown.Length)} above the floor.",
            $"Fill the cold system to {subject.Show(column + LeastAtTopPa, Shown.Gauge)} or more, with the vessel's precharge {subject.Show(LeastAtTopPa, Shown.Gauge)} below that.",
            atTop < 0 ? Severity.WillNotWork : null
        );
    }
}
