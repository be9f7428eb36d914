using Hypocaust.Design;
using Hypocaust.Problems;

namespace Hypocaust.Studies;

/// <summary>Messages of the study, made by name, and the places in the design to which other modules' messages belong.</summary>
internal static class StudyProblems
{
    public static Problem NothingKnownBelow(string section, string zone) =>
        new(
            "nothing-known-below",
            DesignPlaces.Section(section),
            $"nobody says what lies under the floor of \"{zone}\"",
            "add the slab on the ground to the zone (\"ground\"), or write \"belowTemperature\" in the floor section"
        );

    /// <summary>A problem of the floor module, moved from its argument to the value of the design that gave it.</summary>
    public static Problem OfLoop(Problem problem, int index, LoopDesign loop) =>
        problem with
        {
            Place = problem.Place switch
            {
                "spacingM" => DesignPlaces.Loop(index, "spacing"),
                "tube.outerDiameterM"
                or "tube.wallM"
                or "tube.conductivityWPerMK"
                or "tubeDepthM" => DesignPlaces.Loop(index, "tube"),
                "coverM" => DesignPlaces.Section(loop.Section, "cover"),
                "coveringResistanceM2KPerW" => DesignPlaces.Section(loop.Section, "covering"),
                "screedConductivityWPerMK" => DesignPlaces.Section(
                    loop.Section,
                    "slabConductivity"
                ),
                "below" => DesignPlaces.Section(loop.Section, "below"),
                "belowC" => DesignPlaces.Section(loop.Section, "belowTemperature"),
                "roomC" => DesignPlaces.Zone(loop.Zone, "indoor"),
                _ => DesignPlaces.Section(loop.Section),
            },
        };
}
