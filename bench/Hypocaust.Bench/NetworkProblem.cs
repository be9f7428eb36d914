using System.Text.Json;
using Hypocaust.Hydraulics;

namespace Hypocaust.Bench;

/// <summary>Problem P1 of <c>bench/reference/problems/p1.json</c> as a network of the product.</summary>
internal sealed class NetworkProblem
{
    private NetworkProblem(Network network, JsonElement inputs, JsonElement solution)
    {
        Network = network;
        DensityKgPerM3 = inputs.GetProperty("rho").GetDouble();
        ViscosityPaS = inputs.GetProperty("mu").GetDouble();
        FlowsM3PerS = Numbers(solution.GetProperty("flows"));
        PressuresPa = Numbers(solution.GetProperty("pressures"));
    }

    public Network Network { get; }

    public double DensityKgPerM3 { get; }

    public double ViscosityPaS { get; }

    public IReadOnlyDictionary<string, double> FlowsM3PerS { get; }

    public IReadOnlyDictionary<string, double> PressuresPa { get; }

    public static NetworkProblem Read(string path)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(path));
        var inputs = document.RootElement.GetProperty("inputs");
        var held = inputs.GetProperty("reference_node").GetString();
        var pressure = inputs.GetProperty("reference_pressure").GetDouble();
        var network = Network.Create(
            inputs
                .GetProperty("nodes")
                .EnumerateArray()
                .Select(node => node.GetString()!)
                .Select(node => new Node(node, 0, node == held ? pressure : null)),
            inputs.GetProperty("links").EnumerateArray().Select(ToBranch)
        );
        return new NetworkProblem(
            network.Value,
            inputs,
            document.RootElement.GetProperty("solution")
        );
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

    private static Dictionary<string, double> Numbers(JsonElement table) =>
        table.EnumerateObject().ToDictionary(entry => entry.Name, entry => entry.Value.GetDouble());
}
