using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Supply and return must be read to set the plant up.</summary>
public sealed class ThermometersMissing()
    : ReviewRule(
        new()
        {
            Id = "thermometers-missing",
            Title = "No thermometer shows the supply or the return of the floor",
            Severity = Severity.Poor,
            Why =
                "Without them you cannot tell whether heat leaves the heater, whether it reaches the floor, and how much.",
            LooksAt =
                "Whether a thermometer taps the water to each manifold and from it, with no heater, circulator, loop or other circuit between; one behind the heater of a separate circuit is worth a note.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var thermometers = graph
            .Tappings(TappingFunction.Thermometer)
            .Select(item => graph.NodeOf(item))
            .ToHashSet();
        bool Shows(string item, string port, Func<PlantBranch, bool> isSameWater) =>
            graph.Reach(graph.NodeOf(item, port), isSameWater).Any(thermometers.Contains);

        foreach (var manifold in graph.ItemsOf<ManifoldPart>())
        {
            string[] missing =
            [
                .. new[] { Ports.Supply, Ports.Return }.Where(port =>
                    !Shows(
                        manifold.Name,
                        port,
                        branch =>
                            IsBesideManifold(branch)
                            && (port == Ports.Supply || !Mixes(graph, branch))
                    )
                ),
            ];
            if (missing.Length > 0)
            {
                yield return Find(
                    DesignPlaces.Item(manifold.Name),
                    $"Nothing shows the temperature in the {string.Join(" and the ", missing)} of \"{manifold.Name}\".",
                    $"Put a thermometer on the {string.Join(" and one on the ", missing)} pipe right at the manifold."
                );
            }
        }

        foreach (
            var heater in graph
                .ItemsOf<HeaterPart>()
                .Where(heater => !Shows(heater.Name, Ports.Out, IsSameWater))
        )
        {
            yield return Find(
                DesignPlaces.Item(heater.Name),
                $"Nothing shows the temperature behind \"{heater.Name}\".",
                "Put a thermometer on the pipe right behind it.",
                Severity.Note
            );
        }
    }

    // where returns meet, a thermometer shows neither of them
    private static bool Mixes(PlantGraph graph, PlantBranch branch) =>
        IsJunction(graph, branch.From) || IsJunction(graph, branch.To);

    private static bool IsJunction(PlantGraph graph, int node) =>
        graph.Branches.Count(branch =>
            branch is not PlantBranch.InLoop && (branch.From == node || branch.To == node)
        ) > 2;

    // behind the circulator, because only there one sees whether this manifold gets water
    private static bool IsBesideManifold(PlantBranch branch) =>
        IsSameWater(branch) && branch is not PlantBranch.InItem { Part: CirculatorPart };

    private static bool IsSameWater(PlantBranch branch) =>
        branch is PlantBranch.InPipe or PlantBranch.InItem { Part: not HeaterPart };
}
