using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>Whether a surface keeps its limit.</summary>
public enum SurfaceVerdict
{
    /// <summary>On average and, as estimated, at the inlet too.</summary>
    Within,

    /// <summary>On average it does, as the standard asks, but above the tube near the inlet it is estimated to be too warm.</summary>
    ExceededAtInlet,

    /// <summary>No: the mean flux is above the limit flux.</summary>
    Exceeded,

    /// <summary>No excess found, but the limit tables do not reach here; the notes say why.</summary>
    NotCovered,
}

/// <summary>The surface temperatures of a heated loop against the limit of its zone.</summary>
/// <param name="MeanSurfaceC">Mean surface temperature of the loop's area in °C.</param>
/// <param name="InletSurfaceC">Surface temperature near the inlet in °C, averaged between neighbouring tubes.</param>
/// <param name="InletHottestC">Estimated hottest spot, above the tube near the inlet, in °C, by the line-source series (see docs/methods/floor.md).</param>
/// <param name="TabulatedHottestC">The same by the standard's limit curve read backwards, in °C; null where its tables do not reach. Much too high for thin cover.</param>
/// <param name="MaximumSurfaceC">Limit of the zone in °C.</param>
/// <param name="LimitFluxWPerM2">Limit flux q_G in W/m²; null where the limit tables do not reach.</param>
/// <param name="Verdict">Whether the limit is kept.</param>
/// <param name="Notes">What to know about it.</param>
public sealed record SurfaceCheck(
    double MeanSurfaceC,
    double InletSurfaceC,
    double InletHottestC,
    double? TabulatedHottestC,
    double MaximumSurfaceC,
    double? LimitFluxWPerM2,
    SurfaceVerdict Verdict,
    ImmutableArray<FloorNote> Notes
)
{
    internal static SurfaceCheck Of(WetFloor floor, double meanFlux, double inletExcessK)
    {
        var roomC = floor.Surroundings.RoomC;
        var maximum = floor.Zone.MaximumSurfaceC(roomC);
        var inletExcess = SurfaceCurve.ExcessK(floor.Output.FluxWPerM2(inletExcessK));
        var inletC = roomC + inletExcessK;
        var hottest =
            roomC
            + inletExcess
            + floor.CrossCheck.SurfacePeakK(
                floor.Characteristic.UpwardFluxWPerM2(inletC)
                    + floor.Characteristic.DownwardFluxWPerM2(inletC)
            );
        double? tabulated = floor.Curve.TryGet(out var curve)
            ? roomC + curve.HottestExcessK(inletExcessK)
            : null;
        double? limitFlux = floor.Limit.TryGet(out var limit) ? limit.FluxWPerM2 : null;
        var meanSurface = roomC + SurfaceCurve.ExcessK(meanFlux);
        return new SurfaceCheck(
            meanSurface,
            roomC + inletExcess,
            hottest,
            tabulated,
            maximum,
            limitFlux,
            Judge(meanFlux, limitFlux, meanSurface, hottest, maximum),
            NotesOf(floor.Limit, inletExcess)
        );
    }

    private static SurfaceVerdict Judge(
        double meanFlux,
        double? limitFlux,
        double meanSurfaceC,
        double hottestC,
        double maximumC
    ) =>
        meanSurfaceC > maximumC || meanFlux > limitFlux ? SurfaceVerdict.Exceeded
        : hottestC > maximumC ? SurfaceVerdict.ExceededAtInlet
        : limitFlux is null ? SurfaceVerdict.NotCovered
        : SurfaceVerdict.Within;

    private static ImmutableArray<FloorNote> NotesOf(
        Result<SurfaceLimit> limit,
        double inletExcessK
    )
    {
        var notes = ImmutableArray.CreateBuilder<FloorNote>();
        foreach (var problem in limit.Problems)
        {
            notes.Add(
                new FloorNote(
                    problem.Code,
                    $"The surface limit could not be judged in full: {problem.What}. {problem.Remedy}.",
                    LimitCurve.Source
                )
            );
        }

        if (inletExcessK > SurfaceCurve.LargestExcessK)
        {
            var excess = inletExcessK.ToString("0.#", CultureInfo.InvariantCulture);
            notes.Add(
                new FloorNote(
                    "floor-surface-beyond-curve",
                    $"Near the inlet the surface would be {excess} K warmer than the room. The standard states its surface curve to 15 K, so this figure is an extrapolation.",
                    "EN 1264-2"
                )
            );
        }

        return notes.ToImmutable();
    }
}
