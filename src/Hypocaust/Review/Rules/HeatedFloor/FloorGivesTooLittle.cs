using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>The floor must give each zone what it loses.</summary>
public sealed class FloorGivesTooLittle()
    : ReviewRule(
        new()
        {
            Id = "floor-gives-too-little",
            Title = "The floor gives a zone less than it needs",
            Severity = Severity.WillNotWork,
            Why = "On the coldest day the zone cools below the temperature you want.",
            LooksAt =
                "Heat of the loops of each zone against the design loss of the zone without its heated floor; whether a warmer supply would do within the limits of surface, screed, tube and heater.",
            Source = "EN 1264-3 (from memory)",
            Page = Pages.Floor,
            Needs = Needs.Floor | Needs.Plant,
            CausedBy =
            [
                typeof(Heating.HeaterMissing),
                typeof(Heating.HeaterTooSmall),
                typeof(Heating.SwitchedOff),
                typeof(Circulation.CirculatorMissing),
                typeof(Circulation.HeaterFlowBelowMinimum),
                typeof(Circulation.HeaterPipedBackwards),
                typeof(Circulation.ShutValveStopsFlow),
                typeof(Circulation.CheckValveHoldsBack),
                typeof(Circulation.CirculatorMovesNothing),
                typeof(Circulation.CirculatorPipedBackwards),
                typeof(Piping.CircuitWithoutHeater),
            ],
        }
    )
{
    private const string Other =
        "Lay the tube closer or over more area, take a thinner covering, insulate the building better, or add another source of heat.";

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        foreach (var zone in subject.Floor!.Zones)
        {
            if (zone.OutputW is not { } gives || gives >= zone.NeededW)
            {
                continue;
            }

            var (says, remedy) = Advise(subject, zone);
            yield return Find(
                DesignPlaces.Zone(zone.Name),
                $"Zone \"{zone.Name}\" needs {subject.Show(zone.NeededW, Shown.SmallHeat)} on the coldest day and gets {subject.Show(gives, Shown.SmallHeat)}{says}.",
                remedy
            );
        }
    }

    private static (string Says, string Remedy) Advise(ReviewSubject subject, FloorZoneAnswer zone)
    {
        if (zone.RequiredSupplyC is not { } required)
        {
            return ("; no supply temperature would do as the loops stand", Other);
        }

        var supply = subject.Show(required, Shown.Temperature);
        var needed = $"; it would need water of {supply}";
        if (SupplyLimit.Of(subject, zone) is { } limit && required > limit.Celsius)
        {
            return (
                $"{needed}, more than the {subject.Show(limit.Celsius, Shown.Temperature)} that {limit.What} allows",
                Other
            );
        }

        var flux = zone.NeededW / zone.HeatedAreaM2;
        var least = subject
            .Floor!.Loops.Where(loop => loop.Zone == zone.Name)
            .Min(loop => loop.LimitFluxWPerM2);
        return flux > least
            ? (
                $"; {subject.Show(flux, Shown.Flux)} is more than the {subject.Show(least.Value, Shown.Flux)} that the surface limit allows",
                Other
            )
            : ($"{needed}, which the limits allow", $"Raise the supply to {supply}.");
    }
}
