namespace Hypocaust.Hydraulics.Friction;

/// <summary>Friction factor of fully turbulent flow in a round pipe; the cross-check of <see cref="ChurchillFriction"/>.</summary>
/// <source>C. F. Colebrook, Journal of the Institution of Civil Engineers 11 (1939) 133–156, doi:10.1680/ijoti.1939.13150</source>
public static class ColebrookFriction
{
    /// <summary>Lowest Reynolds number at which flow counts as fully turbulent.</summary>
    public const double LowestReynolds = 4000;

    /// <summary>Darcy friction factor, dimensionless.</summary>
    /// <param name="reynolds">Reynolds number on the inside diameter, 4000 or more.</param>
    /// <param name="relativeRoughness">Wall roughness over inside diameter, 0 to 0.05.</param>
    /// <remarks>1/√f = −2 log₁₀(ε/3.7D + 2.51/(Re √f)), solved by Newton's method to rounding.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range or not a number.</exception>
    public static double Factor(double reynolds, double relativeRoughness)
    {
        FrictionArguments.Check(reynolds, relativeRoughness);
        if (reynolds < LowestReynolds)
        {
            throw new ArgumentOutOfRangeException(nameof(reynolds), reynolds, "4000 or more.");
        }

        var wall = relativeRoughness / 3.7;
        var viscous = 2.51 / reynolds;
        var x = 8.0;
        // 1/√f is a contraction here (slope below 0.1), so Newton gains three digits or more a step
        for (var step = 0; step < 6; step++)
        {
            var inside = wall + (viscous * x);
            var residual = x + (2 * Math.Log10(inside));
            x -= residual / (1 + (2 * viscous / (Math.Log(10) * inside)));
        }

        return 1 / (x * x);
    }
}
