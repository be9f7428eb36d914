using Hypocaust.Floor;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor;

/// <summary>The data files of the library hold the figures of the reference files, and say where they come from.</summary>
public sealed class EmbeddedDataTests
{
    [Fact]
    public void Limit_table_holds_every_reference_point()
    {
        // en1264_limits.csv: EN 1264-2 tables as remembered; exact, since both are tables
        var rows = ReferenceCsv.Table("en1264_limits.csv");
        rows.Count.ShouldBe(72);
        foreach (var row in rows)
        {
            var (spacing, ratio) = (row.Number("spacing_m"), row.Number("su_over_lambda_m2K_W"));
            En1264Tables.LimitFactor(spacing, ratio).ShouldBe(row.Number("BG"));
            En1264Tables.LimitExponent(spacing, ratio).ShouldBe(row.Number("nG"));
        }
    }

    [Fact]
    public void Factor_tables_hold_every_reference_point()
    {
        foreach (var row in ReferenceCsv.Table("en1264_factors.csv"))
        {
            var covering = row.Number("covering_m2K_W");
            var ours = row["factor"] switch
            {
                "aT" => En1264Tables.SpacingFactor(covering),
                "aU" => En1264Tables.CoverFactor(row.Number("spacing_m"), covering),
                _ => En1264Tables.DiameterFactor(row.Number("spacing_m"), covering),
            };
            ours.ShouldBe(row.Number("value"));
        }
    }

    [Theory]
    [InlineData("heated room", BelowFloor.HeatedRoom)]
    [InlineData(
        "unheated or intermittently heated room or ground",
        BelowFloor.UnheatedRoomOrGround
    )]
    [InlineData("outside 0 degC and above", BelowFloor.OutsideFrostFree)]
    [InlineData("outside -5..0 degC", BelowFloor.OutsideToMinus5)]
    [InlineData("outside -15..-5 degC", BelowFloor.OutsideToMinus15)]
    public void Insulation_table_holds_the_reference_point(string name, BelowFloor below) =>
        MinimumInsulation
            .For(below)
            .ResistanceM2KPerW.ShouldBe(
                ReferenceCsv
                    .Table("en1264_insulation.csv")
                    .Single(row => row["below"] == name)
                    .Number("R_min_m2K_W")
            );

    [Fact]
    public void Insulation_above_outside_air_follows_the_design_temperature_and_ends_where_the_table_ends()
    {
        MinimumInsulation.ForOutside(0).Value.Below.ShouldBe(BelowFloor.OutsideFrostFree);
        MinimumInsulation.ForOutside(-0.1).Value.Below.ShouldBe(BelowFloor.OutsideToMinus5);
        MinimumInsulation.ForOutside(-15).Value.Below.ShouldBe(BelowFloor.OutsideToMinus15);
        MinimumInsulation.ForOutside(-15.1).Problems.Single().What.ShouldContain("-15 °C");
        MinimumInsulation.ForOutside(double.NaN).Succeeded.ShouldBeFalse();
    }

    [Fact]
    public void Every_table_says_that_it_is_from_memory()
    {
        En1264Output.Source.ShouldContain("from memory");
        LimitCurve.Source.ShouldContain("from memory");
        MinimumInsulation.Source.ShouldContain("from memory");
    }

    [Fact]
    public void Rules_agree_with_the_site_limits()
    {
        // practice_limits.csv: tube cover seen in EN 1264-4:2021 4.2.2.9.2, supply from memory
        var rows = ReferenceCsv.Table("practice_limits.csv");
        double Of(string subject) => rows.Single(row => row["subject"] == subject).Number("value");
        (WetFloorRules.MinimumScreedCoverM * 1000).ShouldBe(Of("tube cover"), 1e-9);
        WetFloorRules.MaximumSupplyCementScreedC.ShouldBe(Of("supply temperature"));
    }
}
