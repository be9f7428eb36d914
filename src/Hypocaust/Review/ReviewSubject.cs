using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review;

/// <summary>What the rules look at: the design and everything computed of it.</summary>
/// <param name="Design">The design.</param>
/// <param name="Graph">The piping as points and branches; null without a plant.</param>
/// <param name="Parts">Parts by name.</param>
/// <param name="Space">Heat loss; null where it could not be answered.</param>
/// <param name="Floor">Floor; null where it could not be answered.</param>
/// <param name="Plant">Plant in running; null where it could not be answered.</param>
public sealed record ReviewSubject(
    HeatingDesign Design,
    PlantGraph? Graph,
    PartLookup Parts,
    SpaceAnswer? Space,
    FloorAnswer? Floor,
    PlantAnswer? Plant
)
{
    /// <summary>Writes a number with the unit of the design's reader.</summary>
    public string Show(double si, Quantities.Shown shown) => shown.Format(si, Design.Units);

    /// <summary>What a thermometer and a gauge at an item would show.</summary>
    /// <exception cref="InvalidOperationException">There is no plant answer, or no such item: the rule did not say what it needs.</exception>
    public ItemAnswer ItemAnswer(string name) => Plant!.Items.First(item => item.Id == name);
}
