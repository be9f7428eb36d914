using System.Collections.Immutable;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Plant;
using Hypocaust.Problems;

namespace Hypocaust.Studies;

/// <summary>Takes the piping of a design to its steady state.</summary>
internal static class PlantStudy
{
    public sealed record Outcome(PlantState State, Fluid Fluid);

    public static Result<Outcome> Solve(PlantDesign plant, PlantGraph graph, FloorStudy? floor)
    {
        var fluid = Fluid.Create(plant.Fluid.Kind, plant.Fluid.Share.Si);
        if (!fluid.TryGet(out var mix))
        {
            return Result<Outcome>.Failed(
                fluid.Problems.Select(problem => problem with { Place = "$.plant.fluid.share" })
            );
        }

        if (graph.Nodes.IsEmpty)
        {
            return new Problem(
                "nothing-in-plant",
                "$.plant.items",
                "the plant has no items",
                "add at least a heater, a circulator and the pipes between"
            );
        }

        LoopHeat heat = floor is null
            ? static (_, _, _) => (HeatLaw.Exchange)HeatLaw.None
            : floor.HeatOf;
        var solved = PlantSolver.Solve(
            graph,
            new PlantConditions(mix, plant.Surroundings.Si, heat)
        );
        return solved.TryGet(out var state)
            ? new Outcome(state, mix)
            : Result<Outcome>.Failed(
                solved.Problems.Select(problem =>
                    problem.Place.StartsWith('$') ? problem : problem with { Place = "$.plant" }
                )
            );
    }
}
