using Hypocaust.Fluids;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Fluids;

/// <summary>Melinder's polynomials (2010), an independent published description of the same mixtures; fraction by mass, to 40 °C.</summary>
internal static class MelinderPolynomials
{
    private static readonly ILookup<string, ReferenceCsv.Row> Coefficients = ReferenceCsv
        .Table("glycol_coefficients.csv")
        .ToLookup(row => row["fluid"]);

    public static FluidState At(string fluid, double massPercent, double temperatureC) =>
        new(
            Sum(fluid, "density_kg_m3", massPercent, temperatureC),
            Sum(fluid, "cp_J_kgK", massPercent, temperatureC),
            1e-3 * Math.Exp(Sum(fluid, "ln_viscosity_mPa_s", massPercent, temperatureC)),
            Sum(fluid, "conductivity_W_mK", massPercent, temperatureC)
        );

    private static double Sum(string fluid, string column, double massPercent, double temperatureC)
    {
        var (x0, t0) = fluid == "propylene" ? (30.7031, 32.7083) : (30.8462, 31.728);
        return Coefficients[fluid]
            .Sum(row =>
                row.Number(column)
                * Math.Pow(massPercent - x0, row.Number("i"))
                * Math.Pow(temperatureC - t0, row.Number("j"))
            );
    }
}
