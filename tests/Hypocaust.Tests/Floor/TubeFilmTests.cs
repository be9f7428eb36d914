using Hypocaust.Floor;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Floor;

public sealed class TubeFilmTests
{
    [Theory]
    [InlineData(10_000, 5)]
    [InlineData(50_000, 5)]
    [InlineData(100_000, 2)]
    public void Turbulent_film_agrees_with_another_correlation(double reynolds, double prandtl)
    {
        // Dittus–Boelter, Nu = 0.023 Re^0.8 Pr^0.4, from memory; textbooks give it ±25 %
        var other = 0.023 * Math.Pow(reynolds, 0.8) * Math.Pow(prandtl, 0.4);
        TubeFilm
            .FromFlow(reynolds, prandtl, 0.63, 0.012)
            .Value.Nusselt.ShouldBe(other, 0.25 * other);
    }

    [Fact]
    public void Film_is_continuous_from_laminar_to_turbulent_and_adds_nothing_when_turbulent()
    {
        At(2299.999).Nusselt.ShouldBe(At(2300.001).Nusselt, 1e-3);
        At(3999.999).Nusselt.ShouldBe(At(4000.001).Nusselt, 1e-3);
        At(3999.999).ExtraResistanceMKPerW.ShouldBe(0, 1e-6);
        At(4000).ExtraResistanceMKPerW.ShouldBe(0);
        At(1500).Regime.ShouldBe(FilmRegime.Laminar);
        At(1500).Nusselt.ShouldBe(3.66);
    }

    [Fact]
    public void Laminar_flow_lowers_the_output_by_its_resistance()
    {
        var section = Floors.Section(Floors.Ordinary);
        var film = At(1500);
        var usual = En1264Output.Of(section).ConductanceWPerM2K;
        var slow = En1264Output.Of(section, film).ConductanceWPerM2K;
        // resistances in series: 1.1 · T · R for each metre of tube, from the form of the standard's tube correction
        (1 / slow - 1 / usual).ShouldBe(1.1 * 0.15 * film.ExtraResistanceMKPerW, 1e-12);
    }

    [Fact]
    public void Resistance_of_a_film_lowers_the_output_as_in_the_section_in_two_dimensions()
    {
        // section2d.csv, film 800 W/m²K: the series without film stands for the same section with the bore at water temperature
        var row = ReferenceCsv
            .Table("section2d.csv")
            .Single(item => item["case"] == "film-slab-200");
        var section = Section2D.Read(row);
        var film = section.TubeResistance() - 0.2 * section.Tube.WallResistanceMKPerW;
        var withFilm = row.Number("q_up_W_m2") / 20;
        var slab = section.Slab();
        var plane = TubePlaneResistance.Of(slab).Value;
        var up = 1 / (slab.TubeDepthM / slab.ConductivityWPerMK + 1 / slab.TopCoefficientWPerM2K);
        var down =
            1
            / (
                (slab.ThicknessM - slab.TubeDepthM) / slab.ConductivityWPerMK
                + 1 / slab.BottomCoefficientWPerM2K
            );
        var node = 1 / (0.2 * section.Tube.WallResistanceMKPerW + plane.ResistanceM2KPerW);
        var without = node * up / (node + up + down);
        // the standard's factor 1.1 stands for up plus down over up; here it is 1.07, so that 0.5 % of K_H is ample
        (1 / (1 / without + En1264Output.TubeResistanceFactor * film)).ShouldBe(
            withFilm,
            0.005 * withFilm
        );
    }

    [Theory]
    [InlineData(0.075)]
    [InlineData(0.15)]
    [InlineData(0.3)]
    public void Slow_water_costs_an_ordinary_floor_what_the_note_says(double spacing)
    {
        var floor = Floors.Place(Floors.Ordinary with { SpacingM = spacing });
        floor.Notes.Single().Text.ShouldContain("roughly 5 to 15 % less");
        var slow = floor.WithFilm(At(1500));
        (slow.Output.ConductanceWPerM2K / floor.Output.ConductanceWPerM2K).ShouldBeInRange(
            0.85,
            0.95
        );
        slow.Notes.Single().Code.ShouldBe("floor-film-slow");
        floor.WithFilm(At(6000)).Notes.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(0, 5, 0.6, 0.012)]
    [InlineData(double.NaN, 5, 0.6, 0.012)]
    [InlineData(1e7, 5, 0.6, 0.012)]
    [InlineData(1000, 0, 0.6, 0.012)]
    [InlineData(1000, 5, double.NaN, 0.012)]
    [InlineData(1000, 5, 0.6, 0)]
    public void FromFlow_outside_is_a_problem(
        double reynolds,
        double prandtl,
        double conductivity,
        double bore
    ) => TubeFilm.FromFlow(reynolds, prandtl, conductivity, bore).Succeeded.ShouldBeFalse();

    private static TubeFilm At(double reynolds) =>
        TubeFilm.FromFlow(reynolds, 5, 0.63, 0.012).Value;
}
