using Hypocaust.Design.Source;

namespace Hypocaust.Design.Checks;

/// <summary>Checks what a design says against itself: names that lead somewhere, ports that fit, one definition for each thing.</summary>
internal static class ReferenceCheck
{
    /// <summary>Reports every problem of a design that could be read.</summary>
    public static void Report(HeatingDesign design, CheckReport report)
    {
        var parts = new PartLookup(design);
        BuildingCheck.Report(design.Building, report);
        PartCheck.Report(design.Parts, report);
        if (design.Plant is { } plant)
        {
            ItemCheck.Report(plant, parts, report);
            RunCheck.Report(plant, parts, report);
        }

        if (design.Floor is { } floor)
        {
            new LoopCheck(design, floor, parts, report).Report();
        }
    }
}
