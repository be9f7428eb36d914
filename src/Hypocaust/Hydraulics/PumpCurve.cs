using System.Collections.Immutable;
using Hypocaust.Problems;
using Hypocaust.Quantities;

namespace Hypocaust.Hydraulics;

/// <summary>A point read off a pump's diagram.</summary>
/// <param name="FlowM3PerH">Flow, m³/h.</param>
/// <param name="HeadM">Head, m of the fluid pumped.</param>
public readonly record struct PumpPoint(double FlowM3PerH, double HeadM);

/// <summary>
/// Head of a pump over its flow at one speed: H = A + B·Q + C·Q², in m and m³/h, with A ≥ 0 and B, C ≤ 0, so that head falls as flow grows.
/// </summary>
public sealed record PumpCurve
{
    /// <summary>Largest distance of a point from the fitted curve, as a part of the largest head, that is still accepted.</summary>
    private const double DeviationAllowed = 0.15;

    private const double SecondsPerHour = 3600;

    private PumpCurve(double a, double b, double c, double fromM3PerH, double toM3PerH)
    {
        A = a;
        B = b;
        C = c;
        FromM3PerH = fromM3PerH;
        ToM3PerH = toM3PerH;
    }

    /// <summary>Head without flow, m.</summary>
    public double A { get; }

    /// <summary>Linear coefficient, m/(m³/h), 0 or less.</summary>
    public double B { get; }

    /// <summary>Quadratic coefficient, m/(m³/h)², 0 or less.</summary>
    public double C { get; }

    /// <summary>Lowest flow for which the curve was given, m³/h.</summary>
    public double FromM3PerH { get; }

    /// <summary>Highest flow for which the curve was given, m³/h.</summary>
    public double ToM3PerH { get; }

    /// <summary>Largest distance of a given point from the curve, m; 0 for a curve given by its coefficients.</summary>
    public double LargestDeviationM { get; private init; }

    /// <summary>Flow at which the head is zero, m³/h; infinite where the head never falls.</summary>
    public double FlowAtZeroHeadM3PerH =>
        C < 0 ? 2 * A / (-B + Math.Sqrt((B * B) - (4 * A * C)))
        : B < 0 ? -A / B
        : double.PositiveInfinity;

    /// <summary>A curve from its coefficients, valid from no flow to no head.</summary>
    /// <param name="a">Head without flow, m, more than 0.</param>
    /// <param name="b">m/(m³/h), 0 or less.</param>
    /// <param name="c">m/(m³/h)², 0 or less; not both 0.</param>
    public static Result<PumpCurve> Create(double a, double b, double c)
    {
        if (!(double.IsFinite(a) && a > 0))
        {
            return HydraulicsProblems.BadNumber("a", "head without flow", "metres, more than 0");
        }

        if (!(double.IsFinite(b) && double.IsFinite(c) && b <= 0 && c <= 0 && b + c < 0))
        {
            return HydraulicsProblems.CurveDoesNotFall(0, double.IsFinite(a) ? a : 0);
        }

        var curve = new PumpCurve(a, b, c, 0, 0);
        return new PumpCurve(a, b, c, 0, curve.FlowAtZeroHeadM3PerH);
    }

    /// <summary>The falling parabola nearest to the points (least squares), valid between the lowest and the highest flow given.</summary>
    /// <param name="points">At least three points at different flows, head falling as flow grows.</param>
    public static Result<PumpCurve> FromPoints(IEnumerable<PumpPoint> points)
    {
        ImmutableArray<PumpPoint> sorted = [.. points.OrderBy(point => point.FlowM3PerH)];
        if (sorted.DistinctBy(point => point.FlowM3PerH).Count() < 3)
        {
            return HydraulicsProblems.TooFewPoints(sorted.Length);
        }

        foreach (var point in sorted)
        {
            if (
                !(double.IsFinite(point.FlowM3PerH) && point.FlowM3PerH >= 0)
                || !(double.IsFinite(point.HeadM) && point.HeadM >= 0)
            )
            {
                return HydraulicsProblems.BadNumber("points", "flow or head", "numbers, 0 or more");
            }
        }

        for (var i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].HeadM >= sorted[i - 1].HeadM)
            {
                return HydraulicsProblems.CurveDoesNotFall(
                    sorted[i - 1].FlowM3PerH,
                    sorted[i].FlowM3PerH
                );
            }
        }

        var (a, b, c) = PumpCurveFit.Falling(sorted);
        var curve = new PumpCurve(a, b, c, sorted[0].FlowM3PerH, sorted[^1].FlowM3PerH);
        var deviation = sorted.Max(point => Math.Abs(curve.HeadM(point.FlowM3PerH) - point.HeadM));
        return deviation > DeviationAllowed * sorted[0].HeadM
            ? HydraulicsProblems.CurveFitsBadly(deviation)
            : curve with
            {
                LargestDeviationM = deviation,
            };
    }

    /// <summary>Head at a flow, m; the parabola goes on outside the range given: ask <see cref="Covers"/>.</summary>
    public double HeadM(double flowM3PerH) => A + (((C * flowM3PerH) + B) * flowM3PerH);

    /// <summary>Whether a flow lies where the curve was given; beyond it the pump runs outside what its maker shows.</summary>
    public bool Covers(double flowM3PerH) => flowM3PerH >= FromM3PerH && flowM3PerH <= ToM3PerH;

    /// <summary>The curve at another speed, by the affinity laws: flow grows with the ratio, head with its square.</summary>
    /// <param name="speedRatio">New speed over the speed of this curve, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not a number more than 0.</exception>
    public PumpCurve AtSpeedRatio(double speedRatio)
    {
        if (!(double.IsFinite(speedRatio) && speedRatio > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(speedRatio), speedRatio, "More than 0.");
        }

        return new PumpCurve(
            A * speedRatio * speedRatio,
            B * speedRatio,
            C,
            FromM3PerH * speedRatio,
            ToM3PerH * speedRatio
        )
        {
            LargestDeviationM = LargestDeviationM * speedRatio * speedRatio,
        };
    }

    /// <summary>Pressure rise in a fluid, Pa.</summary>
    /// <param name="flowM3PerH">Flow, m³/h.</param>
    /// <param name="densityKgPerM3">Density of the fluid pumped, kg/m³.</param>
    public double PressureRisePa(double flowM3PerH, double densityKgPerM3) =>
        densityKgPerM3 * PhysicalConstants.GravityMPerS2 * HeadM(flowM3PerH);

    /// <summary>The curve as the network solver takes it; its pressures follow the density of the branch, because head is what stays.</summary>
    public PumpLaw ToLaw()
    {
        const double density = 1000;
        return new PumpLaw(
            density * PhysicalConstants.GravityMPerS2 * A,
            -density * PhysicalConstants.GravityMPerS2 * B * SecondsPerHour,
            -density * PhysicalConstants.GravityMPerS2 * C * SecondsPerHour * SecondsPerHour
        )
        {
            ReferenceDensityKgPerM3 = density,
        };
    }
}
