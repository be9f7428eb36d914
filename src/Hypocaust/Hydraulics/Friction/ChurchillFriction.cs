using System.Runtime.CompilerServices;
using Hypocaust.Hydraulics.Internal;

namespace Hypocaust.Hydraulics.Friction;

/// <summary>Friction factor of a round pipe in one formula for laminar, transitional and turbulent flow.</summary>
/// <source>S. W. Churchill, "Friction-factor equation spans all fluid-flow regimes", Chemical Engineering 84 (1977) 24, 91–92</source>
public static class ChurchillFriction
{
    /// <summary>Below this Reynolds number the factor is held, so that friction goes to zero in proportion with flow.</summary>
    public const double LowestReynolds = 1;

    /// <summary>Darcy friction factor, dimensionless.</summary>
    /// <param name="reynolds">Reynolds number on the inside diameter, more than 0; below 1 the value at 1 (64) is given.</param>
    /// <param name="relativeRoughness">Wall roughness over inside diameter, 0 to 0.05.</param>
    /// <remarks>
    /// Within 2.5 % of <see cref="ColebrookFriction"/> from Re 4000 to 1e8 for relative roughness up to 0.001 and 3.1 % up to 0.01;
    /// between Re 2300 and 4000 flow is intermittent and any formula is a choice.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range or not a number.</exception>
    public static double Factor(double reynolds, double relativeRoughness)
    {
        FrictionArguments.Check(reynolds, relativeRoughness);
        Evaluate(
            new Lane1(Math.Max(reynolds, LowestReynolds)),
            new Lane1(0.27 * relativeRoughness),
            out var factor,
            out _
        );
        return factor.Value;
    }

    /// <summary>Factor and d ln f / d ln Re.</summary>
    /// <param name="reynolds">Re, at least <see cref="LowestReynolds"/>.</param>
    /// <param name="scaledRoughness">0.27 × relative roughness.</param>
    /// <param name="factor">Darcy factor.</param>
    /// <param name="logSlope">d ln f / d ln Re, −1 in laminar flow.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static void Evaluate<T>(T reynolds, T scaledRoughness, out T factor, out T logSlope)
        where T : struct, ILane<T>
    {
        var inverse = T.Of(1) / reynolds;
        var smooth = T.Exp(T.Of(0.9) * T.Log(T.Of(7) * inverse));
        var wall = smooth + scaledRoughness;
        var a = T.Of(-2.457) * T.Log(wall);
        var a2 = a * a;
        var a4 = a2 * a2;
        var a8 = a4 * a4;
        var turbulent = a8 * a8;
        var b = T.Of(37530) * inverse;
        b *= b;
        b *= b;
        b *= b;
        var transitional = b * b;
        var l = T.Of(8) * inverse;
        l *= l;
        l = l * l * l;
        var laminar = l * l;
        var sum = turbulent + transitional;
        var bridged = T.Of(1) / (sum * T.Sqrt(sum));
        var total = laminar + bridged;
        factor = T.Of(8) * T.Exp(T.Of(1.0 / 12) * T.Log(total));

        var turbulentSlope = T.Of(16 * 2.457 * 0.9) * (a8 * a4) * (a2 * a) * smooth / wall;
        var bridgedSlope =
            T.Of(-1.5) * bridged * (turbulentSlope - (T.Of(16) * transitional)) / sum;
        logSlope = (bridgedSlope - (T.Of(12) * laminar)) / (T.Of(12) * total);
    }
}
