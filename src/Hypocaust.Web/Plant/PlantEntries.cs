using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Quantities;
using Hypocaust.Web.Entries;
using Hypocaust.Web.Session;

namespace Hypocaust.Web.Plant;

/// <summary>The values of the plant that matter most: set points and speeds.</summary>
internal static class PlantEntries
{
    /// <summary>Path and label of every heater's set point.</summary>
    public static IEnumerable<(string Path, string Label)> SetPoints(Moment moment) =>
        moment.Answer.Plant is { } plant
            ? plant.Heaters.Select(heater =>
                (Of(heater.Item, "setPoint"), $"Set point, {heater.Item}")
            )
            : [];

    /// <summary>Path, label and choices of every circulator's speed.</summary>
    public static IEnumerable<(string Path, string Label, ImmutableArray<Choice> Choices)> Speeds(
        Moment moment
    ) =>
        moment.Answer.Plant is { } plant
            ? plant.Circulators.Select(pump =>
                (Of(pump.Item, "speed"), $"Speed, {pump.Item}", SpeedsUpTo(pump.Speeds))
            )
            : [];

    /// <summary>What the floor needs, beside the set point; null where that is not known.</summary>
    public static string? SetPointHint(Moment moment) =>
        moment.Answer.Floor?.RequiredSupplyC is { } required
            ? $"The floor needs {Shown.Temperature.Format(required, moment.Units)} water on the coldest day."
            : null;

    /// <summary>When the fluid freezes, beside its kind; null without a plant.</summary>
    public static string? FluidHint(Moment moment) =>
        moment.Answer.Plant is { } plant
            ? $"Freezes at {Shown.Temperature.Format(plant.Fluid.FreezingPointC, moment.Units)}."
            : null;

    private static ImmutableArray<Choice> SpeedsUpTo(int speeds) =>
        [
            .. Enumerable
                .Range(1, speeds)
                .Select(speed => new Choice(
                    speed.ToString(CultureInfo.InvariantCulture),
                    string.Create(CultureInfo.InvariantCulture, $"{speed} of {speeds}")
                )),
        ];

    private static string Of(string item, string member) =>
        DesignPath.Member(DesignPath.Member("$.plant.items", item), member);
}
