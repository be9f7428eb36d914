namespace Hypocaust.Plant;

/// <summary>Loss coefficients of the elbows and tees in a piece of pipe, by the equivalent-length method K = f_T·(L/D).</summary>
/// <remarks>Published equivalent lengths of small copper fittings differ by a factor of two to three; screwed-fitting ratios are the upper end.</remarks>
/// <source>Ratios L/D and fully rough friction factors of the Crane TP-410 kind (seen in published lists)</source>
public static class FittingLoss
{
    /// <summary>L/D of a 90° elbow.</summary>
    public const double ElbowRatio = 30;

    /// <summary>L/D of a tee passed straight.</summary>
    public const double TeeRunRatio = 20;

    /// <summary>L/D of a tee entered or left by its branch.</summary>
    public const double TeeBranchRatio = 60;

    // absolute roughness of the commercial steel pipe on which the published factors rest
    private const double CommercialSteelM = 0.0000457;

    /// <summary>Friction factor of fully rough flow, dimensionless: f_T = 0.25/[log₁₀(ε/3.7D)]².</summary>
    /// <param name="innerM">Inner diameter, m, more than 0.</param>
    /// <remarks>Up to 5 % below the factors printed in Crane TP-410, page A-26.</remarks>
    public static double RoughFactor(double innerM)
    {
        var log = Math.Log10(CommercialSteelM / innerM / 3.7);
        return 0.25 / (log * log);
    }

    /// <summary>Sum of K of the fittings in a piece of pipe.</summary>
    /// <param name="innerM">Inner diameter, m, more than 0.</param>
    /// <param name="elbows">Number of 90° elbows.</param>
    /// <param name="tees">Number of tees passed straight.</param>
    public static double Coefficient(double innerM, int elbows, int tees) =>
        RoughFactor(innerM) * ((elbows * ElbowRatio) + (tees * TeeRunRatio));

    /// <summary>K of turning into or out of the branch of a tee.</summary>
    /// <param name="innerM">Inner diameter, m, more than 0.</param>
    public static double TeeBranch(double innerM) => RoughFactor(innerM) * TeeBranchRatio;
}
