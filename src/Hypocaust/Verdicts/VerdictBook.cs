using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Verdicts;

/// <summary>The verdict of each page: one or two plain sentences with the numbers that decide.</summary>
public static class VerdictBook
{
    /// <summary>How much heat is needed, and where most of it goes.</summary>
    public static Verdict Space(Answer answer, UnitSystem units)
    {
        var writer = new VerdictWriter(units);
        if (answer.Space is not { } space)
        {
            return Missing(answer, writer);
        }

        writer
            .Say("On the coldest day, ")
            .Number(space.OutdoorC, Shown.Temperature, "space.outdoorC")
            .Say($" outside, {answer.Name} loses ")
            .Number(space.DesignLossW, Shown.Heat, "space.designLossW")
            .Say(".");
        var largest = LargestLoss(space);
        return space.DesignLossW <= 0
            ? writer.Done()
            : writer
                .Say($" Most of it, ")
                .Number(largest.LossW, Shown.Heat, largest.Path)
                .Say(
                    $" or {Shown.Share.Format(largest.LossW / space.DesignLossW, units)}, goes {largest.Way}."
                )
                .Done();
    }

    /// <summary>Whether the floor keeps the rooms warm.</summary>
    public static Verdict Floor(Answer answer, UnitSystem units)
    {
        var writer = new VerdictWriter(units);
        if (answer.Floor is not { } floor)
        {
            return answer.Space is not null && answer.Problems.IsEmpty
                ? writer.Say("There is no heated floor in this design yet.").Done()
                : Missing(answer, writer);
        }

        writer
            .Say("On the coldest day the rooms need ")
            .Number(floor.NeededW, Shown.Heat, "floor.neededW")
            .Say(" from the floor. ");
        if (floor.OutputW is not { } output || floor.SupplyC is not { } supply)
        {
            return WithoutWater(floor, writer);
        }

        writer
            .Say("It gives ")
            .Number(output, Shown.Heat, "floor.outputW")
            .Say(" with ")
            .Number(supply, Shown.Temperature, "floor.supplyC")
            .Say(" water, ");
        return floor.Holds == true
            ? Holding(floor, output, writer, units)
            : Falling(floor, writer, units);
    }

    /// <summary>What flows where.</summary>
    public static Verdict Plant(Answer answer, UnitSystem units)
    {
        var writer = new VerdictWriter(units);
        if (answer.Plant is not { } plant)
        {
            return answer.Problems.IsEmpty
                ? writer.Say("There is no piping in this design yet.").Done()
                : Missing(answer, writer);
        }

        if (!plant.Convergence.Converged)
        {
            writer.Say($"These figures are not a solution: {plant.Convergence.Status} ");
        }

        PlantVerdict.Flows(answer, plant, writer);
        PlantVerdict.Heater(plant, writer, units);
        return writer.Done();
    }

    /// <summary>What is unsafe or missing.</summary>
    public static Verdict Review(Answer answer, UnitSystem units)
    {
        var findings = answer.Review.Findings;
        int Count(Severity severity) => findings.Count(finding => finding.Severity == severity);
        var serious = findings.Length - Count(Severity.Note);
        var writer = new VerdictWriter(units);
        if (serious == 0)
        {
            writer.Say("Nothing here is unsafe or missing by the rules that were asked.");
        }
        else
        {
            var words = new[]
            {
                Counted(Count(Severity.Danger), "danger", "dangers"),
                Counted(
                    Count(Severity.WillNotWork),
                    "thing that will not work",
                    "things that will not work"
                ),
                Counted(Count(Severity.Poor), "thing done poorly", "things done poorly"),
            }.Where(word => word.Length > 0);
            writer.Say(
                $"There {(serious == 1 ? "is" : "are")} {Joined([.. words])} here. The gravest: {findings[0].Title.ToLowerInvariant()}."
            );
        }

        return writer
            .Say(
                $" {Counted(answer.Review.RulesAsked, "rule was", "rules were")} asked; local codes and licensed trades decide."
            )
            .Done();
    }

    private static Verdict WithoutWater(FloorAnswer floor, VerdictWriter writer) =>
        floor.RequiredSupplyC is { } required
            ? writer
                .Say("It gives that with ")
                .Number(required, Shown.Temperature, "floor.requiredSupplyC")
                .Say(" water, once a plant sends it.")
                .Done()
            : writer.Say("No warm water reaches it.").Done();

    private static Verdict Holding(
        FloorAnswer floor,
        double output,
        VerdictWriter writer,
        UnitSystem units
    )
    {
        var temperatures = floor
            .Zones.Select(zone => Shown.Temperature.Format(zone.IndoorC, units))
            .Distinct();
        var spare = floor.NeededW > 0 ? (output / floor.NeededW) - 1 : 0;
        writer.Say(
            $"so it holds {Joined([.. temperatures])} with {Shown.Share.Format(spare, units)} to spare."
        );
        if (floor.RequiredSupplyC is { } required)
        {
            writer
                .Say(" It would do so with ")
                .Number(required, Shown.Temperature, "floor.requiredSupplyC")
                .Say(".");
        }

        return writer.Done();
    }

    private static Verdict Falling(FloorAnswer floor, VerdictWriter writer, UnitSystem units)
    {
        var weak = floor
            .Zones.Where(zone => !(zone.OutputW >= zone.NeededW))
            .Select(zone => zone.Name);
        writer.Say($"which is too little for {Joined([.. weak])}.");
        return floor.RequiredSupplyC is { } required
            ? writer
                .Say(" It takes ")
                .Number(required, Shown.Temperature, "floor.requiredSupplyC")
                .Say(" water.")
                .Done()
            : writer.Done();
    }

    private sealed record Loss(double LossW, string Path, string Way);

    private static Loss LargestLoss(SpaceAnswer space)
    {
        var losses = new List<Loss>();
        for (var i = 0; i < space.Zones.Length; i++)
        {
            var zone = space.Zones[i];
            var of = space.Zones.Length > 1 ? $" of {zone.Name}" : "";
            losses.Add(
                new Loss(
                    zone.VentilationW,
                    $"space.zones[{i}].ventilationW",
                    $"with the outside air{of}"
                )
            );
            for (var j = 0; j < zone.Elements.Length; j++)
            {
                var element = zone.Elements[j];
                losses.Add(
                    new Loss(
                        element.LossW,
                        $"space.zones[{i}].elements[{j}].lossW",
                        $"through the {element.Name}{of}"
                    )
                );
            }
        }

        return losses.MaxBy(loss => loss.LossW)!;
    }

    private static Verdict Missing(Answer answer, VerdictWriter writer) =>
        answer.Problems.IsEmpty
            ? writer.Say("There is nothing to answer here yet.").Done()
            : writer.Say($"This cannot be answered yet: {answer.Problems[0].What}.").Done();

    private static string Counted(int count, string one, string many) =>
        count switch
        {
            0 => "",
            1 => $"1 {one}",
            _ => $"{count} {many}",
        };

    private static string Joined(IReadOnlyList<string> words) =>
        words.Count switch
        {
            0 => "",
            1 => words[0],
            _ => $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}",
        };
}
