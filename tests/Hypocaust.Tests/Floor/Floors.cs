using System.Collections.Immutable;
using Hypocaust.Floor;

namespace Hypocaust.Tests.Floor;

/// <summary>Floors for the tests of this folder.</summary>
internal static class Floors
{
    /// <summary>An ordinary screed: 16 mm tube every 150 mm under 45 mm of screed, bare, well insulated.</summary>
    public static WetFloorSpecification Ordinary { get; } =
        new()
        {
            SpacingM = 0.15,
            Tube = new EmbeddedTube(0.016, 0.002, 0.35),
            CoverM = 0.045,
            ScreedConductivityWPerMK = 1.2,
            CoveringResistanceM2KPerW = 0,
            Below = [new DownwardLayer("insulation", 2)],
        };

    public static WetFloorSection Section(WetFloorSpecification specification) =>
        WetFloorSection.Create(specification).Value;

    public static ImmutableArray<DownwardLayer> Insulation(double resistance) =>
        [new DownwardLayer("insulation", resistance)];

    public static WetFloor Place(
        WetFloorSpecification specification,
        double roomC = 20,
        double belowC = 10,
        SurfaceZone zone = SurfaceZone.Occupied
    ) => WetFloor.Of(Section(specification), FloorSurroundings.Create(roomC, belowC).Value, zone);

    /// <summary>A floor anywhere inside the validity, drawn evenly; the bounds are hit now and then.</summary>
    public static WetFloorSpecification Draw(Random random)
    {
        var diameter = Pick(
            random,
            En1264Validity.MinimumDiameterM,
            En1264Validity.MaximumDiameterM
        );
        var conductivity = Pick(
            random,
            En1264Validity.MinimumScreedConductivityWPerMK,
            En1264Validity.MaximumScreedConductivityWPerMK
        );
        return new WetFloorSpecification
        {
            SpacingM = Pick(random, En1264Validity.MinimumSpacingM, En1264Validity.MaximumSpacingM),
            Tube = new EmbeddedTube(
                diameter,
                Pick(random, 0.0005, 0.0039),
                Math.Exp(Pick(random, Math.Log(0.2), Math.Log(390)))
            ),
            CoverM = Pick(
                random,
                En1264Validity.MinimumCoverM,
                conductivity < En1264Validity.LightScreedBelowWPerMK
                    ? En1264Validity.MaximumLightCoverM
                    : En1264Validity.MaximumCoverM
            ),
            ScreedConductivityWPerMK = conductivity,
            CoveringResistanceM2KPerW = Pick(random, 0, En1264Validity.MaximumCoveringM2KPerW),
            Below = Insulation(Pick(random, 0.1, 6)),
        };
    }

    public static double Pick(Random random, double low, double high) =>
        random.Next(20) switch
        {
            0 => low,
            1 => high,
            _ => low + (high - low) * random.NextDouble(),
        };
}
