using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Papers.Drawing;
using Hypocaust.Papers.Piping;
using Hypocaust.Papers.Pressure;
using Hypocaust.Papers.Pumps;
using Hypocaust.Quantities;
using Hypocaust.Verdicts;
using Hypocaust.Web.Figures;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Plant;

/// <summary>What flows where?</summary>
public partial class PlantPage
{
    private static readonly ImmutableArray<string> Sections = ["plant", "parts"];

    private static readonly ImmutableArray<Column<ItemAnswer>> ReadingColumns =
    [
        Column<ItemAnswer>.Words("instrument", item => item.Id),
        Column<ItemAnswer>.Words("what", item => item.Kind),
        Column<ItemAnswer>.Number(
            "temperature",
            "temperatureC",
            item => item.TemperatureC,
            Shown.Temperature
        ),
        Column<ItemAnswer>.Number("pressure", "pressurePa", item => item.PressurePa, Shown.Gauge),
    ];

    private static readonly ImmutableArray<Column<ItemAnswer>> ItemColumns =
    [
        Column<ItemAnswer>.Words("part", item => item.Id),
        Column<ItemAnswer>.Words("what", item => item.Kind),
        Column<ItemAnswer>.Given("height", item => item.HeightM, Shown.Length),
        Column<ItemAnswer>.Number("drop", "dropPa", item => item.DropPa, Shown.Drop),
        Column<ItemAnswer>.Number("pressure", "pressurePa", item => item.PressurePa, Shown.Gauge),
        Column<ItemAnswer>.Number(
            "temperature",
            "temperatureC",
            item => item.TemperatureC,
            Shown.Temperature
        ),
    ];

    private static readonly ImmutableArray<Column<HeaterAnswer>> HeaterColumns =
    [
        Column<HeaterAnswer>.Words("heater", heater => heater.Item),
        Column<HeaterAnswer>.Words("state", heater => PlantWords.Of(heater.State)),
        Column<HeaterAnswer>.Number(
            "gives",
            "deliveredW",
            heater => heater.DeliveredW,
            Shown.SmallHeat
        ),
        Column<HeaterAnswer>.Given("can give", heater => heater.CapacityW, Shown.SmallHeat),
        Column<HeaterAnswer>.Number("in", "inC", heater => heater.InC, Shown.Temperature),
        Column<HeaterAnswer>.Number("out", "outC", heater => heater.OutC, Shown.Temperature),
        Column<HeaterAnswer>.Number("flow", "flowM3PerS", heater => heater.FlowM3PerS, Shown.Flow),
        Column<HeaterAnswer>.Given("least flow", heater => heater.MinimumFlowM3PerS, Shown.Flow),
    ];

    private static readonly ImmutableArray<Column<CirculatorAnswer>> CirculatorColumns =
    [
        Column<CirculatorAnswer>.Words("circulator", pump => pump.Item),
        Column<CirculatorAnswer>.Words("state", pump => PlantWords.Of(pump)),
        Column<CirculatorAnswer>.Number("flow", "flowM3PerS", pump => pump.FlowM3PerS, Shown.Flow),
        Column<CirculatorAnswer>.Number("head", "headM", pump => pump.HeadM, Shown.Length),
        Column<CirculatorAnswer>.Number("rise", "risePa", pump => pump.RisePa, Shown.Drop),
    ];

    private static readonly ImmutableArray<Column<TeesAnswer>> TeesColumns =
    [
        Column<TeesAnswer>.Words("tees", tees => tees.Item),
        Column<TeesAnswer>.Number(
            "primary",
            "primaryFlowM3PerS",
            tees => tees.PrimaryFlowM3PerS,
            Shown.Flow
        ),
        Column<TeesAnswer>.Number(
            "secondary",
            "secondaryFlowM3PerS",
            tees => tees.SecondaryFlowM3PerS,
            Shown.Flow
        ),
        Column<TeesAnswer>.Number(
            "between",
            "betweenFlowM3PerS",
            tees => tees.BetweenFlowM3PerS,
            Shown.Flow
        ),
        Column<TeesAnswer>.Number(
            "from primary",
            "primaryC",
            tees => tees.PrimaryC,
            Shown.Temperature
        ),
        Column<TeesAnswer>.Number(
            "to secondary",
            "secondaryC",
            tees => tees.SecondaryC,
            Shown.Temperature
        ),
    ];

    private static readonly ImmutableArray<Column<PipeAnswer>> PipeColumns =
    [
        Column<PipeAnswer>.Words("from, to", pipe => $"{pipe.From}, {pipe.To}"),
        Column<PipeAnswer>.Given("length", pipe => pipe.LengthM, Shown.Length),
        Column<PipeAnswer>.Given("inner", pipe => pipe.InnerM, Shown.Small),
        Column<PipeAnswer>.Number("flow", "flowM3PerS", pipe => pipe.FlowM3PerS, Shown.Flow),
        Column<PipeAnswer>.Number(
            "speed",
            "velocityMPerS",
            pipe => pipe.VelocityMPerS,
            Shown.Velocity
        ),
        Column<PipeAnswer>.Number("drop", "dropPa", pipe => pipe.DropPa, Shown.Drop),
        Column<PipeAnswer>.Number("in", "inC", pipe => pipe.InC, Shown.Temperature),
        Column<PipeAnswer>.Number("heat lost", "lossW", pipe => pipe.LossW, Shown.SmallHeat),
    ];

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    private Verdict Verdict => VerdictBook.Plant(Moment.Answer, Moment.Units);

    private static Sheet Draw(Moment moment, SheetShape shape) =>
        PlantSchematic.Draw(moment.Design, moment.Answer, moment.Units, shape);

    private static Sheet DrawPressure(Moment moment, SheetShape shape) =>
        PressureLine.Draw(moment.Design, moment.Answer, moment.Units, shape);

    private static Sheet DrawPump(Moment moment, SheetShape shape, string circulator) =>
        PumpCurve.Draw(moment.Design, moment.Answer, moment.Units, circulator, shape);

    private static IEnumerable<(ItemAnswer Item, int Index)> Readings(PlantAnswer plant) =>
        plant
            .Items.Select((item, index) => (item, index))
            .Where(pair => pair.item.Kind is "thermometer" or "pressure gauge");
}
