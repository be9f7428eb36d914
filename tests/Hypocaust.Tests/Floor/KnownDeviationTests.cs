using Hypocaust.Floor;
using Hypocaust.Floor.Section;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor;

/// <summary>
/// The table method measured against sections solved in two dimensions. Nothing here is tuned: the bounds are those of the
/// reference README (K_H −11…+20 %, limits ±20 %, rounded to whole per cent there) or those that we state to the person.
/// </summary>
public sealed class KnownDeviationTests
{
    private const double ReadmeRounding = 0.5;

    [Fact]
    public void Table_values_of_the_method_files_are_ours()
    {
        // KH_table and the ratios rest on the same remembered tables, computed elsewhere: 1e-4
        foreach (var row in ReferenceCsv.Table("floor_methods.csv"))
        {
            Agree(row, OfMethods(row), "limit_ratio_table");
        }

        foreach (var row in ReferenceCsv.Table("floor_limits_2d.csv"))
        {
            Agree(row, OfLimits(row), "limit_ratio_table");
        }
    }

    [Fact]
    public void Conductance_stays_within_the_stated_distance_of_the_solution()
    {
        var all = new List<double>();
        foreach (var row in ReferenceCsv.Table("floor_methods.csv"))
        {
            all.Add(Held(OfMethods(row), row.Number("KH_fe_adiabatic")));
        }

        foreach (var row in ReferenceCsv.Table("floor_limits_2d.csv"))
        {
            all.Add(Held(OfLimits(row), row.Number("KH_2d")));
        }

        all.Count.ShouldBe(38);
        all.ShouldAllBe(percent => percent > -11 - ReadmeRounding && percent < 20 + ReadmeRounding);
    }

    [Fact]
    public void Conductance_of_the_twelve_sections_stays_within_the_range_told_to_the_person()
    {
        // These slabs of λ = 1.8 reach −17.5 %, beyond the −11 % of the README's other two files.
        var all = new List<double>();
        foreach (var row in ReferenceCsv.Table("section2d.csv"))
        {
            var created = WetFloorSection.Create(Section2D.Read(row).Specification());
            if (row["case"] == "wood-screed-300")
            {
                created.Problems.Single().Code.ShouldBe("floor-covering-outside");
                continue;
            }

            var excess = row.Number("fluid_C") - row.Number("room_C");
            all.Add(Held(created.Value, row.Number("q_up_W_m2") / excess));
        }

        all.Count.ShouldBe(11);
        all.Min().ShouldBe(-17.5, 0.1);
        all.Max().ShouldBe(8.5, 0.1);
    }

    [Fact]
    public void Range_told_is_used_up_by_the_sections_compared()
    {
        // a range far wider than what was measured would say nothing; the corners below are the worst of docs/methods/section.md
        var screed = KnownDeviation.Of(Floors.Section(Floors.Ordinary));
        BySection(1.2, 0.3, 0.012, 0).ShouldBeInRange(screed.HighPercent - 1, screed.HighPercent);
        BySection(1.2, 0.15, 0.1, 0.15).ShouldBeInRange(screed.LowPercent, screed.LowPercent + 1.1);
        var concrete = KnownDeviation.Of(
            Floors.Section(Floors.Ordinary with { ScreedConductivityWPerMK = 1.8 })
        );
        BySection(1.8, 0.05, 0.012, 0)
            .ShouldBeInRange(concrete.HighPercent - 1, concrete.HighPercent);
    }

    [Fact]
    public void Limit_flux_stays_within_twenty_per_cent_of_the_uniform_surface()
    {
        // the README's ±20 % holds in per cent of the uniform surface's flux; relative to the solution it is −23…+21 %
        foreach (var row in ReferenceCsv.Table("floor_limits_2d.csv"))
        {
            var ours = LimitRatio(OfLimits(row));
            (ours - row.Number("limit_ratio_2d")).ShouldBeInRange(-0.20, 0.20);
            (ours / row.Number("limit_ratio_2d") - 1).ShouldBeInRange(-0.235, 0.215);
        }
    }

    [Fact]
    public void Hottest_spot_and_downward_heat_of_the_sections_stay_within_the_stated_distance()
    {
        // Bounds as stated in docs/methods/floor.md: peak by line sources −0.03…+0.26 K, by the limit curve −1.5…+5.5 K,
        // heat down −11.1…+3.5 %; fluid 20 K over the room.
        foreach (var row in ReferenceCsv.Table("section2d.csv"))
        {
            if (
                !WetFloorSection.Create(Section2D.Read(row).Specification()).TryGet(out var section)
            )
            {
                continue;
            }

            var (name, down) = (row["case"], row.Number("q_down_W_m2"));
            var place = FloorSurroundings.Create(row.Number("room_C"), row.Number("below_C")).Value;
            var floor = WetFloor.Of(section, place, SurfaceZone.Edge);
            var peak = row.Number("t_surface_max_C") - row.Number("t_surface_mean_C");
            var ours = floor.CrossCheck.SurfacePeakK(row.Number("q_up_W_m2") + down);
            (ours - peak).ShouldBeInRange(-0.03, 0.26, name);
            var byCurve = floor.Curve.Value.HottestExcessK(20) + row.Number("room_C");
            (byCurve - row.Number("t_surface_max_C")).ShouldBeInRange(-1.5, 5.5, name);
            floor
                .Characteristic.DownwardFluxWPerM2(row.Number("fluid_C"))
                .ShouldBeInRange(down * (1 - 0.111) - 1e-6, down * 1.035 + 1e-6, name);
        }
    }

    [Fact]
    public void Cross_check_without_tables_stays_within_three_per_cent_of_the_solution()
    {
        // the sections lie on insulation under a gap of 1 mm (floor_methods.csv) or on nothing (floor_limits_2d.csv)
        foreach (var row in ReferenceCsv.Table("floor_methods.csv"))
        {
            CrossCheckHolds(OfMethods(row), row.Number("KH_fe_adiabatic"));
        }

        foreach (var row in ReferenceCsv.Table("floor_limits_2d.csv"))
        {
            var solution = row.Number("KH_2d");
            var check = CrossCheckHolds(OfLimits(row), solution);

            // hottest over mean excess is 1/limit_ratio, mean excess q/10.8: the peak follows; measured 0…+0.33 K, on peaks up to 8.6 K
            var flux = 20 * solution;
            var peak = flux / 10.8 * (1 / row.Number("limit_ratio_2d") - 1);
            (check.SurfacePeakK(flux) - peak).ShouldBeInRange(-0.001, 0.34);
        }
    }

    private static LineSourceCrossCheck CrossCheckHolds(WetFloorSection section, double solution)
    {
        var output = En1264Output.Of(section);
        var check = LineSourceCrossCheck.Of(output);
        (100 * (check.ConductanceWPerM2K / solution - 1)).ShouldBeInRange(-3, 0.5);
        check.TablePercent.ShouldBe(
            100 * (output.ConductanceWPerM2K / check.ConductanceWPerM2K - 1),
            1e-9
        );
        return check;
    }

    [Fact]
    public void Floor_outside_the_compared_range_is_told_so()
    {
        KnownDeviation.Of(Floors.Section(Floors.Ordinary)).IsWithinComparedRange.ShouldBeTrue();
        var wide = KnownDeviation.Of(Floors.Section(Floors.Ordinary with { SpacingM = 0.45 }));
        wide.IsWithinComparedRange.ShouldBeFalse();
        wide.Text.ShouldContain("outside the sections that were compared");
    }

    // no heat downward, as the table has it
    private static double BySection(
        double conductivity,
        double spacing,
        double cover,
        double covering
    )
    {
        var floor = Floors.Ordinary with
        {
            SpacingM = spacing,
            CoverM = cover,
            ScreedConductivityWPerMK = conductivity,
            CoveringResistanceM2KPerW = covering,
            ScreedBelowM = 0.001,
        };
        var solved = FloorSection2D.Solve(
            SectionBuildUp.Of(floor) with
            {
                BelowM2KPerW = double.PositiveInfinity,
            }
        );
        return Percent(Floors.Section(floor), solved.Value.Response.UpWPerM2K);
    }

    private static double Held(WetFloorSection section, double solution)
    {
        var known = KnownDeviation.Of(section);
        var percent = Percent(section, solution);
        known.IsWithinComparedRange.ShouldBeTrue();
        percent.ShouldBeInRange(known.LowPercent, known.HighPercent);
        return percent;
    }

    private static double Percent(WetFloorSection section, double solution) =>
        100 * (En1264Output.Of(section).ConductanceWPerM2K / solution - 1);

    private static double LimitRatio(WetFloorSection section)
    {
        var curve = LimitCurve.Of(En1264Output.Of(section)).Value;
        var flux = En1264Output.Of(section).FluxWPerM2(curve.ExcessK);
        return flux / SurfaceCurve.FluxWPerM2(9);
    }

    private static void Agree(ReferenceCsv.Row row, WetFloorSection section, string ratio)
    {
        var expected = row.Number("KH_table");
        En1264Output.Of(section).ConductanceWPerM2K.ShouldBe(expected, 1e-4 * expected);
        // one value of the file is above 1; ours is held to 1 and says so (LimitCurve.IsCapped)
        var limit = row.Number(ratio);
        LimitRatio(section).ShouldBe(Math.Min(limit, 1), 1e-3);
        LimitCurve.Of(En1264Output.Of(section)).Value.IsCapped.ShouldBe(limit > 1);
    }

    private static WetFloorSection OfMethods(ReferenceCsv.Row row) =>
        Floors.Section(
            Floors.Ordinary with
            {
                SpacingM = row.Number("spacing_m"),
                CoverM = row.Number("cover_m"),
                ScreedConductivityWPerMK = row.Number("screed_W_mK"),
                CoveringResistanceM2KPerW = row.Number("covering_m2K_W"),
                Tube = new EmbeddedTube(
                    row.Number("tube_od_m"),
                    row.Number("tube_wall_m"),
                    row.Number("tube_W_mK")
                ),
            }
        );

    /// <summary>Screed 1.2 W/mK, bare, tube 0.35 W/mK with a wall of 2 mm: the head of the file.</summary>
    private static WetFloorSection OfLimits(ReferenceCsv.Row row) =>
        Floors.Section(
            Floors.Ordinary with
            {
                SpacingM = row.Number("spacing_m"),
                // written as ratio; to the micrometre, so that 0.01 does not fall a rounding error short of the table
                CoverM = Math.Round(row.Number("su_over_lambda_m2K_W") * 1.2, 6),
                Tube = new EmbeddedTube(row.Number("tube_od_m"), 0.002, 0.35),
            }
        );
}
