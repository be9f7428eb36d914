using Hypocaust.Answers;
using Hypocaust.Quantities;

namespace Hypocaust.Verdicts;

/// <summary>The sentences on flow and heater of the plant's verdict.</summary>
internal static class PlantVerdict
{
    public static void Flows(Answer answer, PlantAnswer plant, VerdictWriter writer)
    {
        if (plant.Tees.Length == 1)
        {
            Tees(plant.Tees[0], writer);
        }
        else
        {
            Circulators(plant, writer);
        }

        if (answer.Floor is { SupplyC: { } supply, ReturnC: { } back })
        {
            writer
                .Say(plant.Tees.Length == 1 ? ": the manifold gets " : " The floor gets ")
                .Number(supply, Shown.Temperature, "floor.supplyC")
                .Say(" water and sends it back at ")
                .Number(back, Shown.Temperature, "floor.returnC")
                .Say(". ");
        }
        else
        {
            writer.Say(plant.Tees.Length == 1 ? ". " : " ");
        }
    }

    public static void Heater(PlantAnswer plant, VerdictWriter writer, UnitSystem units)
    {
        if (plant.Heater is not { } heater)
        {
            writer.Say("There is no heater.");
            return;
        }

        writer
            .Say("The heater delivers ")
            .Number(heater.DeliveredW, Shown.Heat, "plant.heater.deliveredW")
            .Say($" of its {Shown.Heat.Format(heater.CapacityW, units)}");
        writer.Say(
            heater.State switch
            {
                HeaterState.HoldsSetPoint => ".",
                HeaterState.FullPower => ", all it has, and the water stays below its set point.",
                HeaterState.Idle => ": the water comes in as warm as its set point.",
                HeaterState.FlowTooSmall => ": the flow is too small to switch it on.",
                HeaterState.Off => ": it is switched off.",
                _ => ".",
            }
        );
    }

    private static void Tees(TeesAnswer tees, VerdictWriter writer)
    {
        const string path = "plant.tees[0].";
        writer
            .Say("The floor circuit moves ")
            .Number(tees.SecondaryFlowM3PerS, Shown.Flow, path + "secondaryFlowM3PerS")
            .Say(" and the heater circuit ")
            .Number(tees.PrimaryFlowM3PerS, Shown.Flow, path + "primaryFlowM3PerS")
            .Say(", so ")
            .Number(Math.Abs(tees.BetweenFlowM3PerS), Shown.Flow, path + "betweenFlowM3PerS")
            .Say(
                tees.BetweenFlowM3PerS >= 0
                    ? " turns straight back between the tees"
                    : " of cooler return mixes into the supply between the tees"
            );
    }

    private static void Circulators(PlantAnswer plant, VerdictWriter writer)
    {
        for (var i = 0; i < plant.Circulators.Length; i++)
        {
            var circulator = plant.Circulators[i];
            writer
                .Say(i == 0 ? "" : " ")
                .Say(
                    circulator.Running
                        ? $"{Capital(circulator.Item)} moves "
                        : $"{Capital(circulator.Item)} stands; through it pass "
                )
                .Number(circulator.FlowM3PerS, Shown.Flow, $"plant.circulators[{i}].flowM3PerS")
                .Say(".");
        }

        if (plant.Circulators.IsEmpty)
        {
            writer.Say("There is no circulator.");
        }
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
