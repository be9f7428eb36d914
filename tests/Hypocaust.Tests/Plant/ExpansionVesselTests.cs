using Hypocaust.Plant;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Plant;

/// <summary>Source: expansion_cases.csv (EN 12828 annex D form from memory; Boyle's law), computed independently.</summary>
public sealed class ExpansionVesselTests
{
    private const double Bar = 1e5;
    private const double Litre = 0.001;

    public static TheoryData<string> Sized => Names("exp-");

    public static TheoryData<string> Boyle => Names("boyle-");

    [Theory]
    [MemberData(nameof(Sized))]
    public void Needed_vessel_equals_the_worked_case(string name)
    {
        var found = Case(name);
        var system = found.Input("system_volume") * Litre;
        var growth = system * ((found.Input("rho_fill") / found.Input("rho_hot")) - 1);
        var sizing = new VesselSizing(
            system,
            growth,
            found.Input("precharge") * Bar,
            found.Input("relief_setting") * Bar
        );
        growth.ShouldBe(found.Expected["expansion_volume"].Number * Litre, 1e-6 * growth);
        sizing.ReserveM3.ShouldBe(found.Expected["reserve"].Number * Litre, 1e-12);
        sizing.FinalPa.ShouldBe(found.Expected["final_pressure"].Number * Bar, 1e-4);
        sizing.AcceptedShare.ShouldBe(found.Expected["acceptance_fraction"].Number, 1e-9);
        sizing.NeededM3!.Value.ShouldBe(
            found.Expected["vessel_min"].Number * Litre,
            1e-6 * sizing.NeededM3.Value
        );
    }

    [Theory]
    [MemberData(nameof(Boyle))]
    public void Warm_pressure_follows_Boyle(string name)
    {
        var found = Case(name);
        var vessel = new ExpansionVessel(
            found.Input("vessel") * Litre,
            found.Input("precharge") * Bar
        );
        var cold = found.Expected["fill_pressure_cold"].Number * Bar;
        vessel.WaterM3(cold).ShouldBe(found.Input("water_in_vessel_cold") * Litre, 1e-8);
        var warm = vessel.PressurePa(cold, found.Input("expansion_volume") * Litre)!.Value;
        warm.ShouldBe(found.Expected["pressure_hot"].Number * Bar, 1e-6 * warm);
        (warm > found.Input("relief_setting") * Bar)
            .ToString()
            .ShouldBe(found.Expected["relief_lifts"].Text, StringCompareShould.IgnoreCase);
    }

    [Fact]
    public void A_vessel_that_cannot_take_the_growth_has_no_pressure() =>
        new ExpansionVessel(0.005, Bar).PressurePa(1.2 * Bar, 0.006).ShouldBeNull();

    [Fact]
    public void A_relief_valve_below_the_precharge_allows_no_vessel() =>
        new VesselSizing(0.1, 0.001, 2 * Bar, 2 * Bar).NeededM3.ShouldBeNull();

    [Fact]
    public void Least_precharge_covers_the_column_and_never_falls_below_the_floor_of_the_standard()
    {
        // EN 12828, annex D (from memory): static + 0.3 bar, at least 0.7 bar
        VesselSizing.LeastPrechargePa(0.2 * Bar).ShouldBe(0.7 * Bar);
        VesselSizing.LeastPrechargePa(1.0 * Bar).ShouldBe(1.3 * Bar);
    }

    private static ReferenceCsv.Case Case(string name) =>
        ReferenceCsv.Cases("expansion_cases.csv").Single(found => found.Name == name);

    private static TheoryData<string> Names(string prefix) =>
        [
            .. ReferenceCsv
                .Cases("expansion_cases.csv")
                .Where(found => found.Name.StartsWith(prefix, StringComparison.Ordinal))
                .Select(found => found.Name),
        ];
}
