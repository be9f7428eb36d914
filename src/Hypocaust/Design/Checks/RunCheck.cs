using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design.Checks;

/// <summary>Checks the runs: every step fits its part, no port is used twice, none stays open.</summary>
internal static class RunCheck
{
    private static readonly Place Plant = Place.Root.Member("plant");
    private static readonly Place Runs = Plant.Member("runs");

    public static void Report(PlantDesign plant, PartLookup parts, CheckReport report)
    {
        var used = new Dictionary<string, Place>();
        var allRead = !report.IsClouded(Runs);
        for (var r = 0; r < plant.Runs.Length; r++)
        {
            var place = Runs.Item(r);
            ReportPipe(plant.Runs[r], place, parts, report);
            var route = RunRoute.Read(plant.Runs[r], r, parts.OfItem);
            if (route.TryGet(out var joins))
            {
                UsePorts(plant.Runs[r], joins, place.Member("run"), used, report);
            }
            else
            {
                allRead = false;
                ReportSteps(route.Problems, plant, place.Member("run"), report);
            }
        }

        // in a run that could not be followed any item may be the one that seems to be missing here
        if (allRead)
        {
            ReportOpenPorts(plant, parts, used, report);
        }
    }

    private static void ReportPipe(PipeRun run, Place place, PartLookup parts, CheckReport report)
    {
        var at = place.Member("pipe");
        if (!parts.TryGet(run.Pipe, out var pipe))
        {
            report.Refer("pipe", run.Pipe, parts, at);
        }
        else if (pipe is not PipePart)
        {
            report.Add(at, CheckProblems.NotOfKind(run.Pipe, "a pipe"));
        }
    }

    private static void ReportSteps(
        IEnumerable<Problem> problems,
        PlantDesign plant,
        Place run,
        CheckReport report
    )
    {
        foreach (var problem in problems)
        {
            var place = Place.Parse("$" + problem.Place) is { Parent: not null } step
                ? run.Item(step.Index)
                : run;
            if (problem.Code == DesignProblems.PipeAsItemCode)
            {
                continue; // reported at the item
            }

            if (problem.Code != DesignProblems.NoSuchItemCode)
            {
                report.Add(place, problem);
                continue;
            }

            // an item that is there but whose part is unknown has been reported as such
            var item = plant.Runs[run.Parent!.Index].Run[place.Index].Item!;
            report.Refer("item", item, plant.Items, place, Plant.Member("items"));
        }
    }

    // A part on a tee in the middle of a run ends one join and starts the next: one use of its port, at one step
    private static void UsePorts(
        PipeRun run,
        IEnumerable<Join> joins,
        Place place,
        Dictionary<string, Place> used,
        CheckReport report
    )
    {
        PortAddress? passed = null;
        foreach (var join in joins)
        {
            var before = join.Step - 1;
            while (run.Run[before].IsPipe)
            {
                before--;
            }

            if (join.From != passed)
            {
                Use(join.From, place.Item(before), used, report);
            }

            Use(join.To, place.Item(join.Step), used, report);
            passed = join.To;
        }
    }

    private static void Use(
        PortAddress port,
        Place place,
        Dictionary<string, Place> used,
        CheckReport report
    )
    {
        if (!used.TryAdd(port.ToString(), place))
        {
            report.Add(place, CheckProblems.PortTwice(port, used[port.ToString()].ToString()));
        }
    }

    private static void ReportOpenPorts(
        PlantDesign plant,
        PartLookup parts,
        Dictionary<string, Place> used,
        CheckReport report
    )
    {
        foreach (var (name, item) in plant.Items)
        {
            if (parts.Find(item.Part) is not { } part)
            {
                continue;
            }

            var place = Plant.Member("items").Member(name);
            var ports = Ports.Of(part);
            var open = ports
                .Where(port => !used.ContainsKey(new PortAddress(name, port).ToString()))
                .ToList();
            if (open.Count == ports.Length && !ports.IsEmpty)
            {
                report.Add(place, CheckProblems.NotPiped());
            }
            else if (!Ports.MayStayOpen(item, part))
            {
                open.ForEach(port => report.Add(place, CheckProblems.PortOpen(port)));
            }
        }
    }
}
