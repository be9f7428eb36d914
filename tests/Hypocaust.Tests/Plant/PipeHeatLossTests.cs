using Hypocaust.Plant;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Plant;

/// <summary>Source: commissioning.csv (cylinder resistances in series, computed independently).</summary>
public sealed class PipeHeatLossTests
{
    public static TheoryData<string> Cases =>
        [
            .. ReferenceCsv
                .Cases("commissioning.csv")
                .Where(found => found.Name.StartsWith("pipe-loss", StringComparison.Ordinal))
                .Select(found => found.Name),
        ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Loss_and_surface_equal_the_worked_case(string name)
    {
        var found = ReferenceCsv
            .Cases("commissioning.csv")
            .Single(candidate => candidate.Name == name);
        var loss = new PipeHeatLoss(
            found.Input("pipe_inner_diameter"),
            found.Input("pipe_outer_diameter"),
            found.Input("pipe_conductivity"),
            found.Input("insulation_thickness"),
            found.Input("insulation_conductivity"),
            found.Input("outer_coefficient")
        );
        var over = found.Input("fluid") - found.Input("room");
        Near(loss.ConductanceWPerMK, found.Expected["U_linear"]);
        Near(loss.ConductanceWPerMK * over, found.Expected["loss"]);
        Near(
            loss.SurfaceC(found.Input("fluid"), found.Input("room")),
            found.Expected["outside_surface"]
        );
    }

    private static void Near(double value, ReferenceCsv.Expected expected) =>
        value.ShouldBe(expected.Number, expected.Absolute);
}
