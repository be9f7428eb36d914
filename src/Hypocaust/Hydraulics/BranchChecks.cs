using Hypocaust.Problems;

namespace Hypocaust.Hydraulics;

/// <summary>Says what is wrong with a node or a branch before any equation is written.</summary>
internal static class BranchChecks
{
    public static void Check(Node node, List<Problem> problems)
    {
        if (!double.IsFinite(node.ElevationM))
        {
            problems.Add(HydraulicsProblems.BadNumber(node.Id, "elevation", "a number of metres"));
        }

        if (node.GivenPressurePa is { } pressure && !double.IsFinite(pressure))
        {
            problems.Add(
                HydraulicsProblems.BadNumber(node.Id, "given pressure", "a number of pascals")
            );
        }
    }

    public static void Check(
        Branch branch,
        Dictionary<string, int> nodeIndex,
        List<Problem> problems
    )
    {
        foreach (var end in (string[])[branch.From, branch.To])
        {
            if (!nodeIndex.ContainsKey(end))
            {
                problems.Add(HydraulicsProblems.UnknownNode(branch.Id, end));
            }
        }

        if (branch.From == branch.To)
        {
            problems.Add(HydraulicsProblems.BranchToItself(branch.Id, branch.From));
        }

        foreach (var (quantity, value) in NotNegative(branch))
        {
            if (!(double.IsFinite(value) && value >= 0))
            {
                problems.Add(
                    HydraulicsProblems.BadNumber(branch.Id, quantity, "a number, 0 or more")
                );
            }
        }

        foreach (var (quantity, value) in Positive(branch))
        {
            if (value is { } given && !(double.IsFinite(given) && given > 0))
            {
                problems.Add(
                    HydraulicsProblems.BadNumber(branch.Id, quantity, "a number more than 0")
                );
            }
        }

        if (NeedsDiameter(branch) && !(branch.InnerDiameterM > 0))
        {
            problems.Add(HydraulicsProblems.NoDiameter(branch.Id));
        }
    }

    private static bool NeedsDiameter(Branch branch) =>
        branch.LengthM > 0
        || branch.LossCoefficient > 0
        || branch.ReverseLossCoefficient > 0
        || branch.Pump?.StoppedLossCoefficient > 0;

    private static IEnumerable<(string Quantity, double Value)> NotNegative(Branch branch)
    {
        yield return ("inside diameter", branch.InnerDiameterM);
        yield return ("length", branch.LengthM);
        yield return ("roughness", branch.RoughnessM);
        yield return ("loss coefficient", branch.LossCoefficient);
        yield return ("reverse loss coefficient", branch.ReverseLossCoefficient ?? 0);
        yield return ("cracking pressure", branch.CrackingPressurePa);
        if (branch.Pump is { } pump)
        {
            yield return ("pump's shut-off pressure", pump.ShutOffPressurePa);
            yield return ("pump's linear coefficient", pump.LinearPaSPerM3);
            yield return ("pump's quadratic coefficient", pump.QuadraticPaS2PerM6);
            yield return ("stopped pump's loss coefficient", pump.StoppedLossCoefficient ?? 0);
        }
    }

    private static IEnumerable<(string Quantity, double? Value)> Positive(Branch branch)
    {
        yield return ("Kv", branch.KvM3PerH);
        yield return ("stopped pump's Kv", branch.Pump?.StoppedKvM3PerH);
        yield return ("pump's reference density", branch.Pump?.ReferenceDensityKgPerM3);
    }
}
