using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Fluids;

namespace Hypocaust.Plant;

/// <summary>Volumes of a plant and what the growth of its water does to the pressure.</summary>
internal static class SystemFill
{
    // assumed where the person has not written it; the review says so
    private const double AssumedPrechargePa = 1e5;

    /// <summary>Volume of water in a branch, m³; parts whose water nobody states count as none.</summary>
    public static double VolumeM3(PlantBranch branch) =>
        branch switch
        {
            PlantBranch.InPipe pipe => Bore(pipe.Pipe.Inner.Si) * pipe.Join.LengthM,
            PlantBranch.InLoop loop => Bore(loop.Tube.Inner.Si) * loop.LengthM,
            PlantBranch.Between tees => Bore(tees.Part.Inner.Si) * tees.Part.Spacing.Si,
            PlantBranch.InItem { Part: HeaterPart heater } => heater.Water.Si,
            _ => 0,
        };

    public static FillAnswer Of(PlantState state, PlantDesign plant, Fluid fluid)
    {
        var volume = SystemVolumeM3(state.Graph);
        var warmest = WarmestC(state, plant, fluid);
        var growth = volume * Growth(fluid, plant.FillTemperature.Si, warmest);
        var vessel = Vessel(state.Graph);
        double? relief = state
            .Graph.ItemsOf<ReliefPart>()
            .Select(item => (double?)((ReliefPart)item.Part).Opens.Si)
            .DefaultIfEmpty(null)
            .Min();
        var sizing =
            vessel is null || relief is null
                ? null
                : new VesselSizing(volume, growth, vessel.PrechargePa, relief.Value);
        return new FillAnswer(
            volume,
            volume * fluid.VolumeFraction,
            growth,
            warmest,
            plant.ColdFill.Si,
            vessel?.PressurePa(plant.ColdFill.Si, RunningGrowthM3(state, plant, fluid)),
            sizing?.NeededM3,
            vessel?.VolumeM3,
            vessel?.PrechargePa,
            relief
        );
    }

    public static ExpansionVessel? Vessel(PlantGraph graph) =>
        graph.ItemsOf<VesselPart>().FirstOrDefault() is { } placed
            ? new ExpansionVessel(
                ((VesselPart)placed.Part).Size.Si,
                placed.Item.Precharge?.Si ?? AssumedPrechargePa
            )
            : null;

    private static double SystemVolumeM3(PlantGraph graph) =>
        graph.Branches.Sum(VolumeM3)
        + graph.ItemsOf<ManifoldPart>().Sum(item => ((ManifoldPart)item.Part).Water.Si);

    // the heaters' set points bound what the water can reach; in a plant without a heater, the warmest water found
    private static double WarmestC(PlantState state, PlantDesign plant, Fluid fluid)
    {
        var setPoints = state
            .Graph.ItemsOf<HeaterPart>()
            .Select(item => item.Item.SetPoint?.Si ?? 0);
        var found = state.Heat.NodesC.Select(celsius => celsius ?? plant.FillTemperature.Si);
        var warmest = setPoints.Concat(found).Append(plant.FillTemperature.Si).Max();
        return Math.Min(warmest, fluid.HighestC);
    }

    private static double RunningGrowthM3(PlantState state, PlantDesign plant, Fluid fluid)
    {
        var growth = 0.0;
        for (var i = 0; i < state.Graph.Branches.Length; i++)
        {
            var celsius = state.Heat.MeanC(i) ?? plant.Surroundings.Si;
            growth +=
                VolumeM3(state.Graph.Branches[i])
                * Growth(fluid, plant.FillTemperature.Si, celsius);
        }

        foreach (var item in state.Graph.ItemsOf<ManifoldPart>())
        {
            var celsius =
                state.Heat.NodesC[state.Graph.NodeOf(item.Name, Ports.Return)]
                ?? plant.Surroundings.Si;
            growth +=
                ((ManifoldPart)item.Part).Water.Si
                * Growth(fluid, plant.FillTemperature.Si, celsius);
        }

        return growth;
    }

    private static double Growth(Fluid fluid, double fromC, double toC)
    {
        double Density(double celsius) =>
            fluid.StateAt(Math.Clamp(celsius, fluid.LowestC, fluid.HighestC)).DensityKgPerM3;
        return (Density(fromC) / Density(toC)) - 1;
    }

    private static double Bore(double innerM) => Math.PI * innerM * innerM / 4;
}
