using System.Text.Json;
using Hypocaust.Hydraulics;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>
/// Problem P1 of bench/reference: a whole plant with two pumps, closely spaced tees and twelve loops; solved by SciPy (root, lm) and by hand-written C.
/// </summary>
public sealed class BenchmarkProblemTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Cold_solve_equals_the_solution_of_scipy(bool vectorised)
    {
        using var document = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Reference", "p1.json"))
        );
        var inputs = document.RootElement.GetProperty("inputs");
        var known = document.RootElement.GetProperty("solution");
        var density = inputs.GetProperty("rho").GetDouble();
        var network = Build(inputs);
        var solution = new NetworkSolver(
            network,
            NetworkSolverOptions.Default with
            {
                Vectorised = vectorised,
            }
        ).Solve(new NetworkConditions(network, density, inputs.GetProperty("mu").GetDouble()));

        solution.Status.ShouldBe(SolveStatus.Converged);
        foreach (var flow in known.GetProperty("flows").EnumerateObject())
        {
            var expected = flow.Value.GetDouble();
            (solution.FlowKgPerS(flow.Name) / density).ShouldBe(
                expected,
                1e-9 * Math.Abs(expected),
                flow.Name
            );
        }

        foreach (var pressure in known.GetProperty("pressures").EnumerateObject())
        {
            solution
                .PressurePa(pressure.Name)!
                .Value.ShouldBe(pressure.Value.GetDouble(), 1e-5, pressure.Name);
        }
    }

    private static Network Build(JsonElement inputs)
    {
        var held = inputs.GetProperty("reference_node").GetString();
        var pressure = inputs.GetProperty("reference_pressure").GetDouble();
        var nodes = inputs
            .GetProperty("nodes")
            .EnumerateArray()
            .Select(node => node.GetString()!)
            .Select(node => new Node(node, 0, node == held ? pressure : null));
        return Network
            .Create(nodes, inputs.GetProperty("links").EnumerateArray().Select(ToBranch))
            .Value;
    }

    private static Branch ToBranch(JsonElement link)
    {
        double Number(string name) => link.GetProperty(name).GetDouble();
        string Text(string name) => link.GetProperty(name).GetString()!;
        return new Branch(Text("name"), Text("from"), Text("to"))
        {
            LengthM = Number("L"),
            InnerDiameterM = Number("D"),
            RoughnessM = Number("eps"),
            LossCoefficient = Number("K"),
            ReverseLossCoefficient = Number("krev") > 0 ? Number("krev") : null,
            CrackingPressurePa = Number("crack"),
            Pump = Number("H0") > 0 ? new PumpLaw(Number("H0"), Number("a"), Number("b")) : null,
        };
    }
}
