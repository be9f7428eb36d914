using Hypocaust.Hydraulics;
using Hypocaust.Tests.Hydraulics.Friction;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>Against pressure_gradient.csv (python library fluids 1.0.22, IAPWS-IF97 and ASHRAE properties given per row) and pressure_drop.csv.</summary>
public sealed class PipeFrictionTests
{
    [Fact]
    public void Gradient_equals_the_reference_library_in_every_tube_and_fluid()
    {
        foreach (var row in ReferenceCsv.Table("pressure_gradient.csv"))
        {
            var flow = row.Number("flow_L_min") / 60000;
            var diameter = row.Number("id_m");
            var expected = row.Number("Pa_per_m_churchill");
            var gradient = PipeFriction.GradientPaPerM(
                flow,
                diameter,
                row.Number("roughness_m"),
                row.Number("rho"),
                row.Number("mu")
            );
            // the properties have ten figures, the gradient grows at most with their square; below Re 2040 the library gives 64/Re
            var reynolds = row.Number("reynolds");
            var bend =
                reynolds < ChurchillFrictionTests.LibraryIsLaminarBelow
                    ? ChurchillFrictionTests.BendBelow2040(reynolds)
                    : 0;
            gradient.ShouldBe(expected, expected * (3e-9 + bend));
            PipeFriction
                .Reynolds(flow, diameter, row.Number("rho"), row.Number("mu"))
                .ShouldBe(row.Number("reynolds"), 2e-9 * row.Number("reynolds"));
        }
    }

    [Fact]
    public void Gradient_times_length_gives_the_worked_pressure_drops()
    {
        foreach (var row in ReferenceCsv.Table("pressure_drop.csv"))
        {
            // the file gives Re but not the properties: with water's viscosity cancelled, density follows from the drop
            var velocity = row.Number("velocity_m_s");
            var diameter = row.Number("inner_diameter_m");
            var length = row.Number("length_m");
            var factor = Hypocaust.Hydraulics.Friction.ChurchillFriction.Factor(
                row.Number("reynolds"),
                row.Number("roughness_m") / diameter
            );
            // six decimals; at Re 1878, below 2040, the library gives 64/Re and Churchill's formula 1.5e-4 more
            factor.ShouldBe(row.Number("darcy"), row.Number("reynolds") < 2040 ? 6e-6 : 1.5e-6);
            Fittings
                .VelocityMPerS(row.Number("flow_L_min") / 60000, diameter)
                .ShouldBe(velocity, 1e-6);
            var density =
                row.Number("drop_Pa") * 2 * diameter / (factor * length * velocity * velocity);
            var viscosity = density * velocity * diameter / row.Number("reynolds");
            var drop =
                length
                * PipeFriction.GradientPaPerM(
                    row.Number("flow_L_min") / 60000,
                    diameter,
                    row.Number("roughness_m"),
                    density,
                    viscosity
                );
            drop.ShouldBe(row.Number("drop_Pa"), 1e-5 * row.Number("drop_Pa"));
            density.ShouldBeInRange(980, 1080);
        }
    }

    [Fact]
    public void Gradient_of_reversed_flow_has_the_other_sign()
    {
        var forward = PipeFriction.GradientPaPerM(1e-4, 0.016, 7e-6, 990, 6e-4);
        PipeFriction.GradientPaPerM(-1e-4, 0.016, 7e-6, 990, 6e-4).ShouldBe(-forward);
    }

    [Fact]
    public void Gradient_has_no_jump_where_the_creeping_flow_law_takes_over()
    {
        // Re = 1 in a 16 mm tube of water; Hagen–Poiseuille 32 μ v / D² on both sides
        const double flow = Math.PI * 0.016 * 6e-4 / (4 * 990);
        var below = PipeFriction.GradientPaPerM(flow * 0.999999, 0.016, 7e-6, 990, 6e-4);
        var above = PipeFriction.GradientPaPerM(flow * 1.000001, 0.016, 7e-6, 990, 6e-4);
        (above / below).ShouldBe(1, 1e-5);
    }
}
