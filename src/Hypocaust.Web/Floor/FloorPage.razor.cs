using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Papers.Drawing;
using Hypocaust.Papers.Floor;
using Hypocaust.Quantities;
using Hypocaust.Verdicts;
using Hypocaust.Web.Entries;
using Hypocaust.Web.Figures;
using Hypocaust.Web.Plant;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Floor;

/// <summary>Will the floor keep it warm?</summary>
public partial class FloorPage
{
    private static readonly ImmutableArray<string> EditorSections = ["floor"];

    private static readonly ImmutableArray<Column<FloorZoneAnswer>> ZoneColumns =
    [
        Column<FloorZoneAnswer>.Words("zone", zone => zone.Name),
        Column<FloorZoneAnswer>.Given("room", zone => zone.IndoorC, Shown.Temperature),
        Column<FloorZoneAnswer>.Number(
            "with tube",
            "heatedAreaM2",
            zone => zone.HeatedAreaM2,
            Shown.Area
        ),
        Column<FloorZoneAnswer>.Number("needs", "neededW", zone => zone.NeededW, Shown.SmallHeat),
        Column<FloorZoneAnswer>.Number("gets", "outputW", zone => zone.OutputW, Shown.SmallHeat),
        Column<FloorZoneAnswer>.Number(
            "enough with",
            "requiredSupplyC",
            zone => zone.RequiredSupplyC,
            Shown.Temperature
        ),
    ];

    private static readonly ImmutableArray<Column<LoopAnswer>> BuiltColumns =
    [
        Column<LoopAnswer>.Words("loop", loop => loop.Name),
        Column<LoopAnswer>.Words("zone", loop => loop.Zone),
        Column<LoopAnswer>.Given("area", loop => loop.AreaM2, Shown.Area),
        Column<LoopAnswer>.Given("spacing", loop => loop.SpacingM, Shown.Small),
        Column<LoopAnswer>.Number("length", "lengthM", loop => loop.LengthM, Shown.Length),
        Column<LoopAnswer>.Number(
            "K_H",
            "transmissionWPerM2K",
            loop => loop.TransmissionWPerM2K,
            Shown.Transmittance
        ),
        Column<LoopAnswer>.Number(
            "surface limit",
            "surfaceLimitC",
            loop => loop.SurfaceLimitC,
            Shown.Temperature
        ),
    ];

    private static readonly ImmutableArray<Column<LoopAnswer>> RunningColumns =
    [
        Column<LoopAnswer>.Words("loop", loop => loop.Name),
        Column<LoopAnswer>.Number(
            "flow",
            "running.flowM3PerS",
            loop => loop.Running?.FlowM3PerS,
            Shown.Flow
        ),
        Column<LoopAnswer>.Number(
            "drop",
            "running.dropPa",
            loop => loop.Running?.DropPa,
            Shown.Drop
        ),
        Column<LoopAnswer>.Number(
            "supply",
            "running.supplyC",
            loop => loop.Running?.SupplyC,
            Shown.Temperature
        ),
        Column<LoopAnswer>.Number(
            "return",
            "running.returnC",
            loop => loop.Running?.ReturnC,
            Shown.Temperature
        ),
        Column<LoopAnswer>.Number(
            "heat up",
            "running.heatUpW",
            loop => loop.Running?.HeatUpW,
            Shown.SmallHeat
        ),
        Column<LoopAnswer>.Number(
            "down",
            "running.heatDownW",
            loop => loop.Running?.HeatDownW,
            Shown.SmallHeat
        ),
        Column<LoopAnswer>.Number(
            "warmest spot",
            "running.surfaceWarmestC",
            loop => loop.Running?.SurfaceWarmestC,
            Shown.Temperature
        ),
    ];

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    private Verdict Verdict => VerdictBook.Floor(Moment.Answer, Moment.Units);

    private IEnumerable<string> Sections => Moment.Design.Floor?.Sections.Names ?? [];

    private IEnumerable<(string Path, string Label)> SetPoints => PlantEntries.SetPoints(Moment);

    private string? SetPointHint => PlantEntries.SetPointHint(Moment);

    private IEnumerable<(LoopAnswer Loop, int Index)> Running =>
        Moment.Answer.Floor is { } floor
            ? floor
                .Loops.Select((loop, index) => (loop, index))
                .Where(pair => pair.loop.Running is not null)
            : [];

    private static Sheet DrawLoops(Moment moment, SheetShape shape) =>
        LoopBars.Draw(moment.Design, moment.Answer, moment.Units, shape);

    private static Sheet DrawSection(Moment moment, SheetShape shape) =>
        FloorSection.Draw(moment.Design, moment.Answer, moment.Units, shape: shape);

    private static string OfSection(string section, string member) =>
        DesignPath.Member(DesignPath.Member("$.floor.sections", section), member);
}
