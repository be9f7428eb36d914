using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Floor;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>Heat that goes down is lost.</summary>
public sealed class InsulationBelowTooThin()
    : ReviewRule(
        new()
        {
            Id = "insulation-below-too-thin",
            Title = "The insulation below the heated floor is too thin",
            Severity = Severity.Poor,
            Why =
                "Too much of the heat goes into the ground or the cold space below, all year and for ever.",
            LooksAt =
                "Resistance below the tube against the least value for what lies below: heated room, ground or unheated room, outside air.",
            Source = "EN 1264-4, table 1 (from memory)",
            Page = Pages.Floor,
            Needs = Needs.Design,
        }
    )
{
    private const double OutsideWithinK = 2;
    private const double HeatedWithinK = 4;

    // two decimals are what an R-value is written with
    private const double Slack = 0.005;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var design = subject.Design;
        foreach (var (name, section) in design.Floor?.Sections ?? Named<FloorBuildUp>.Empty)
        {
            var loop = design.Floor!.Loops.FirstOrDefault(one => one.Section == name);
            if (
                loop is null
                || Least(design, section, loop.Zone) is var least
                    && section.Below.Si >= least - Slack
            )
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Section(name, "below"),
                $"Below the tube of \"{name}\" lie {subject.Show(section.Below.Si, Shown.Resistance)}; {subject.Show(least, Shown.Resistance)} is the least.",
                $"Insulate to {subject.Show(least, Shown.Resistance)} or more; your local code may ask for far more."
            );
        }
    }

    private static double Least(HeatingDesign design, FloorBuildUp section, string zone)
    {
        var outdoor = design.Site.DesignOutdoor.Si;
        if (section.BelowTemperature is not { } below)
        {
            return MinimumInsulation.For(BelowFloor.UnheatedRoomOrGround).ResistanceM2KPerW;
        }

        var room = design.Building.Zones.TryGet(zone, out var found) ? found.Indoor.Si : below.Si;
        if (below.Si > outdoor + OutsideWithinK)
        {
            var isHeated = below.Si >= room - HeatedWithinK;
            return MinimumInsulation
                .For(isHeated ? BelowFloor.HeatedRoom : BelowFloor.UnheatedRoomOrGround)
                .ResistanceM2KPerW;
        }

        // the table ends at -15 °C; its last row is the least that holds below it too
        return (
            MinimumInsulation.ForOutside(outdoor).TryGet(out var least)
                ? least
                : MinimumInsulation.For(BelowFloor.OutsideToMinus15)
        ).ResistanceM2KPerW;
    }
}
