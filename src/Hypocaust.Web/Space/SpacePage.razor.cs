using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Answers;
using Hypocaust.Papers.Drawing;
using Hypocaust.Papers.Space;
using Hypocaust.Quantities;
using Hypocaust.Verdicts;
using Hypocaust.Web.Entries;
using Hypocaust.Web.Figures;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Space;

/// <summary>How much heat is needed?</summary>
public partial class SpacePage
{
    private static readonly ImmutableArray<string> Sections =
    [
        FieldTree.Itself,
        "site",
        "building",
    ];

    private static readonly ImmutableArray<Column<ZoneLossAnswer>> ZoneColumns =
    [
        Column<ZoneLossAnswer>.Words("zone", zone => zone.Name),
        Column<ZoneLossAnswer>.Given("room", zone => zone.IndoorC, Shown.Temperature),
        Column<ZoneLossAnswer>.Given("floor", zone => zone.FloorAreaM2, Shown.Area),
        Column<ZoneLossAnswer>.Number(
            "by air",
            "ventilationW",
            zone => zone.VentilationW,
            Shown.SmallHeat
        ),
        Column<ZoneLossAnswer>.Number(
            "loss",
            "designLossW",
            zone => zone.DesignLossW,
            Shown.SmallHeat
        ),
        Column<ZoneLossAnswer>.Number(
            "from the floor",
            "roomLossW",
            zone => zone.RoomLossW,
            Shown.SmallHeat
        ),
    ];

    private static readonly ImmutableArray<Column<ElementLossAnswer>> ElementColumns =
    [
        Column<ElementLossAnswer>.Words("element", element => element.Name),
        Column<ElementLossAnswer>.Words("what", element => element.Kind),
        Column<ElementLossAnswer>.Given("area", element => element.AreaM2, Shown.Area),
        Column<ElementLossAnswer>.Number(
            "U",
            "transmittanceWPerM2K",
            element => element.TransmittanceWPerM2K,
            Shown.Transmittance
        ),
        Column<ElementLossAnswer>.Number(
            "far side",
            "farSideC",
            element => element.FarSideC,
            Shown.Temperature
        ),
        Column<ElementLossAnswer>.Number(
            "loss",
            "lossW",
            element => element.LossW,
            Shown.SmallHeat
        ),
    ];

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    private Verdict Verdict => VerdictBook.Space(Moment.Answer, Moment.Units);

    private static Sheet Draw(Moment moment, SheetShape shape) =>
        SpaceSection.Draw(moment.Design, moment.Answer, moment.Units, shape);

    private static string Of(string zone, string member) =>
        DesignPath.Member(DesignPath.Member("$.building.zones", zone), member);

    private static string ElementsPath(int zone) =>
        string.Create(CultureInfo.InvariantCulture, $"space.zones[{zone}].elements");
}
