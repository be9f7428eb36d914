using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Heating;

/// <summary>The heater must cover the loss of the building, of the floor and of the pipes.</summary>
public sealed class HeaterTooSmall()
    : ReviewRule(
        new()
        {
            Id = "heater-too-small",
            Title = "The heaters cannot cover the heat loss",
            Severity = Severity.WillNotWork,
            Why = "On the coldest day the building cools below the temperature you want.",
            LooksAt =
                "Power of all heaters against the design loss of the rooms, the loss of the floor downwards and that of the pipes.",
            Source = "EN 12828:2012, 4.2 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Plant | Needs.Space,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var plant = subject.Plant!;
        var room = subject.Space!.RoomLossW;
        var down = subject.Floor?.DownW ?? 0;
        var needed = room + down + plant.PipeLossW;
        var has = plant.Heaters.Sum(heater => heater.CapacityW);
        if (plant.Heaters.IsEmpty || has >= needed)
        {
            yield break;
        }

        yield return Find(
            DesignPlaces.Item(plant.Heaters[0].Item, "part"),
            $"The coldest day takes {subject.Show(needed, Shown.Heat)} (rooms {subject.Show(room, Shown.Heat)}, downwards {subject.Show(down, Shown.Heat)}, pipes {subject.Show(plant.PipeLossW, Shown.Heat)}); the heaters give {subject.Show(has, Shown.Heat)} at most.",
            $"Take a heater of {subject.Show(needed, Shown.Heat)} or more, or insulate better."
        );
    }
}
