using Hypocaust.Hydraulics.Friction;
using Hypocaust.Tests.Reference;
using MathNet.Numerics.RootFinding;

namespace Hypocaust.Tests.Hydraulics.Friction;

public sealed class ColebrookFrictionTests
{
    /// <summary>friction_correlations.csv: python library fluids 1.0.22.</summary>
    [Fact]
    public void Factor_equals_the_reference_library()
    {
        var compared = 0;
        foreach (var row in ReferenceCsv.Table("friction_correlations.csv"))
        {
            if (row.NumberOrNull("colebrook") is { } expected)
            {
                // ten figures are given
                ColebrookFriction
                    .Factor(row.Number("reynolds"), row.Number("relative_roughness"))
                    .ShouldBe(expected, 1e-9 * expected);
                compared++;
            }
        }

        compared.ShouldBe(18);
    }

    [Theory]
    [InlineData(4000, 0)]
    [InlineData(4000, 0.05)]
    [InlineData(1e5, 1e-4)]
    [InlineData(1e8, 0)]
    [InlineData(1e8, 0.05)]
    public void Factor_is_the_root_that_a_bracketing_method_finds(double reynolds, double roughness)
    {
        var factor = Brent.FindRoot(
            f =>
                (1 / Math.Sqrt(f))
                + (2 * Math.Log10((roughness / 3.7) + (2.51 / (reynolds * Math.Sqrt(f))))),
            1e-4,
            1,
            1e-15,
            200
        );
        ColebrookFriction.Factor(reynolds, roughness).ShouldBe(factor, 1e-12);
    }

    [Fact]
    public void Factor_below_turbulent_flow_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => ColebrookFriction.Factor(3999, 0));
}
