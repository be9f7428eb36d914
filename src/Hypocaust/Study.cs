using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;
using Hypocaust.Problems;
using Hypocaust.Review;
using Hypocaust.Studies;

namespace Hypocaust;

/// <summary>Design in, answer out: the one place where the modules are joined.</summary>
public static class Study
{
    /// <summary>Answers a design as far as it goes; what cannot be answered is null and has a problem.</summary>
    /// <param name="design">A design that has passed its reference check.</param>
    public static Answer Solve(HeatingDesign design)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        var parts = new PartLookup(design);
        var space = Keep(SpaceStudy.Solve(design), problems);
        var floor =
            space is null || design.Floor is not { } floorDesign
                ? null
                : Keep(FloorStudy.Of(design, floorDesign, space, parts.Find), problems);

        // a plant whose floor cannot be answered would show wrong temperatures, so it waits
        var floorIsMissing = design.Floor is { Loops.IsEmpty: false } && floor is null;
        var graph = design.Plant is { } piping
            ? PlantGraphBuilder.Build(design, piping, parts.Find)
            : null;
        var plant =
            floorIsMissing || graph is null
                ? null
                : Keep(PlantStudy.Solve(design.Plant!, graph, floor), problems);
        var floorAnswer = floor is null ? null : FloorReport.Of(floor, space!.Answer, plant?.State);
        var plantAnswer = plant is null
            ? null
            : PlantReport.Of(plant.State, design.Plant!, plant.Fluid);
        var subject = new ReviewSubject(
            design,
            graph,
            parts,
            space?.Answer,
            floorAnswer,
            plantAnswer
        );
        return new Answer(
            design.Name,
            space?.Answer,
            floorAnswer,
            plantAnswer,
            RuleBook.Review(subject),
            problems.ToImmutable()
        );
    }

    private static T? Keep<T>(Result<T> result, ImmutableArray<Problem>.Builder problems)
        where T : class
    {
        problems.AddRange(result.Problems);
        return result.Succeeded ? result.Value : null;
    }
}
