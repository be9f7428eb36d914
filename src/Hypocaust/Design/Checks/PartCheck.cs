using Hypocaust.Design.Source;

namespace Hypocaust.Design.Checks;

/// <summary>Checks the parts on the shelf, each for itself.</summary>
internal static class PartCheck
{
    private const int FewestPoints = 3;

    public static void Report(Named<Part> parts, CheckReport report)
    {
        foreach (var (name, part) in parts)
        {
            var place = Place.Root.Member("parts").Member(name);
            switch (part)
            {
                case PipePart pipe when pipe.Outer.Si <= pipe.Inner.Si:
                    report.Add(place.Member("outer"), CheckProblems.NoWall());
                    break;
                case CirculatorPart circulator:
                    ReportCirculator(circulator, place.Member("speeds"), report);
                    break;
                default:
                    break;
            }
        }
    }

    private static void ReportCirculator(CirculatorPart circulator, Place place, CheckReport report)
    {
        if (circulator.Speeds.IsEmpty)
        {
            report.Add(place, CheckProblems.NoSpeeds());
        }

        for (var i = 0; i < circulator.Speeds.Length; i++)
        {
            ReportCurve(circulator.Speeds[i], place.Item(i).Member("curve"), report);
        }
    }

    private static void ReportCurve(PumpSpeed speed, Place place, CheckReport report)
    {
        // a point that could not be read would make its neighbours look wrong
        if (report.IsClouded(place))
        {
            return;
        }

        if (speed.Curve.Length < FewestPoints)
        {
            report.Add(place, CheckProblems.TooFewPoints());
        }

        for (var i = 1; i < speed.Curve.Length; i++)
        {
            if (speed.Curve[i].Flow.Si <= speed.Curve[i - 1].Flow.Si)
            {
                report.Add(place.Item(i), CheckProblems.FlowNotRising());
            }
            else if (speed.Curve[i].Head.Si >= speed.Curve[i - 1].Head.Si)
            {
                report.Add(place.Item(i), CheckProblems.HeadNotFalling());
            }
        }
    }
}
