using Hypocaust.Hydraulics.Friction;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Hydraulics.Friction;

/// <summary>Against friction.csv and friction_correlations.csv: computed with the python library fluids 1.0.22.</summary>
public sealed class ChurchillFrictionTests
{
    /// <summary>Below this the library behind the files gives 64/Re whatever the formula asked for.</summary>
    internal const double LibraryIsLaminarBelow = 2040;

    /// <summary>How far Churchill's formula lies above 64/Re there: [1 + (Re/8)¹² (Re/37530)²⁴]^(1/12) − 1, smooth term left out.</summary>
    internal static double BendBelow2040(double reynolds) =>
        Math.Pow(1 + (Math.Pow(reynolds / 8, 12) * Math.Pow(reynolds / 37530, 24)), 1.0 / 12)
        - 1
        + 1e-12;

    [Theory]
    [InlineData("friction.csv", "churchill", 0.6e-8)]
    [InlineData("friction_correlations.csv", "churchill_1977", 1e-11)]
    public void Factor_equals_the_reference_library(string file, string column, double rounding)
    {
        foreach (var row in ReferenceCsv.Table(file))
        {
            var reynolds = row.Number("reynolds");
            var expected = row.Number(column);
            ChurchillFriction
                .Factor(reynolds, row.Number("relative_roughness"))
                .ShouldBe(
                    expected,
                    rounding
                        + (
                            expected
                            * (reynolds < LibraryIsLaminarBelow ? BendBelow2040(reynolds) : 1e-9)
                        )
                );
        }
    }

    /// <summary>The formula as printed, with powers, in place of the products and logarithms of the code.</summary>
    [Fact]
    public void Factor_equals_the_formula_as_printed()
    {
        for (var reynolds = 1.0; reynolds < 1e8; reynolds *= 1.17)
        {
            foreach (var roughness in (double[])[0, 1e-5, 1e-3, 0.05])
            {
                var a = Math.Pow(
                    2.457 * Math.Log(1 / (Math.Pow(7 / reynolds, 0.9) + (0.27 * roughness))),
                    16
                );
                var b = Math.Pow(37530 / reynolds, 16);
                var expected =
                    8 * Math.Pow(Math.Pow(8 / reynolds, 12) + Math.Pow(a + b, -1.5), 1.0 / 12);
                ChurchillFriction.Factor(reynolds, roughness).ShouldBe(expected, 1e-13 * expected);
            }
        }
    }

    [Theory]
    [InlineData(1e-3, 0.025)]
    [InlineData(1e-2, 0.031)]
    public void Factor_in_turbulent_flow_stays_as_near_to_Colebrook_as_documented(
        double roughest,
        double difference
    )
    {
        for (var reynolds = 4000.0; reynolds < 1e8; reynolds *= 1.3)
        {
            foreach (var part in (double[])[0, 0.01, 0.1, 0.5, 1])
            {
                var churchill = ChurchillFriction.Factor(reynolds, part * roughest);
                var colebrook = ColebrookFriction.Factor(reynolds, part * roughest);
                (churchill / colebrook).ShouldBe(1, difference);
            }
        }
    }

    [Fact]
    public void Factor_in_laminar_flow_is_that_of_Hagen_and_Poiseuille()
    {
        for (var reynolds = 1.0; reynolds < 1500; reynolds *= 1.3)
        {
            (ChurchillFriction.Factor(reynolds, 1e-3) * reynolds).ShouldBe(64, 64 * 1e-5);
        }
    }

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(0, 0)]
    [InlineData(5000, -1e-9)]
    [InlineData(5000, 0.06)]
    public void Factor_outside_its_range_is_refused(double reynolds, double roughness) =>
        Should.Throw<ArgumentOutOfRangeException>(() =>
            ChurchillFriction.Factor(reynolds, roughness)
        );
}
