using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>Every message of the module, made by name.</summary>
internal static class FloorProblems
{
    private const string OrSolve = "or rely on a solution of the section in two dimensions instead";

    public static Problem SpacingTooClose(double spacingM) =>
        new(
            "floor-spacing-outside",
            "spacingM",
            $"the tubes are {Mm(spacingM)} apart and the table of EN 1264-2 starts at {Mm(En1264Validity.MinimumSpacingM)}",
            $"Space the tubes at least {Mm(En1264Validity.MinimumSpacingM)} apart, {OrSolve}"
        );

    public static Problem SpacingTooWide(double spacingM) =>
        new(
            "floor-spacing-outside",
            "spacingM",
            $"the tubes are {Mm(spacingM)} apart and the method of EN 1264-2 is used here only up to {Mm(En1264Validity.MaximumSpacingM)}",
            $"Space the tubes at most {Mm(En1264Validity.MaximumSpacingM)} apart; 100 mm to 300 mm is usual"
        );

    public static Problem Cover(double coverM) =>
        new(
            "floor-cover-outside",
            "coverM",
            $"the cover above the tubes is {Mm(coverM)} and the table of EN 1264-2 is used here from {Mm(En1264Validity.MinimumCoverM)} to {Mm(En1264Validity.MaximumCoverM)}",
            $"Cover the tubes by a thickness in that range (a screed needs {Mm(WetFloorRules.MinimumScreedCoverM)} or more), {OrSolve}"
        );

    public static Problem LightCover(double coverM) =>
        new(
            "floor-cover-outside",
            "coverM",
            $"the cover above the tubes is {Mm(coverM)}, and in a screed below {Number(En1264Validity.LightScreedBelowWPerMK)} W/mK the table of EN 1264-2 is used here only to {Mm(En1264Validity.MaximumLightCoverM)}",
            $"Cover the tubes less or by a screed that conducts better, {OrSolve}"
        );

    public static Problem Diameter(double diameterM) =>
        new(
            "floor-diameter-outside",
            "tube.outerDiameterM",
            $"the tube is {Mm(diameterM)} outside and the table of EN 1264-2 reaches from {Mm(En1264Validity.MinimumDiameterM)} to {Mm(En1264Validity.MaximumDiameterM)}",
            $"Choose a tube in that range, {OrSolve}"
        );

    public static Problem Wall(double wallM) =>
        new(
            "floor-wall-impossible",
            "tube.wallM",
            $"a wall of {Mm(wallM)} does not leave a bore in this tube, or is no wall at all",
            "Give a wall of more than 0 and less than half the outer diameter"
        );

    public static Problem TubeConductivity(double value) =>
        new(
            "floor-conductivity-impossible",
            "tube.conductivityWPerMK",
            $"the tube wall has a conductivity of {Number(value)} W/mK",
            "Give a conductivity above 0, for example 0.35 W/mK for cross-linked polyethylene"
        );

    public static Problem ScreedConductivity(double value) =>
        new(
            "floor-conductivity-outside",
            "screedConductivityWPerMK",
            $"the screed has a conductivity of {Number(value)} W/mK and the method is used here from {Number(En1264Validity.MinimumScreedConductivityWPerMK)} to {Number(En1264Validity.MaximumScreedConductivityWPerMK)} W/mK",
            "Give a conductivity in that range; cement screed has about 1.2, concrete 1.4 to 2 W/mK"
        );

    public static Problem Covering(double value) =>
        new(
            "floor-covering-outside",
            "coveringResistanceM2KPerW",
            $"the floor covering has a resistance of {Number(value)} m²K/W and the table of EN 1264-2 reaches from 0 to {Number(En1264Validity.MaximumCoveringM2KPerW)} m²K/W",
            $"Choose a covering that insulates less, {OrSolve}"
        );

    public static Problem Below(string name, double value) =>
        new(
            "floor-layer-impossible",
            "below",
            $"the layer \"{name}\" below the tubes has a resistance of {Number(value)} m²K/W",
            "Give a resistance of 0 or more"
        );

    public static Problem NothingBelow() =>
        new(
            "floor-nothing-below",
            "below",
            "the layers below the tubes have hardly any resistance together, so that most heat would go down",
            "Name what lies below the tubes: the rest of the slab, insulation, ground or the room below"
        );

    /// <summary>Whether a problem lies in what is stated below the tubes, which no method can do without.</summary>
    public static bool ConcernsBelow(Problem problem) =>
        problem.Code
            is "floor-nothing-below"
                or "floor-layer-impossible"
                or "floor-screed-below-outside";

    public static Problem Outside(
        string code,
        string place,
        string quantity,
        double value,
        string unit,
        string remedy
    ) => new(code, place, $"the {quantity} is {Number(value)} {unit}", remedy);

    public static Problem LimitTable(double ratio) =>
        new(
            "floor-limit-outside",
            "coverM",
            $"cover over conductivity is {Number(ratio)} m²K/W and the limit table that we hold reaches from {Number(En1264Validity.MinimumLimitRatioM2KPerW)} to {Number(En1264Validity.MaximumLimitRatioM2KPerW)} m²K/W",
            "Judge the hottest spot of the surface by a solution of the section in two dimensions"
        );

    public static Problem RoomAboveLimit(double roomC, double limitC) =>
        new(
            "floor-room-above-limit",
            "roomC",
            $"the room is at {Number(roomC)} °C, no colder than the warmest surface allowed ({Number(limitC)} °C)",
            "Give a room temperature below the surface limit"
        );

    public static Problem WaterColderThanRoom(double meanWaterC, double roomC) =>
        new(
            "floor-takes-heat",
            "supplyC",
            $"the water is {Number(meanWaterC)} °C on average, no warmer than the room at {Number(roomC)} °C, so the floor does not heat it",
            "Raise the supply temperature or the flow"
        );

    public static Problem NoHeatToCarry(double waterC, double balanceC) =>
        new(
            "floor-no-heat-to-carry",
            "belowC",
            $"with water at {Number(waterC)} °C the floor takes no heat from the water, because what lies below holds it at {Number(balanceC)} °C",
            "Check the temperature below the floor"
        );

    public static Problem LeaderTooLong(double leaderM, double maximumM) =>
        new(
            "floor-leader-too-long",
            "leaderM",
            $"two leaders of {Number(leaderM)} m use up the longest loop allowed ({Number(maximumM)} m)",
            "Move the manifold closer or allow longer loops"
        );

    public static Problem TubeNotInside() =>
        new(
            "floor-tube-not-inside",
            "tubeDepthM",
            "the tube does not lie wholly inside the slab, or touches its neighbour",
            "Keep the tube radius clear of both faces and the spacing above the diameter"
        );

    public static Problem SectionConductivity(double value) =>
        new(
            "floor-conductivity-impossible",
            "screedConductivityWPerMK",
            $"the slab has a conductivity of {Number(value)} W/mK",
            "Give a conductivity from 0.001 W/mK to 1000 W/mK; concrete has 1.4 to 2 W/mK"
        );

    public static Problem SectionResistance(double value) =>
        new(
            "floor-covering-impossible",
            "coveringResistanceM2KPerW",
            $"the floor covering has a resistance of {Number(value)} m²K/W",
            "Give a resistance of 0 or more"
        );

    public static Problem BelowLessThanSlab() =>
        new(
            "floor-below-less-than-slab",
            "below",
            "the resistance below the tube is smaller than that of the slab below the tube alone",
            "Let \"below\" count the slab below the tube as well as the insulation"
        );

    public static Problem SectionNotSolved(string why) =>
        new(
            "floor-section-not-solved",
            "section",
            $"the floor could not be solved in two dimensions: {why.TrimEnd('.')}",
            "Check thicknesses and conductivities for a slip of the decimal point"
        );

    public static Problem TubeTooCloseToFace() =>
        new(
            "floor-tube-too-close",
            "tubeDepthM",
            "the tube lies too close to a face of the slab, compared with the spacing, for the series to be summed",
            "Bury the tube deeper or solve the section in two dimensions"
        );

    public static Problem InsulationTableEnds(double outsideC) =>
        new(
            "floor-insulation-table-ends",
            "outsideC",
            $"the outside design temperature is {Number(outsideC)} °C and the insulation table of EN 1264-4 ends at -15 °C",
            "Insulate at least as for -15 °C and follow the local energy code, which asks for more"
        );

    private static string Mm(double metres) =>
        string.Create(CultureInfo.InvariantCulture, $"{metres * 1000:0.##} mm");

    private static string Number(double value) =>
        value.ToString("0.####", CultureInfo.InvariantCulture);
}
