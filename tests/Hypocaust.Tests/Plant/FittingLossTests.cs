using Hypocaust.Plant;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Plant;

public sealed class FittingLossTests
{
    // Inner diameters of schedule 40 steel, ASME B36.10M (from memory). The printed factors lie up to 5 % above the fully
    // rough formula with the roughness printed beside them (0.0018 in); an elbow's own loss is uncertain by far more.
    [Theory]
    [InlineData("1/2", 0.01580)]
    [InlineData("3/4", 0.02093)]
    [InlineData("1", 0.02664)]
    [InlineData("1-1/4", 0.03505)]
    [InlineData("2", 0.05250)]
    public void Rough_factor_lies_within_a_twentieth_of_the_printed_one(
        string nominal,
        double innerM
    )
    {
        // source: crane_ft.csv, Crane Technical Paper 410, page A-26 (seen)
        var printed = ReferenceCsv
            .Table("crane_ft.csv")
            .Single(row => row["nominal_in"] == nominal)
            .Number("f_T");
        FittingLoss.RoughFactor(innerM).ShouldBe(printed, 0.05 * printed);
    }

    [Theory]
    [InlineData("elbow90 standard threaded", FittingLoss.ElbowRatio)]
    [InlineData("tee through run", FittingLoss.TeeRunRatio)]
    [InlineData("tee through branch", FittingLoss.TeeBranchRatio)]
    public void Ratios_are_the_published_ones(string fitting, double ratio)
    {
        // source: fitting_l_over_d.csv (seen in several L/D lists)
        var row = ReferenceCsv
            .Table("fitting_l_over_d.csv")
            .First(found => found["fitting"].StartsWith(fitting, StringComparison.Ordinal));
        ratio.ShouldBe(row.Number("l_over_d"));
    }
}
