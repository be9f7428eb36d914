using Hypocaust.Floor;
using Hypocaust.Floor.Section;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor.Section;

public sealed class FloorSection2DTests
{
    public static TheoryData<string> Cases =>
        [.. ReferenceCsv.Table("section2d.csv").Select(row => row["case"])];

    private static ReferenceCsv.Row RowOf(string name) =>
        ReferenceCsv.Table("section2d.csv").Single(row => row["case"] == name);

    private static FloorSection2D Solved(SectionBuildUp section, int cells = 4) =>
        FloorSection2D.Solve(section, new SectionAccuracy(cells)).Value;

    // The file asks for 0.5 % and 0.1 K of a 2-D solver; measured: within 0.15 % and 0.02 K (docs/methods/section.md).
    [Theory]
    [MemberData(nameof(Cases))]
    public void Heat_and_surface_equal_the_independent_solution(string name)
    {
        var row = RowOf(name);
        var section = Solved(Section2D.Read(row).BuildUp());
        var room = row.Number("room_C");
        var (water, below) = (row.Number("fluid_C") - room, row.Number("below_C") - room);
        var (up, down) = (row.Number("q_up_W_m2"), row.Number("q_down_W_m2"));
        section.Response.UpFluxWPerM2(water, below).ShouldBe(up, 0.002 * up);
        section.Response.DownFluxWPerM2(water, below).ShouldBe(down, 0.002 * down + 1e-9);
        (room + section.Response.WarmestExcessK(water, below)).ShouldBe(
            row.Number("t_surface_max_C"),
            0.02
        );
        (room + section.Response.ColdestExcessK(water, below)).ShouldBe(
            row.Number("t_surface_min_C"),
            0.02
        );
    }

    // what is told as the error is no less than what the error is
    [Theory]
    [MemberData(nameof(Cases))]
    public void Estimated_error_covers_the_true_one(string name)
    {
        var row = RowOf(name);
        var section = Solved(Section2D.Read(row).BuildUp());
        var room = row.Number("room_C");
        var up = section.Response.UpFluxWPerM2(
            row.Number("fluid_C") - room,
            row.Number("below_C") - room
        );
        section.ErrorPercent.ShouldBeLessThan(0.4);
        Math.Abs(100 * ((up / row.Number("q_up_W_m2")) - 1)).ShouldBeLessThan(section.ErrorPercent);
    }

    // the file's sections: a gap of 1 mm under the tube, then insulation that lets nothing through at its underside.
    // Tolerance: the 0.5 % that section2d.csv asks of a 2-D solver; the most, 0.35 %, is for 12 mm of cover.
    [Fact]
    public void Conductance_without_loss_equals_the_solutions_over_the_table_range()
    {
        foreach (var row in ReferenceCsv.Table("floor_limits_2d.csv"))
        {
            var (cover, diameter) = (
                row.Number("su_over_lambda_m2K_W") * 1.2,
                row.Number("tube_od_m")
            );
            var section = Solved(
                new SectionBuildUp
                {
                    SpacingM = row.Number("spacing_m"),
                    Tube = new EmbeddedTube(diameter, 0.002, 0.35),
                    Layers =
                    [
                        new SectionLayer(cover + diameter + 0.001, 1.2),
                        new SectionLayer(0.75 * 0.035, 0.035),
                    ],
                    TubeDepthM = cover + (diameter / 2),
                }
            );
            var expected = row.Number("KH_2d");
            section.Response.UpWPerM2K.ShouldBe(expected, 0.005 * expected);
            section.Response.DownWPerM2K.ShouldBe(0);
            var warmest = section.Response.WarmestByWater;
            var uniform = section.Response.UpWPerM2K / 10.8;
            (uniform / warmest).ShouldBe(row.Number("limit_ratio_2d"), 0.005);
            (20 * (warmest - section.Response.ColdestByWater)).ShouldBe(
                row.Number("ripple_K"),
                0.05
            );
        }
    }

    // analytic: a row of line sources with its images, where the tube lies well inside one material
    [Theory]
    [InlineData(0.15, 0.1, 0.25, 1.8)]
    [InlineData(0.3, 0.15, 0.3, 1.4)]
    [InlineData(0.6, 0.3, 0.6, 1.4)]
    [InlineData(0.1, 0.06, 0.2, 0.8)]
    public void Deep_tube_equals_the_series_of_line_sources(
        double spacing,
        double depth,
        double thickness,
        double conductivity
    )
    {
        var tube = new EmbeddedTube(0.016, 0.002, 0.35);
        var section = Solved(
            new SectionBuildUp
            {
                SpacingM = spacing,
                Tube = tube,
                Layers = [new SectionLayer(thickness, conductivity)],
                TubeDepthM = depth,
            }
        );
        var plane = TubePlaneResistance
            .Of(new TubeRowSlab(spacing, conductivity, 0.016, depth, thickness, 10.8, 0))
            .Value;
        var expected =
            1
            / (
                (spacing * tube.WallResistanceMKPerW)
                + plane.ResistanceM2KPerW
                + (depth / conductivity)
                + (1 / 10.8)
            );
        section.Response.UpWPerM2K.ShouldBe(expected, 0.002 * expected);
    }

    [Fact]
    public void Finer_grids_come_closer()
    {
        var row = RowOf("copper-tube-slab-200");
        var build = Section2D.Read(row).BuildUp();
        var error = new[] { 2, 4, 8 }
            .Select(cells =>
                Math.Abs(
                    (Solved(build, cells).Response.UpFluxWPerM2(20, 0) / row.Number("q_up_W_m2"))
                        - 1
                )
            )
            .ToList();
        error.ShouldBeInOrder(SortDirection.Descending);
    }

    // the figures in closed form for one more resistance at the tube, against a solution that has it
    [Fact]
    public void Film_added_afterwards_equals_a_solution_with_it()
    {
        var build = Section2D.Read(RowOf("film-slab-200")).BuildUp();
        var with = Solved(build).Response;
        var added = Solved(build with { FilmMKPerW = 0 })
            .Response.WithTubeResistance(build.SpacingM * build.FilmMKPerW);
        added.UpWPerM2K.ShouldBe(with.UpWPerM2K, 0.001 * with.UpWPerM2K);
        added.DownWPerM2K.ShouldBe(with.DownWPerM2K, 0.002 * with.DownWPerM2K);
        added.ThroughWPerM2K.ShouldBe(with.ThroughWPerM2K, 0.01 * with.ThroughWPerM2K);
        added.WarmestByWater.ShouldBe(with.WarmestByWater, 0.001 * with.WarmestByWater);
        added.WarmestByBelow.ShouldBe(with.WarmestByBelow, 0.002);
    }

    [Fact]
    public void Any_floor_of_the_tables_is_solved_closely_and_within_the_laws_of_heat()
    {
        var random = new Random(81);
        for (var trial = 0; trial < 20; trial++)
        {
            var build = SectionBuildUp.Of(Floors.Draw(random));
            if (build.SpacingM <= build.Tube.OuterDiameterM)
            {
                continue;
            }

            var section = Solved(build);
            var field = section.FieldC(20, 20, 20);
            field[0, 0].ShouldBe(20);

            section.Response.WarmestExcessK(1, 1).ShouldBeLessThanOrEqualTo(1 + 1e-9);
            section.Response.UpWPerM2K.ShouldBeGreaterThan(0);
            section.Response.ThroughWPerM2K.ShouldBeGreaterThanOrEqualTo(0);
            section.Response.WarmestByWater.ShouldBeGreaterThanOrEqualTo(
                section.Response.ColdestByWater - 1e-9
            );
            // most where the tube lies on the underside of a slab that is hardly insulated
            section.ErrorPercent.ShouldBeLessThan(2);
        }
    }

    [Fact]
    public void Temperatures_of_the_picture_lie_between_the_three_given()
    {
        var field = Solved(SectionBuildUp.Of(Floors.Ordinary)).FieldC(40, 20, 5);
        for (var row = 0; row < field.Rows; row++)
        {
            for (var column = 0; column < field.Columns; column++)
            {
                field[column, row].ShouldBeInRange(5 - 1e-9, 40 + 1e-9);
            }
        }
    }

    [Fact]
    public void Impossible_sections_are_refused()
    {
        static string Code(WetFloorSpecification floor) =>
            FloorSection2D.Solve(SectionBuildUp.Of(floor)).Problems.Single().Code;

        Code(Floors.Ordinary with { SpacingM = 0.015 }).ShouldBe("floor-tube-not-inside");
        Code(Floors.Ordinary with { CoverM = 0 }).ShouldBe("floor-tube-not-inside");
        Code(Floors.Ordinary with { CoverM = double.NaN }).ShouldBe("floor-tube-not-inside");
        Code(Floors.Ordinary with { CoveringResistanceM2KPerW = -1 })
            .ShouldBe("floor-covering-impossible");
        Code(Floors.Ordinary with { ScreedConductivityWPerMK = 0 })
            .ShouldBe("floor-conductivity-impossible");
        Code(Floors.Ordinary with { ScreedBelowM = 1, Below = Floors.Insulation(0.1) })
            .ShouldBe("floor-below-less-than-slab");
    }
}
