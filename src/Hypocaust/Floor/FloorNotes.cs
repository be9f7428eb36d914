using System.Collections.Immutable;
using System.Globalization;

namespace Hypocaust.Floor;

/// <summary>What a person should know about a floor's figures before using them.</summary>
internal static class FloorNotes
{
    public static ImmutableArray<FloorNote> Of(En1264Output output) =>
        [.. Film(output), .. Below(output)];

    private static IEnumerable<FloorNote> Film(En1264Output output)
    {
        if (output.Film is null)
        {
            yield return new FloorNote(
                "floor-film-assumed",
                "The table takes the water to flow turbulently. In a slow, laminar loop an ordinary floor gives roughly 5 to 15 % less.",
                "EN 1264-2 (from memory); the share is our estimate with Nu = 3.66"
            );
        }
        else if (output.Film.Regime != FilmRegime.Turbulent)
        {
            var usual = En1264Output.Of(output.Section).ConductanceWPerM2K;
            var loss = 100 * (1 - output.ConductanceWPerM2K / usual);
            var flow =
                output.Film.Regime == FilmRegime.Laminar
                    ? "laminar"
                    : "neither laminar nor turbulent";
            yield return new FloorNote(
                "floor-film-slow",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The water flows slowly ({flow}, Reynolds number {output.Film.Reynolds:0}), which costs this floor about {loss:0.#} % of its output. More flow mends it."
                ),
                "Own correction, see docs/methods/floor.md"
            );
        }
    }

    private static IEnumerable<FloorNote> Below(En1264Output output)
    {
        var whole = output.ResistanceAboveM2KPerW + output.Section.ResistanceBelowM2KPerW;
        if (output.ConductanceWPerM2K * whole < 1)
        {
            yield return new FloorNote(
                "floor-weak-below",
                "For a floor that insulates so little downward, or gives so little upward, the standard's downward heat holds at heating temperatures only. The temperature it implies for still water lies outside what room and ground allow.",
                "Own observation, see docs/methods/floor.md"
            );
        }
    }
}
