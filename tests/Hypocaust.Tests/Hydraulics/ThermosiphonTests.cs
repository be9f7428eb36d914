using Hypocaust.Hydraulics;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>Against thermosiphon.csv: natural circulation, densities IAPWS-IF97, friction at the mean temperature, scipy brentq.</summary>
public sealed class ThermosiphonTests
{
    private static readonly IReadOnlyList<ReferenceCsv.Case> Cases = ReferenceCsv.Cases(
        "thermosiphon.csv"
    );

    public static TheoryData<string> Names => [.. Cases.Select(worked => worked.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Buoyancy_drives_the_flow_of_the_reference(string name)
    {
        var worked = Cases.Single(found => found.Name == name);
        var hot = worked.Expected["hot_temperature"].Number;
        var cold = worked.Input("cold_temperature");
        var mean = 0.5 * (hot + cold);
        var height = worked.Input("height_between_thermal_centres");
        var network = Loop(worked, height);
        var conditions = new NetworkConditions(
            network,
            Water("density_kg_m3", mean),
            Water("viscosity_Pa_s", mean)
        );
        conditions.SetFluid(network.BranchIndex("riser"), Water("density_kg_m3", hot), 1e-3);
        conditions.SetFluid(network.BranchIndex("faller"), Water("density_kg_m3", cold), 1e-3);

        var solution = new NetworkSolver(network).Solve(conditions);

        solution.Status.ShouldBe(SolveStatus.Converged);
        var driving =
            9.80665 * height * (Water("density_kg_m3", cold) - Water("density_kg_m3", hot));
        driving.ShouldBe(
            worked.Expected["driving_pressure"].Number,
            worked.Expected["driving_pressure"].Absolute
        );
        // friction takes the properties at the mean temperature; water.csv is interpolated between 5 K steps: 1e-3 as the file allows
        solution
            .FlowKgPerS("riser")
            .ShouldBe(worked.Expected["mass_flow"].Number, worked.Expected["mass_flow"].Absolute);
    }

    [Fact]
    public void Column_of_one_density_drives_nothing()
    {
        var worked = Cases[0];
        var network = Loop(worked, 2.5);
        var solution = new NetworkSolver(network).Solve(new NetworkConditions(network, 990, 6e-4));
        Math.Abs(solution.FlowKgPerS("riser")).ShouldBeLessThan(1e-6);
        // the pressure at the top is less by the weight of the column
        solution.PressurePa("top-hot")!.Value.ShouldBe(1.5e5 - (990 * 9.80665 * 2.5), 1e-6);
    }

    private static Network Loop(ReferenceCsv.Case worked, double height) =>
        Network
            .Create(
                [
                    new Node("bottom-cold", 0, 1.5e5),
                    new Node("bottom-hot"),
                    new Node("top-hot", height),
                    new Node("top-cold", height),
                ],
                [
                    new Branch("riser", "bottom-hot", "top-hot"),
                    new Branch("pipe", "top-hot", "top-cold")
                    {
                        LengthM = worked.Input("length"),
                        InnerDiameterM = worked.Input("diameter"),
                        RoughnessM = worked.Input("roughness"),
                        LossCoefficient = worked.Input("sum_K"),
                    },
                    new Branch("faller", "top-cold", "bottom-cold"),
                    new Branch("heater", "bottom-cold", "bottom-hot"),
                ]
            )
            .Value;

    private static double Water(string column, double temperatureC) =>
        MathNet
            .Numerics.Interpolate.CubicSpline(
                ReferenceCsv.Table("water.csv").Select(row => row.Number("t_degC")),
                ReferenceCsv.Table("water.csv").Select(row => row.Number(column))
            )
            .Interpolate(temperatureC);
}
