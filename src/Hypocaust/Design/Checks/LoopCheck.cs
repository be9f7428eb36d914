using Hypocaust.Design.Source;

namespace Hypocaust.Design.Checks;

/// <summary>Checks the loops of the floor: zone, section, tube and manifold are there and fit.</summary>
internal sealed class LoopCheck(
    HeatingDesign design,
    FloorDesign floor,
    PartLookup parts,
    CheckReport report
)
{
    private static readonly Place Floor = Place.Root.Member("floor");
    private static readonly Place Items = Place.Root.Member("plant").Member("items");

    private readonly Dictionary<string, int> loopsOf = new(StringComparer.Ordinal);
    private readonly List<string> manifolds =
        design
            .Plant?.Items.Where(item => parts.Find(item.Value.Part) is ManifoldPart)
            .Select(item => item.Key)
            .ToList()
        ?? [];

    public void Report()
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < floor.Loops.Length; i++)
        {
            var loop = floor.Loops[i];
            var place = Floor.Member("loops").Item(i);
            if (!names.Add(loop.Name))
            {
                report.Add(place.Member("name"), CheckProblems.NameTwice("loop", loop.Name));
            }

            ReportReferences(loop, place);
            ReportManifold(loop, place.Member("manifold"));
        }
    }

    private void ReportReferences(LoopDesign loop, Place place)
    {
        var zones = Place.Root.Member("building").Member("zones");
        report.Refer("zone", loop.Zone, design.Building.Zones, place.Member("zone"), zones);
        var sections = Floor.Member("sections");
        report.Refer(
            "floor section",
            loop.Section,
            floor.Sections,
            place.Member("section"),
            sections
        );
        if (!parts.TryGet(loop.Tube, out var tube))
        {
            report.Refer("tube", loop.Tube, parts, place.Member("tube"));
        }
        else if (tube is not PipePart)
        {
            report.Add(place.Member("tube"), CheckProblems.NotOfKind(loop.Tube, "a tube"));
        }
    }

    private void ReportManifold(LoopDesign loop, Place place)
    {
        if (loop.Manifold is null && manifolds.Count > 1)
        {
            report.Add(place, CheckProblems.WhichManifold(manifolds));
            return;
        }

        var name = loop.Manifold ?? manifolds.FirstOrDefault();
        if (name is null)
        {
            return;
        }

        var items = design.Plant?.Items ?? Named<PlantItem>.Empty;
        if (!items.TryGet(name, out var item))
        {
            report.Refer("manifold", name, manifolds, place, Items);
        }
        else if (parts.Find(item.Part) is not { } part)
        {
            return; // the unknown part has been reported at the item
        }
        else if (part is not ManifoldPart manifold)
        {
            report.Add(place, CheckProblems.NotOfKind(name, "a manifold"));
        }
        else if ((loopsOf[name] = loopsOf.GetValueOrDefault(name) + 1) > manifold.Outlets)
        {
            report.Add(place, CheckProblems.TooManyLoops(name, manifold.Outlets));
        }
    }
}
