using System.Collections.Immutable;
using Hypocaust.Design;
using Hypocaust.Problems;

namespace Hypocaust.Answers;

/// <summary>Everything Hypocaust answers of one design, in SI; each part is null where the design does not hold enough for it, and then a problem says why.</summary>
[Meaning("The answer to a design: SI values, names ending in their unit.")]
public sealed record Answer(
    [property: Meaning("Name of the design.")] string Name,
    [property: Meaning("How much heat the building needs.")] SpaceAnswer? Space,
    [property: Meaning("What the floor gives.")] FloorAnswer? Floor,
    [property: Meaning("What flows where.")] PlantAnswer? Plant,
    [property: Meaning("What is unsafe, unsuitable or missing.")] ReviewAnswer Review,
    [property: Meaning("What could not be answered, with place and remedy.")]
        ImmutableArray<Problem> Problems
);
