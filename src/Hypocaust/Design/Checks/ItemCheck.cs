using Hypocaust.Design.Source;

namespace Hypocaust.Design.Checks;

/// <summary>Checks the items of the plant: their part is known and every setting belongs to it.</summary>
internal static class ItemCheck
{
    private static readonly Place Items = Place.Root.Member("plant").Member("items");

    public static void Report(PlantDesign plant, PartLookup parts, CheckReport report)
    {
        foreach (var (name, item) in plant.Items)
        {
            var place = Items.Member(name);
            if (!parts.TryGet(item.Part, out var part))
            {
                report.Refer("part", item.Part, parts, place.Member("part"));
                continue;
            }

            if (part is PipePart)
            {
                report.Add(place.Member("part"), CheckProblems.PipeAsItem(item.Part));
                continue;
            }

            ReportForeignSettings(item, part, place, report);
            ReportNeededSettings(item, part, place, report);
        }
    }

    private static void ReportForeignSettings(
        PlantItem item,
        Part part,
        Place place,
        CheckReport report
    )
    {
        void Check(bool isSet, bool belongs, string setting, string owner)
        {
            if (isSet && !belongs)
            {
                report.Add(
                    place.Member(setting),
                    CheckProblems.SettingDoesNotBelong(setting, owner)
                );
            }
        }

        Check(item.SetPoint is not null, part is HeaterPart, "setPoint", "a heater");
        Check(item.Speed is not null, part is CirculatorPart, "speed", "a circulator");
        Check(item.Off, part is HeaterPart or CirculatorPart, "off", "a heater or circulator");
        Check(item.Shut, CanBeShut(part), "shut", "a shut-off or purge valve");
        Check(item.Precharge is not null, part is VesselPart, "precharge", "an expansion vessel");
    }

    private static bool CanBeShut(Part part) =>
        part is InlinePart { Function: InlineFunction.ShutOff or InlineFunction.Purge };

    private static void ReportNeededSettings(
        PlantItem item,
        Part part,
        Place place,
        CheckReport report
    )
    {
        if (part is HeaterPart && item is { SetPoint: null, Off: false })
        {
            report.Add(place.Member("setPoint"), CheckProblems.SetPointMissing());
        }

        if (part is not CirculatorPart { Speeds: { IsEmpty: false } speeds })
        {
            return;
        }

        if (item.Speed is null && speeds.Length > 1)
        {
            report.Add(place.Member("speed"), CheckProblems.SpeedMissing(speeds.Length));
        }
        else if (item.Speed > speeds.Length)
        {
            report.Add(
                place.Member("speed"),
                CheckProblems.SpeedTooHigh(item.Speed.Value, speeds.Length)
            );
        }
    }
}
