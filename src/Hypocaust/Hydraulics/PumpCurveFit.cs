using System.Collections.Immutable;

namespace Hypocaust.Hydraulics;

/// <summary>Least squares for H = A + B·Q + C·Q² under B ≤ 0 and C ≤ 0.</summary>
internal static class PumpCurveFit
{
    /// <summary>The best of the parabola without conditions and the fits with B = 0 or C = 0; of those allowed, the nearest.</summary>
    public static (double A, double B, double C) Falling(ImmutableArray<PumpPoint> points)
    {
        var best = (A: 0.0, B: 0.0, C: 0.0);
        var least = double.PositiveInfinity;
        foreach (var candidate in Candidates(points))
        {
            var squares = points.Sum(point =>
                Square(
                    candidate.A
                        + (candidate.B * point.FlowM3PerH)
                        + (candidate.C * point.FlowM3PerH * point.FlowM3PerH)
                        - point.HeadM
                )
            );
            if (candidate.B <= 0 && candidate.C <= 0 && squares < least)
            {
                (best, least) = (candidate, squares);
            }
        }

        return best;
    }

    private static IEnumerable<(double A, double B, double C)> Candidates(
        ImmutableArray<PumpPoint> points
    )
    {
        var flowMean = points.Average(point => point.FlowM3PerH);
        var squareMean = points.Average(point => Square(point.FlowM3PerH));
        var headMean = points.Average(point => point.HeadM);
        double uu = 0,
            uv = 0,
            vv = 0,
            uh = 0,
            vh = 0;
        foreach (var point in points)
        {
            var u = point.FlowM3PerH - flowMean;
            var v = Square(point.FlowM3PerH) - squareMean;
            var h = point.HeadM - headMean;
            uu += u * u;
            uv += u * v;
            vv += v * v;
            uh += u * h;
            vh += v * h;
        }

        var determinant = (uu * vv) - (uv * uv);
        var b = ((uh * vv) - (vh * uv)) / determinant;
        var c = ((vh * uu) - (uh * uv)) / determinant;
        yield return (headMean - (b * flowMean) - (c * squareMean), b, c);
        yield return (headMean - (uh / uu * flowMean), uh / uu, 0);
        yield return (headMean - (vh / vv * squareMean), 0, vh / vv);
    }

    private static double Square(double value) => value * value;
}
