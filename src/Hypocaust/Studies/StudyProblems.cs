using Hypocaust.Problems;

namespace Hypocaust.Studies;

/// <summary>Messages of the study, made by name, and the places in the design to which other modules' messages belong.</summary>
internal static class StudyProblems
{
    public static Problem NothingKnownBelow(string section, string zone) =>
        new(
            "nothing-known-below",
            $"$.floor.sections.{section}",
            $"nobody says what lies under the floor of \"{zone}\"",
            "add the slab on the ground to the zone (\"ground\"), or write \"belowTemperature\" in the floor section"
        );

    public static Problem OfLoop(Problem problem, int loop, string section, string tube) =>
        problem with
        {
            Place = PlaceOf(problem.Place, loop, section, tube),
        };

    private static string PlaceOf(string argument, int loop, string section, string tube)
    {
        bool Says(string word) => argument.Contains(word, StringComparison.OrdinalIgnoreCase);
        return Says("spacing") ? $"$.floor.loops[{loop}].spacing"
            : Says("tube") || Says("diameter") || Says("wall") ? $"$.floor.loops[{loop}].tube"
            : Says("covering") ? $"$.floor.sections.{section}.covering"
            : Says("cover") ? $"$.floor.sections.{section}.cover"
            : Says("conductivity") ? $"$.floor.sections.{section}.slabConductivity"
            : Says("below") ? $"$.floor.sections.{section}.below"
            : $"$.floor.sections.{section}";
    }
}
