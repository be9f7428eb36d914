using Hypocaust.Floor;

namespace Hypocaust.Tests.Floor;

/// <summary>Outside the reach of the tables there is a problem, never an exception and never a figure.</summary>
public sealed class WetFloorSectionTests
{
    public static TheoryData<double> Impossible =>
        [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1, 0, 1e9];

    [Theory]
    [InlineData(0.0499, "floor-spacing-outside", "50 mm")]
    [InlineData(1.001, "floor-spacing-outside", "1000 mm")]
    public void Create_with_spacing_outside_names_the_limit(
        double spacing,
        string code,
        string limit
    ) => Refuses(Floors.Ordinary with { SpacingM = spacing }, code, limit);

    [Theory]
    [InlineData(0.0099, "10 mm")]
    [InlineData(0.501, "500 mm")]
    public void Create_with_cover_outside_names_the_limit(double cover, string limit) =>
        Refuses(Floors.Ordinary with { CoverM = cover }, "floor-cover-outside", limit);

    [Theory]
    [InlineData(0.0079, "8 mm")]
    [InlineData(0.0301, "30 mm")]
    public void Create_with_diameter_outside_names_the_limit(double diameter, string limit) =>
        Refuses(
            Floors.Ordinary with
            {
                Tube = new EmbeddedTube(diameter, 0.002, 0.35),
            },
            "floor-diameter-outside",
            limit
        );

    [Fact]
    public void Create_with_covering_outside_says_where_the_table_ends_and_what_would_do()
    {
        var problem = WetFloorSection
            .Create(Floors.Ordinary with { CoveringResistanceM2KPerW = 0.157 })
            .Problems.Single();
        problem.What.ShouldBe(
            "the floor covering has a resistance of 0.157 m²K/W and the table of EN 1264-2 reaches from 0 to 0.15 m²K/W"
        );
        problem.Remedy.ShouldContain("solution of the section in two dimensions");
        problem.Place.ShouldBe("coveringResistanceM2KPerW");
    }

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Nothing_throws_and_nothing_passes_with_an_impossible_figure(double figure)
    {
        var floor = Floors.Ordinary;
        WetFloorSpecification[] wrong =
        [
            floor with
            {
                SpacingM = figure,
            },
            floor with
            {
                CoverM = figure,
            },
            floor with
            {
                ScreedConductivityWPerMK = figure,
            },
            floor with
            {
                CoveringResistanceM2KPerW = figure == 0 ? -1e-9 : figure,
            },
            floor with
            {
                Tube = floor.Tube with { OuterDiameterM = figure },
            },
            floor with
            {
                Tube = floor.Tube with { WallM = figure },
            },
            floor with
            {
                Tube = floor.Tube with { ConductivityWPerMK = figure == 1e9 ? -1e9 : figure },
            },
            floor with
            {
                Below = Floors.Insulation(figure == 1e9 ? -1e9 : figure),
            },
        ];
        foreach (var stated in wrong)
        {
            WetFloorSection.Create(stated).Problems.ShouldNotBeEmpty(stated.ToString());
        }
    }

    [Fact]
    public void Create_with_nothing_named_below_is_a_problem()
    {
        Refuses(Floors.Ordinary with { Below = default }, "floor-nothing-below", "hardly any");
        Refuses(
            Floors.Ordinary with
            {
                Below = Floors.Insulation(1e-300),
            },
            "floor-nothing-below",
            "hardly any"
        );
        Refuses(
            Floors.Ordinary with
            {
                ScreedBelowM = double.NaN,
            },
            "floor-screed-below-outside",
            "NaN"
        );
    }

    [Fact]
    public void Create_gives_every_problem_at_once() =>
        WetFloorSection
            .Create(
                new WetFloorSpecification
                {
                    SpacingM = 0.01,
                    Tube = new EmbeddedTube(0.05, 0.03, 0),
                    CoverM = 0,
                    ScreedConductivityWPerMK = 0.1,
                    CoveringResistanceM2KPerW = 1,
                    Below = [],
                }
            )
            .Problems.Length.ShouldBe(8);

    [Fact]
    public void Limit_outside_its_table_is_a_problem_while_the_output_stands()
    {
        var floor = Floors.Place(Floors.Ordinary with { CoverM = 0.1 });
        floor.Limit.Problems.Single().What.ShouldContain("0.0792");
        var loop = floor.OutputOf(12, 35, 0.03, 4190).Value;
        loop.Surface.Verdict.ShouldBe(SurfaceVerdict.NotCovered);
        loop.Surface.TabulatedHottestC.ShouldBeNull();
        loop.Surface.Notes.Single().Code.ShouldBe("floor-limit-outside");
        // hotter than any uniform surface may be: too warm, table or no table
        floor.OutputOf(12, 70, 0.1, 4190).Value.Surface.Verdict.ShouldBe(SurfaceVerdict.Exceeded);
    }

    [Fact]
    public void Surroundings_and_demands_outside_are_problems()
    {
        FloorSurroundings.Create(double.NaN, 100).Problems.Length.ShouldBe(2);
        var floor = Floors.Place(Floors.Ordinary);
        floor.OutputOf(0, double.NaN, 0, -1).Problems.Length.ShouldBe(4);
        floor.OutputOf(12, 19, 0.03, 4190).Problems.Single().Code.ShouldBe("floor-takes-heat");
        floor.SupplyFor(0, double.NaN).Problems.Length.ShouldBe(2);
        Floors
            .Place(Floors.Ordinary with { Below = Floors.Insulation(0.1) }, 20, 60)
            .SupplyFor(10, 5)
            .Problems.Single()
            .Code.ShouldBe("floor-no-heat-to-carry");
        Floors
            .Place(Floors.Ordinary, 30)
            .Limit.Problems.Single()
            .Code.ShouldBe("floor-room-above-limit");
    }

    [Fact]
    public void Floor_with_nearly_nothing_below_carries_a_note() =>
        Floors
            .Place(Floors.Ordinary with { SpacingM = 0.3, Below = Floors.Insulation(0.1) })
            .Notes.ShouldContain(note => note.Code == "floor-weak-below");

    [Fact]
    public void Light_screed_is_accepted_thin_and_refused_thick()
    {
        var light = Floors.Ordinary with { ScreedConductivityWPerMK = 0.6 };
        WetFloorSection.Create(light).Succeeded.ShouldBeTrue();
        Refuses(light with { CoverM = 0.11 }, "floor-cover-outside", "100 mm");
    }

    private static void Refuses(WetFloorSpecification stated, string code, string limit)
    {
        var problem = WetFloorSection.Create(stated).Problems.Single();
        problem.Code.ShouldBe(code);
        problem.What.ShouldContain(limit);
        problem.Remedy.ShouldNotBeEmpty();
    }
}
