using Hypocaust.Hydraulics;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>Against pumps.csv (invented circulators, roots computed) and pump_cases.csv (scipy 1.10.1 brentq).</summary>
public sealed class PumpCurveTests
{
    private static readonly IReadOnlyList<ReferenceCsv.Case> Cases = ReferenceCsv.Cases(
        "pump_cases.csv"
    );

    private static PumpCurve Curve(string pump, string speed)
    {
        var row = ReferenceCsv
            .Table("pumps.csv")
            .Single(found => found["pump"] == pump && found["speed"] == speed);
        return PumpCurve.Create(row.Number("a_m"), row.Number("b"), row.Number("c")).Value;
    }

    [Fact]
    public void Create_ends_where_the_head_is_used_up()
    {
        foreach (var row in ReferenceCsv.Table("pumps.csv"))
        {
            var curve = Curve(row["pump"], row["speed"]);
            var expected = row.Number("q_at_zero_head_m3h");
            curve.FlowAtZeroHeadM3PerH.ShouldBe(expected, 1e-9 * expected);
            curve.ToM3PerH.ShouldBe(expected, 1e-9 * expected);
            curve.HeadM(0).ShouldBe(row.Number("shutoff_head_m"));
            curve.Covers(expected * 1.01).ShouldBeFalse();
        }
    }

    public static TheoryData<string> OperatingPoints =>
        [.. Cases.Where(found => found.Inputs.ContainsKey("sum_K")).Select(found => found.Name)];

    [Theory]
    [MemberData(nameof(OperatingPoints))]
    public void Operating_point_of_pumps_in_a_circuit_equals_the_reference(string name)
    {
        var worked = Cases.Single(found => found.Name == name);
        var density = worked.Input("density");
        var (network, pumps) = Circuit(worked);
        var solution = new NetworkSolver(network).Solve(
            new NetworkConditions(network, density, worked.Input("viscosity"))
        );
        solution.Status.ShouldBe(SolveStatus.Converged);
        var flow = solution.FlowKgPerS("pipe") / density * 3600;
        Hold(worked, "flow", flow);
        var head = pumps.Sum(pump =>
            -solution.PressureDifferencePa(pump)!.Value / (density * 9.80665)
        );
        if (worked.Expected.ContainsKey("head_total"))
        {
            Hold(worked, "head_total", head);
        }
        else
        {
            Hold(worked, "head", head / pumps.Length);
        }
    }

    [Fact]
    public void AtSpeedRatio_scales_as_the_affinity_laws_say()
    {
        var worked = Cases.Single(found => found.Name == "affinity-curve");
        var curve = Curve("Ada", "3").AtSpeedRatio(worked.Input("speed_ratio"));
        Hold(worked, "a", curve.A);
        Hold(worked, "b", curve.B);
        Hold(worked, "c", curve.C);
        foreach (var affinity in Cases.Where(found => found.Inputs.ContainsKey("speed_2")))
        {
            var ratio = affinity.Input("speed_2") / affinity.Input("speed_1");
            var through = Curve("Bruno", "2");
            var scaled = through.AtSpeedRatio(ratio);
            // the point (flow, head) moves to (flow_2, head_2): the same ratio on any curve
            scaled
                .HeadM(affinity.Expected["flow_2"].Number)
                .ShouldBe(
                    through.HeadM(affinity.Input("flow"))
                        * affinity.Expected["head_2"].Number
                        / affinity.Input("head"),
                    1e-8
                );
        }
    }

    [Fact]
    public void Speed_ratio_in_the_network_equals_the_scaled_curve()
    {
        var worked = Cases.Single(found => found.Name == "op-1");
        var (network, _) = Circuit(worked);
        var conditions = new NetworkConditions(
            network,
            worked.Input("density"),
            worked.Input("viscosity")
        );
        conditions.SetPumpSpeed(network.BranchIndex("pump1"), 0.8);
        var solution = new NetworkSolver(network).Solve(conditions);
        var flow = solution.FlowKgPerS("pipe") / worked.Input("density") * 3600;
        // pump_cases.csv, affinity-curve: Ada 3 at ratio 0.8
        (
            -solution.PressureDifferencePa("pump1")!.Value / (worked.Input("density") * 9.80665)
        ).ShouldBe(3.712 - (0.28 * flow) - (0.42 * flow * flow), 1e-9);
    }

    [Fact]
    public void FromPoints_on_a_parabola_finds_it()
    {
        // Ada at speed 2 of pumps.csv, read at five flows
        var curve = PumpCurve
            .FromPoints(
                ((double[])[0, 0.5, 1.1, 1.9, 2.5]).Select(flow => new PumpPoint(
                    flow,
                    4.4 - (0.4 * flow) - (0.47 * flow * flow)
                ))
            )
            .Value;
        curve.A.ShouldBe(4.4, 1e-11);
        curve.B.ShouldBe(-0.4, 1e-11);
        curve.C.ShouldBe(-0.47, 1e-11);
        curve.LargestDeviationM.ShouldBeLessThan(1e-11);
        curve.Covers(2.5).ShouldBeTrue();
        curve.Covers(2.6).ShouldBeFalse();
    }

    [Fact]
    public void FromPoints_that_sag_gives_a_falling_curve_and_its_deviation()
    {
        var curve = PumpCurve.FromPoints([new(0, 5), new(1, 3.7), new(2, 2.7), new(3, 2)]).Value;
        curve.C.ShouldBe(0);
        // straight line through the points by least squares: slope Σ(q−1.5)h/Σ(q−1.5)² = −5/5, mean head 3.35
        curve.B.ShouldBe(-1.0, 1e-12);
        curve.A.ShouldBe(4.85, 1e-12);
        curve.LargestDeviationM.ShouldBe(0.15, 1e-12);
    }

    [Theory]
    [InlineData("too-few-curve-points", new[] { 0.0, 5, 1, 4 })]
    [InlineData("too-few-curve-points", new[] { 0.0, 5, 1, 4, 1, 4 })]
    [InlineData("pump-curve-not-falling", new[] { 0.0, 5, 1, 5.1, 2, 3 })]
    [InlineData("pump-curve-not-falling", new[] { 0.0, 5, 1, 4, 2, 4 })]
    [InlineData("number-out-of-range", new[] { -1.0, 5, 1, 4, 2, 3 })]
    [InlineData("number-out-of-range", new[] { 0.0, double.NaN, 1, 4, 2, 3 })]
    [InlineData("pump-curve-fits-badly", new[] { 0.0, 9, 0.1, 1, 3, 0.9 })]
    public void FromPoints_that_are_no_pump_names_the_problem(string code, double[] numbers) =>
        PumpCurve
            .FromPoints(numbers.Chunk(2).Select(pair => new PumpPoint(pair[0], pair[1])))
            .Problems.ShouldHaveSingleItem()
            .Code.ShouldBe(code);

    [Theory]
    [InlineData(0, -1, -1)]
    [InlineData(5, 0.1, -1)]
    [InlineData(5, -1, 0.1)]
    [InlineData(5, 0, 0)]
    public void Create_of_a_curve_that_does_not_fall_is_a_problem(double a, double b, double c) =>
        PumpCurve.Create(a, b, c).Succeeded.ShouldBeFalse();

    private static (Network Network, string[] Pumps) Circuit(ReferenceCsv.Case worked)
    {
        var law = Curve(worked.Inputs["pump"], worked.Inputs["speed"]).ToLaw();
        var inSeries = worked.Name.StartsWith("series", StringComparison.Ordinal);
        var inParallel = worked.Name.StartsWith("parallel", StringComparison.Ordinal);
        List<Branch> branches =
        [
            new("pump1", "a", inSeries ? "m" : "b") { Pump = law },
            new("pipe", "b", "a")
            {
                LengthM = worked.Input("length"),
                InnerDiameterM = worked.Input("diameter"),
                RoughnessM = worked.Input("roughness"),
                LossCoefficient = worked.Input("sum_K"),
            },
        ];
        if (inSeries || inParallel)
        {
            branches.Add(new Branch("pump2", inSeries ? "m" : "a", "b") { Pump = law });
        }

        List<Node> nodes = [new("a", 0, 1e5), new("b")];
        if (inSeries)
        {
            nodes.Add(new Node("m"));
        }

        string[] pumps = inSeries ? ["pump1", "pump2"] : ["pump1"];
        return (Network.Create(nodes, branches).Value, pumps);
    }

    private static void Hold(ReferenceCsv.Case worked, string name, double value) =>
        value.ShouldBe(worked.Expected[name].Number, worked.Expected[name].Absolute, name);
}
