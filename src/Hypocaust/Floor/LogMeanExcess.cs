namespace Hypocaust.Floor;

/// <summary>The logarithmic mean of the water's excess over a temperature, along a loop.</summary>
/// <source>EN 1264-2, Δθ_H = (θ_V − θ_R)/ln((θ_V − θ_i)/(θ_R − θ_i))</source>
public static class LogMeanExcess
{
    /// <summary>Mean excess in K.</summary>
    /// <param name="supplyExcessK">Supply minus the reference temperature in K, above 0.</param>
    /// <param name="returnExcessK">Return minus the reference temperature in K, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An excess is not above 0.</exception>
    public static double Of(double supplyExcessK, double returnExcessK)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(supplyExcessK);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(returnExcessK);
        var logarithm = Math.Log(supplyExcessK / returnExcessK);
        return Math.Abs(logarithm) < 1e-9
            ? (supplyExcessK + returnExcessK) / 2
            : (supplyExcessK - returnExcessK) / logarithm;
    }

    /// <summary>Supply excess in K that gives a mean excess with a chosen drop: σ/(1 − e^(−σ/Δθ)), the inverse of <see cref="Of"/>.</summary>
    /// <param name="meanExcessK">Logarithmic mean excess in K, above 0.</param>
    /// <param name="dropK">Supply minus return σ in K, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above 0.</exception>
    public static double Supply(double meanExcessK, double dropK)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(meanExcessK);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dropK);
        return dropK / -Exponential.MinusOne(-dropK / meanExcessK);
    }
}
