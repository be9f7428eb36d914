using Hypocaust.Answers;
using Hypocaust.Plant;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Plant;

public sealed class HeatTransportTests
{
    private const double SecondsPerHour = 3600;

    // Source: network.csv N2a/N2b (perfect mixing, ε-NTU loops, given heater power), solved independently with scipy.
    [Theory]
    [InlineData("N2a-primary-faster")]
    [InlineData("N2b-common-pipe-reversed")]
    public void Temperatures_equal_the_reference_network(string name)
    {
        var rows = ReferenceCsv.Table("network.csv").Where(row => row["case"] == name).ToList();
        double Fluid(string field) =>
            rows.Single(row => row["record"] == "fluid" && row["field"] == field).Number("value");
        var branches = rows.Where(row => row["role"] == "input" && row["field"] is "from")
            .Select(row => row["id"])
            .ToList();
        string Text(string id, string field) =>
            rows.Single(row => row["role"] == "input" && row["id"] == id && row["field"] == field)[
                "value"
            ];
        double? Number(string id, string field) =>
            rows.SingleOrDefault(row =>
                    row["role"] == "input" && row["id"] == id && row["field"] == field
                )
                ?.Number("value");
        var nodes = branches
            .SelectMany(id => new[] { Text(id, "from"), Text(id, "to") })
            .Distinct()
            .ToList();
        HeatLaw Law(string id) =>
            Number(id, "heat_gain") is { } gain ? new HeatLaw.Input(gain)
            : Number(id, "UA") is { } ua
                ? new HeatLaw.Exchange(ua, Number(id, "environment")!.Value)
            : HeatLaw.None;
        var transport = new HeatTransport(
            nodes.Count,
            [
                .. branches.Select(id =>
                    (nodes.IndexOf(Text(id, "from")), nodes.IndexOf(Text(id, "to")), Law(id))
                ),
            ],
            surroundingsC: 20
        );
        double[] flows =
        [
            .. branches.Select(id =>
                rows.Single(row =>
                        row["role"] == "expected" && row["id"] == id && row["field"] == "flow"
                    )
                    .Number("value")
                * Fluid("density")
                / SecondsPerHour
            ),
        ];

        var field = transport.Solve(flows, Fluid("cp"));

        // the file's own suggestion is 0.01 K; both methods are exact for given flows
        var expected = rows.Where(row => row["role"] == "expected" && row["field"] == "temperature")
            .ToList();
        expected.Count.ShouldBeGreaterThan(8);
        foreach (var row in expected)
        {
            field.NodesC[nodes.IndexOf(row["id"])]!.Value.ShouldBe(
                row.Number("value"),
                1e-4,
                row["id"]
            );
        }

        foreach (
            var row in rows.Where(row =>
                row["role"] == "expected" && row["field"] == "heat_to_fluid"
            )
        )
        {
            field
                .HeatsW[branches.IndexOf(row["id"])]
                .ShouldBe(row.Number("value"), 0.05, row["id"]);
        }

        field.EnergyResidual.ShouldBeLessThan(1e-8);
    }

    // Source: commissioning.csv, along-*: T(L) = Ta + (Tin − Ta)·exp(−U·L/(m·cp)), exact.
    [Theory]
    [InlineData("along-1")]
    [InlineData("along-2-slow")]
    public void Water_cools_along_a_pipe_as_the_exact_solution(string name)
    {
        var found = ReferenceCsv
            .Cases("commissioning.csv")
            .Single(candidate => candidate.Name == name);
        var flow = found.Input("mass_flow");
        var ua = found.Input("U_linear") * found.Input("length");
        var transport = new HeatTransport(
            2,
            [
                (0, 1, new HeatLaw.Exchange(ua, found.Input("surroundings"))),
                (1, 0, new HeatLaw.Heater(found.Input("inlet"), 1e6, 0)),
            ],
            found.Input("surroundings")
        );
        var field = transport.Solve([flow, flow], found.Input("cp"));
        field.OutletsC[0]!.Value.ShouldBe(found.Expected["outlet"].Number, 1e-7);
        field.HeatsW[1].ShouldBe(found.Expected["heat"].Number, 1e-5);
    }

    [Theory]
    [InlineData(5000, HeaterState.HoldsSetPoint)]
    [InlineData(500, HeaterState.FullPower)]
    [InlineData(0, HeaterState.Off)]
    public void A_heater_does_what_its_power_allows(double capacityW, HeaterState state)
    {
        // 0.05 kg/s around a loss of 100 W/K to 20 °C: at 40 °C leaving, hand-worked demand is m·cp·20·(1 − exp(−100/209)) = 1590 W
        var field = Ring(new HeatLaw.Heater(40, capacityW, 0), 0.05);
        field.HeaterStates[1].ShouldBe(state);
        (-field.HeatsW[0]).ShouldBe(field.HeatsW[1], 1e-6);
        if (state == HeaterState.HoldsSetPoint)
        {
            field.HeatsW[1].ShouldBe(0.05 * 4180 * 20 * (1 - Math.Exp(-100 / 209.0)), 1e-6);
        }
    }

    [Theory]
    [InlineData(0.05, HeaterState.FlowTooSmall)]
    [InlineData(-0.2, HeaterState.FlowTooSmall)]
    [InlineData(0.2, HeaterState.HoldsSetPoint)]
    public void A_flow_switch_sees_forward_flow_only(double flow, HeaterState state) =>
        Ring(new HeatLaw.Heater(40, 5000, 0.1), flow).HeaterStates[1].ShouldBe(state);

    [Fact]
    public void Still_water_has_no_temperature()
    {
        var field = Ring(new HeatLaw.Heater(40, 5000, 0), 0);
        field.NodesC.ShouldAllBe(celsius => celsius == null);
        field.HeatsW.ShouldAllBe(heat => heat == 0);
    }

    private static TemperatureField Ring(HeatLaw.Heater heater, double flow) =>
        new HeatTransport(2, [(0, 1, new HeatLaw.Exchange(100, 20)), (1, 0, heater)], 20).Solve(
            [flow, flow],
            4180
        );
}
