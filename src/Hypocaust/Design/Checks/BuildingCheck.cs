using Hypocaust.Building;
using Hypocaust.Design.Source;

namespace Hypocaust.Design.Checks;

/// <summary>Checks constructions and the elements of zones.</summary>
internal static class BuildingCheck
{
    private static readonly Place Building = Place.Root.Member("building");

    public static void Report(BuildingDesign building, CheckReport report)
    {
        var constructions = Building.Member("constructions");
        foreach (var (name, construction) in building.Constructions)
        {
            ReportConstruction(construction, constructions.Member(name), report);
        }

        var zones = Building.Member("zones");
        if (building.Zones.Count == 0)
        {
            report.Add(zones, CheckProblems.NoZone());
        }

        foreach (var (zoneName, zone) in building.Zones)
        {
            var elements = zones.Member(zoneName).Member("elements");
            foreach (var (name, element) in zone.Elements)
            {
                ReportElement(element, zoneName, building, elements.Member(name), report);
            }
        }
    }

    private static void ReportConstruction(
        Construction construction,
        Place place,
        CheckReport report
    )
    {
        if (construction.Layers.IsEmpty && construction.U is null)
        {
            report.Add(place, CheckProblems.ConstructionUndefined());
        }
        else if (!construction.Layers.IsEmpty && construction.U is not null)
        {
            report.Add(place, CheckProblems.DefinedTwice("layers", "u"));
        }

        for (var i = 0; i < construction.Layers.Length; i++)
        {
            ReportLayer(construction.Layers[i], place.Member("layers").Item(i), report);
        }
    }

    private static void ReportLayer(Layer layer, Place place, CheckReport report)
    {
        if (layer is { Resistance: not null, Material: not null })
        {
            report.Add(place, CheckProblems.DefinedTwice("resistance", "material"));
        }
        else if (layer is { Resistance: not null, Conductivity: not null })
        {
            report.Add(place, CheckProblems.DefinedTwice("resistance", "conductivity"));
        }
        else if (layer is { Material: not null, Conductivity: not null })
        {
            report.Add(place, CheckProblems.DefinedTwice("material", "conductivity"));
        }
        else if (layer is { Resistance: null, Material: null, Conductivity: null })
        {
            report.Add(place, CheckProblems.LayerUndefined());
        }
        else if (layer is { Thickness: null } and ({ Resistance: null } or { Bridge: not null }))
        {
            var why = layer.Bridge is not null ? "studs" : "a conductivity";
            report.Add(place, CheckProblems.ThicknessMissing(why));
        }

        ReportMaterial(layer.Material, place, report);
        if (layer.Bridge is { } bridge)
        {
            ReportBridge(bridge, place.Member("bridge"), report);
        }
    }

    private static void ReportBridge(Bridge bridge, Place place, CheckReport report)
    {
        if (bridge is { Material: null, Conductivity: null })
        {
            report.Add(place, CheckProblems.BridgeUndefined());
        }
        else if (bridge is { Material: not null, Conductivity: not null })
        {
            report.Add(place, CheckProblems.DefinedTwice("material", "conductivity"));
        }

        ReportMaterial(bridge.Material, place, report);
    }

    private static void ReportMaterial(string? material, Place place, CheckReport report)
    {
        if (material is not null && !MaterialTable.Find(material).Succeeded)
        {
            report.Add(
                place.Member("material"),
                CheckProblems.UnknownName("material", material, MaterialTable.Names)
            );
        }
    }

    private static void ReportElement(
        Element element,
        string ownZone,
        BuildingDesign building,
        Place place,
        CheckReport report
    )
    {
        if (element is { Construction: null, U: null })
        {
            report.Add(place, CheckProblems.ElementUndefined());
        }
        else if (element is { Construction: not null, U: not null })
        {
            report.Add(place, CheckProblems.DefinedTwice("construction", "u"));
        }

        if (element is { Zone: not null, FarSide: not null })
        {
            report.Add(place, CheckProblems.DefinedTwice("zone", "farSide"));
        }

        if (element.Construction is { } construction)
        {
            report.Refer(
                "construction",
                construction,
                building.Constructions,
                place.Member("construction"),
                Building.Member("constructions")
            );
        }

        if (element.Zone == ownZone)
        {
            report.Add(place.Member("zone"), CheckProblems.ZoneBesideItself(ownZone));
        }
        else if (element.Zone is { } zone)
        {
            report.Refer(
                "zone",
                zone,
                building.Zones,
                place.Member("zone"),
                Building.Member("zones")
            );
        }
    }
}
