using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.HeatedFloor;

/// <summary>The warmest water that a zone's loops may get, and why.</summary>
/// <param name="What">What sets the limit, in words.</param>
/// <param name="Celsius">Warmest supply, °C.</param>
/// <source>55 °C in cement screed: EN 1264-4 (from memory); others as the parts state</source>
internal sealed record SupplyLimit(string What, double Celsius)
{
    private const double ScreedC = 55;

    /// <summary>The lowest of the limits of screed, tubes and heaters.</summary>
    public static SupplyLimit Of(ReviewSubject subject, FloorZoneAnswer zone)
    {
        var tubes = subject
            .Graph!.Branches.OfType<PlantBranch.InLoop>()
            .Where(loop => loop.Loop.Zone == zone.Name && loop.Tube.MaxTemperature is not null)
            .Select(loop => new SupplyLimit("the tube", loop.Tube.MaxTemperature!.Value.Si));
        var heaters = subject
            .Graph.Parts<HeaterPart>()
            .Where(heater => heater.Part.MaxTemperature is not null)
            .Select(heater => new SupplyLimit("the heater", heater.Part.MaxTemperature!.Value.Si));
        return tubes
            .Concat(heaters)
            .Append(new SupplyLimit("the screed", ScreedC))
            .MinBy(limit => limit.Celsius)!;
    }
}
