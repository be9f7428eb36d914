using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Answers;
using Hypocaust.Building;
using Hypocaust.Design;
using Hypocaust.Problems;
using Construction = Hypocaust.Design.Construction;

namespace Hypocaust.Studies;

/// <summary>Takes the building of a design to its heat loss.</summary>
internal static class SpaceStudy
{
    /// <summary>Name under which the slab on the ground stands among the elements.</summary>
    public const string Ground = "ground";

    /// <summary>The heat loss with what the floor needs to know of the ground.</summary>
    /// <param name="Answer">For the person.</param>
    /// <param name="Grounds">Slab on the ground of each zone that has one.</param>
    public sealed record Outcome(
        SpaceAnswer Answer,
        ImmutableDictionary<string, SlabOnGround> Grounds
    );

    public static Result<Outcome> Solve(HeatingDesign design)
    {
        var problems = new List<Problem>();
        var grounds = ImmutableDictionary.CreateBuilder<string, SlabOnGround>(
            StringComparer.Ordinal
        );
        var how = new Dictionary<(string Zone, string Element), string>();
        var zones = new List<Zone>();
        foreach (var (name, zone) in design.Building.Zones)
        {
            zones.Add(ZoneOf(design, name, zone, grounds, how, problems));
        }

        if (problems.Count > 0)
        {
            return Result<Outcome>.Failed(problems);
        }

        var input = new HeatLossInput(
            [.. zones],
            design.Site.DesignOutdoor.Si,
            design.Site.AnnualMean.Si
        )
        {
            AltitudeM = design.Site.Altitude.Si,
            ThermalBridgeSupplementWPerM2K = design.Building.ThermalBridges.Si,
        };
        var loss = HeatLoss.Calculate(input);
        return loss.TryGet(out var found)
            ? new Outcome(AnswerOf(design, found, how), grounds.ToImmutable())
            : Result<Outcome>.Failed(
                loss.Problems.Select(problem => problem with { Place = "$.building" })
            );
    }

    private static Zone ZoneOf(
        HeatingDesign design,
        string name,
        ZoneDesign zone,
        ImmutableDictionary<string, SlabOnGround>.Builder grounds,
        Dictionary<(string, string), string> how,
        List<Problem> problems
    )
    {
        var elements = ImmutableArray.CreateBuilder<EnvelopeElement>();
        foreach (var (elementName, element) in zone.Elements ?? Named<Element>.Empty)
        {
            var path = DesignPlaces.Element(name, elementName);
            if (Transmittance(design, element, path, problems) is { } u)
            {
                how[(name, elementName)] = u.How;
                elements.Add(
                    new EnvelopeElement(elementName, element.Area.Si, u.Value, BoundaryOf(element))
                );
            }
        }

        if (zone.Ground is { } slab)
        {
            var ground = SlabOnGround.Create(GroundInput(design, name, slab));
            if (ground.TryGet(out var found))
            {
                grounds[name] = found;
                how[(name, Ground)] = GroundWords(found);
                elements.Add(
                    new EnvelopeElement(Ground, slab.Area.Si, found.UWPerM2K, new Boundary.Ground())
                    {
                        IsHeatedFloor = IsHeated(design, name),
                    }
                );
            }
            else
            {
                problems.AddRange(
                    ground.Problems.Select(problem =>
                        problem with
                        {
                            Place = DesignPlaces.Zone(name, "ground"),
                        }
                    )
                );
            }
        }

        return new Zone(
            name,
            zone.Indoor.Si,
            zone.FloorArea.Si,
            zone.Volume.Si,
            zone.AirChange.Si,
            elements.ToImmutable()
        );
    }

    private static bool IsHeated(HeatingDesign design, string zone) =>
        design.Floor is { } floor && floor.Loops.Any(loop => loop.Zone == zone);

    // where nobody states the floor's resistance, a heated floor tells it: what lies below its tube
    private static SlabOnGroundInput GroundInput(HeatingDesign design, string zone, GroundSlab slab)
    {
        var section = design.Floor?.Loops.FirstOrDefault(loop => loop.Zone == zone)?.Section;
        var resistance =
            slab.Resistance.IsAssumed && section is not null
                ? design.Floor!.Sections[section].Below.Si
                : slab.Resistance.Si;
        return new SlabOnGroundInput(
            slab.Area.Si,
            slab.ExposedPerimeter.Si,
            slab.WallThickness.Si,
            slab.Soil.Si,
            resistance
        )
        {
            Edge = slab.Edge is { } edge
                ? new Building.EdgeInsulation(
                    edge.Position == EdgePosition.Vertical,
                    edge.Reach.Si,
                    edge.Resistance.Si,
                    edge.Thickness.Si
                )
                : null,
        };
    }

    private static string GroundWords(SlabOnGround slab) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"ISO 13370: B′ = {slab.CharacteristicDimensionM:F2} m, equivalent thickness {slab.EquivalentThicknessM:F2} m, edge {slab.EdgeTransmittanceWPerMK:F2} W/mK"
        );

    private static Boundary BoundaryOf(Element element) =>
        element.Zone is { } zone ? new Boundary.OtherZone(zone)
        : element.FarSide is { } farSide ? new Boundary.UnheatedAt(farSide.Si)
        : new Boundary.Outside();

    private static (double Value, string How)? Transmittance(
        HeatingDesign design,
        Element element,
        string path,
        List<Problem> problems
    )
    {
        if (element.U is { } own)
        {
            return (own.Si, "given");
        }

        var construction = design.Building.Constructions![element.Construction!];
        if (construction.U is { } u)
        {
            return (u.Si, $"given for \"{element.Construction}\"");
        }

        var layered = LayeredElement.Create(
            element.Construction!,
            DirectionOf(element.Kind),
            LayersOf(construction)
        );
        if (layered.TryGet(out var made))
        {
            return (made.UWPerM2K, LayerWords(made));
        }

        problems.AddRange(layered.Problems.Select(problem => problem with { Place = path }));
        return null;
    }

    private static string LayerWords(LayeredElement made)
    {
        var layers = string.Join(
            " + ",
            made.Layers.Select(layer =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{layer.Name} {layer.EquivalentResistanceM2KPerW:F2}"
                )
            )
        );
        return string.Create(
            CultureInfo.InvariantCulture,
            $"ISO 6946: {made.InsideSurfaceM2KPerW:F2} + {layers} + {made.OutsideSurfaceM2KPerW:F2} m²K/W"
        );
    }

    private static HeatFlow DirectionOf(ElementKind kind) =>
        kind switch
        {
            ElementKind.Roof => HeatFlow.Upward,
            ElementKind.Floor => HeatFlow.Downward,
            _ => HeatFlow.Horizontal,
        };

    private static ImmutableArray<Building.Layer> LayersOf(Construction construction) =>
        [.. construction.Layers.Select(LayerOf)];

    private static Building.Layer LayerOf(Design.Layer layer)
    {
        if (layer.Resistance is { } resistance)
        {
            return new Building.Layer(layer.Material ?? "layer", resistance.Si);
        }

        var conductivity = ConductivityOf(layer.Material, layer.Conductivity);
        var name = layer.Material ?? "layer";
        return layer.Bridge is { } bridge
            ? Building.Layer.Bridged(
                name,
                layer.Thickness!.Value.Si,
                conductivity,
                ConductivityOf(bridge.Material, bridge.Conductivity),
                bridge.Share.Si
            )
            : Building.Layer.Of(name, layer.Thickness!.Value.Si, conductivity);
    }

    private static double ConductivityOf(string? material, Conductivity? given) =>
        given?.Si ?? MaterialTable.Find(material!).Value.ConductivityWPerMK;

    private static SpaceAnswer AnswerOf(
        HeatingDesign design,
        BuildingLoss loss,
        Dictionary<(string, string), string> how
    ) =>
        new(
            loss.Input.OutdoorDesignC,
            loss.TotalW,
            loss.WithoutHeatedFloorsW,
            [
                .. loss.Zones.Select(zone =>
                    ZoneAnswer(design.Building.Zones[zone.Zone.Name], zone, how)
                ),
            ]
        );

    private static ZoneLossAnswer ZoneAnswer(
        ZoneDesign design,
        ZoneLoss zone,
        Dictionary<(string, string), string> how
    ) =>
        new(
            zone.Zone.Name,
            zone.Zone.IndoorTemperatureC,
            zone.Zone.FloorAreaM2,
            zone.Zone.VolumeM3,
            zone.Zone.AirChangesPerHour,
            zone.TotalW,
            zone.WithoutHeatedFloorW,
            zone.Ventilation.AirHeatCapacityWhPerM3K * 3600,
            zone.Ventilation.HeatLossW,
            zone.ToOtherZonesW,
            [
                .. zone.Elements.Select(element => new ElementLossAnswer(
                    element.Element.Name,
                    KindOf(design, element.Element.Name),
                    element.Element.AreaM2,
                    element.Element.UWPerM2K,
                    element.ThermalBridgeSupplementWPerM2K,
                    zone.Zone.IndoorTemperatureC
                        - (element.TemperatureDifferenceK * element.Factor),
                    element.Element.IsHeatedFloor,
                    element.HeatLossW,
                    how[(zone.Zone.Name, element.Element.Name)]
                )),
            ]
        );

    private static string KindOf(ZoneDesign zone, string element) =>
        zone.Elements is { } elements && elements.TryGet(element, out var found)
            ? found.Kind.ToString().ToLowerInvariant()
            : Ground;
}
