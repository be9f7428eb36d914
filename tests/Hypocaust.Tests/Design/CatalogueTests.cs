using Hypocaust.Design;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Design;

/// <summary>The built-in parts against the tables of their standards in <c>Reference/Data</c>.</summary>
public sealed class CatalogueTests
{
    private const double Inch = 0.0254;

    [Fact]
    public void Copper_tube_has_the_sizes_of_ASTM_B88()
    {
        var rows = ReferenceCsv
            .Table("copper_b88.csv")
            .Where(row => row.Number("od_in") <= 1.375)
            .ToList();
        rows.Count.ShouldBe(18);
        foreach (var row in rows)
        {
            var name = $"copper {row["type"]} {row["nominal_in"].Replace('-', ' ')}";
            ShouldMeasure(Pipe(name), row.Number("id_in") * Inch, row.Number("od_in") * Inch);
        }
    }

    [Fact]
    public void Pex_has_the_outer_and_smaller_average_inner_diameter_of_ASTM_F876()
    {
        var rows = ReferenceCsv
            .Table("pex_f876.csv")
            .Where(row => row.NumberOrNull("average_id_in") is not null)
            .ToList();
        rows.Count.ShouldBe(5);
        foreach (var row in rows)
        {
            foreach (var barrier in (bool[])[true, false])
            {
                var pipe = Pipe($"pex {(barrier ? "barrier " : "")}{row["nominal_in"]}");
                ShouldMeasure(pipe, row.Number("average_id_in") * Inch, row.Number("od_in") * Inch);
                pipe.OxygenBarrier.ShouldBe(barrier);
            }
        }
    }

    [Fact]
    public void Metric_tube_has_the_sizes_of_EN_1057_and_ISO_15875()
    {
        foreach (var row in ReferenceCsv.Table("pipe_metric.csv"))
        {
            var size = $"{row["od_mm"]}x{row["wall_mm"]}";
            var isCopper = row["standard"].Contains("copper", StringComparison.Ordinal);
            if (isCopper && row.Number("od_mm") > 35)
            {
                continue;
            }

            string[] names = isCopper
                ? [$"copper {size}"]
                : [$"pex {size}", $"pex barrier {size}", $"pert {size}", $"pert barrier {size}"];
            foreach (var name in names)
            {
                ShouldMeasure(Pipe(name), row.Number("id_mm") / 1000, row.Number("od_mm") / 1000);
            }
        }
    }

    [Theory]
    [InlineData("circulator small", "Ada")]
    [InlineData("circulator medium", "Cleo")]
    [InlineData("circulator large", "Bruno")]
    public void Circulators_lie_on_the_invented_curves_of_the_reference(string name, string pump)
    {
        var speeds = Catalogue.Parts[name].ShouldBeOfType<CirculatorPart>().Speeds;
        speeds.Length.ShouldBe(3);
        foreach (var row in ReferenceCsv.Table("pumps.csv").Where(row => row["pump"] == pump))
        {
            var curve = speeds[(int)row.Number("speed") - 1].Curve;
            curve.Length.ShouldBeGreaterThanOrEqualTo(5);
            foreach (var point in curve)
            {
                var flow = point.Flow.Si * 3600;
                var head =
                    row.Number("a_m") + (row.Number("b") * flow) + (row.Number("c") * flow * flow);
                // heads are written to a tenth of a millimetre
                point.Head.Si.ShouldBe(head, 0.6e-4);
            }
        }
    }

    [Theory]
    [InlineData("ball valve 3/4", typeof(InlinePart))]
    [InlineData("check valve 1", typeof(InlinePart))]
    [InlineData("strainer 1 1/4", typeof(InlinePart))]
    [InlineData("air separator 3/4", typeof(InlinePart))]
    [InlineData("purge valve 3/4", typeof(InlinePart))]
    [InlineData("flow meter 1/2", typeof(InlinePart))]
    [InlineData("tee", typeof(TeePart))]
    [InlineData("closely spaced tees 1 1/4", typeof(CloselySpacedTeesPart))]
    [InlineData("manifold 3 loops", typeof(ManifoldPart))]
    [InlineData("manifold 8 loops", typeof(ManifoldPart))]
    [InlineData("relief 1.5 bar", typeof(ReliefPart))]
    [InlineData("relief 2.5 bar", typeof(ReliefPart))]
    [InlineData("vessel 24 L", typeof(VesselPart))]
    [InlineData("pressure gauge", typeof(TappingPart))]
    [InlineData("electric heater 18 kW", typeof(HeaterPart))]
    public void A_usual_part_is_there(string name, Type type) =>
        Catalogue.Parts[name].ShouldBeOfType(type);

    [Fact]
    public void Every_part_would_be_accepted_on_a_shelf_and_every_pipe_names_its_source()
    {
        foreach (var (name, part) in Catalogue.Parts)
        {
            Names.IsName(name).ShouldBeTrue(name);
            (part is not PipePart pipe || pipe.Source is { Length: > 0 }).ShouldBeTrue(name);
        }
    }

    private static PipePart Pipe(string name) =>
        Catalogue.Parts[name].ShouldBeOfType<PipePart>(name);

    private static void ShouldMeasure(PipePart pipe, double innerM, double outerM)
    {
        pipe.Inner.Si.ShouldBe(innerM, 1e-12);
        pipe.Outer.Si.ShouldBe(outerM, 1e-12);
    }
}
