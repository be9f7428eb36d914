using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Verdicts;

/// <summary>The line that says what an edit changed: <c>set point 38 °C → 42 °C: floor 7.4 → 9.1 kW, flow 9.8 → 9.7 L/min</c>.</summary>
public static class ChangeLine
{
    /// <summary>Compares two answers.</summary>
    /// <param name="before">The answer before.</param>
    /// <param name="after">The answer after.</param>
    /// <param name="units">Units of the reader.</param>
    /// <param name="edit">What was edited, in words.</param>
    public static string Between(Answer before, Answer after, UnitSystem units, string edit)
    {
        var changes = new List<string>();
        void Add(string name, double? old, double? now, Shown shown)
        {
            if (old is not { } a || now is not { } b)
            {
                if (old is not null || now is not null)
                {
                    changes.Add($"{name} {Text(old, shown)} → {Text(now, shown)}");
                }

                return;
            }

            if (shown.Figure(a, units) != shown.Figure(b, units))
            {
                changes.Add($"{name} {shown.Figure(a, units)} → {shown.Format(b, units)}");
            }
        }

        string Text(double? value, Shown shown) =>
            value is { } si ? shown.Format(si, units) : "none";

        Add("loss", before.Space?.DesignLossW, after.Space?.DesignLossW, Shown.Heat);
        Add("floor", before.Floor?.OutputW, after.Floor?.OutputW, Shown.Heat);
        Add("supply", before.Floor?.SupplyC, after.Floor?.SupplyC, Shown.Temperature);
        Add("return", before.Floor?.ReturnC, after.Floor?.ReturnC, Shown.Temperature);
        Add("floor flow", FloorFlow(before), FloorFlow(after), Shown.Flow);
        Add(
            "heater flow",
            before.Plant?.Heater?.FlowM3PerS,
            after.Plant?.Heater?.FlowM3PerS,
            Shown.Flow
        );
        Add(
            "heater",
            before.Plant?.Heater?.DeliveredW,
            after.Plant?.Heater?.DeliveredW,
            Shown.Heat
        );
        Add("warm pressure", before.Plant?.Fill.WarmPa, after.Plant?.Fill.WarmPa, Shown.Gauge);
        Findings(before, after, changes);
        return changes.Count == 0
            ? $"{edit}: no figure changes"
            : $"{edit}: {string.Join(", ", changes)}";
    }

    private static double? FloorFlow(Answer answer) =>
        answer.Plant is null
            ? null
            : answer.Floor?.Loops.Sum(loop => loop.Running?.FlowM3PerS ?? 0);

    private static void Findings(Answer before, Answer after, List<string> changes)
    {
        var old = before
            .Review.Findings.Select(finding => finding.Rule)
            .ToHashSet(StringComparer.Ordinal);
        var now = after
            .Review.Findings.Select(finding => finding.Rule)
            .ToHashSet(StringComparer.Ordinal);
        changes.AddRange(
            after
                .Review.Findings.Where(finding => !old.Contains(finding.Rule))
                .Select(finding => $"new: {finding.Title}")
                .Distinct()
        );
        changes.AddRange(
            before
                .Review.Findings.Where(finding => !now.Contains(finding.Rule))
                .Select(finding => $"mended: {finding.Title}")
                .Distinct()
        );
    }
}
