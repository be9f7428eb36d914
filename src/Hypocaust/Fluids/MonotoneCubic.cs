namespace Hypocaust.Fluids;

/// <summary>Piecewise cubic through given points that neither overshoots nor wiggles between them (PCHIP).</summary>
/// <source>Fritsch and Butland 1984, doi:10.1137/0905021; end slopes after Moler, Numerical Computing with MATLAB, ch. 3</source>
internal static class MonotoneCubic
{
    /// <summary>Slope at each point, for points in rising order of <paramref name="x"/>; at least two.</summary>
    public static double[] Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var last = x.Length - 1;
        var slopes = new double[x.Length];
        if (last == 1)
        {
            slopes[0] = slopes[1] = Secant(x, y, 0);
            return slopes;
        }

        for (var i = 1; i < last; i++)
        {
            slopes[i] = Inner(x, y, i);
        }

        slopes[0] = End(x[1] - x[0], x[2] - x[1], Secant(x, y, 0), Secant(x, y, 1));
        slopes[last] = End(
            x[last] - x[last - 1],
            x[last - 1] - x[last - 2],
            Secant(x, y, last - 1),
            Secant(x, y, last - 2)
        );
        return slopes;
    }

    /// <summary>Value at <paramref name="at"/>, which lies within the points.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the points, or not a number.</exception>
    public static double Evaluate(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double at)
    {
        if (!(at >= x[0] && at <= x[^1]))
        {
            throw new ArgumentOutOfRangeException(nameof(at), at, $"{x[0]} to {x[^1]}");
        }

        var i = 0;
        while (i < x.Length - 2 && at > x[i + 1])
        {
            i++;
        }

        var slopes = Slopes(x, y);
        var piece = Cubic.Hermite(x[i + 1] - x[i], y[i], y[i + 1], slopes[i], slopes[i + 1]);
        return piece.At(at - x[i]);
    }

    private static double Secant(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int i) =>
        (y[i + 1] - y[i]) / (x[i + 1] - x[i]);

    private static double Inner(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int i)
    {
        var before = Secant(x, y, i - 1);
        var after = Secant(x, y, i);
        if (before * after <= 0)
        {
            return 0;
        }

        var widthBefore = x[i] - x[i - 1];
        var widthAfter = x[i + 1] - x[i];
        var weightBefore = 2 * widthAfter + widthBefore;
        var weightAfter = widthAfter + 2 * widthBefore;
        return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    }

    private static double End(double width, double nextWidth, double secant, double nextSecant)
    {
        var slope = ((2 * width + nextWidth) * secant - width * nextSecant) / (width + nextWidth);
        if (slope * secant <= 0)
        {
            return 0;
        }

        var turns = secant * nextSecant <= 0;
        return turns && Math.Abs(slope) > Math.Abs(3 * secant) ? 3 * secant : slope;
    }
}

/// <summary>A cubic in the distance from the left end of its interval.</summary>
internal readonly record struct Cubic(double C0, double C1, double C2, double C3)
{
    /// <summary>The cubic with given values and slopes at both ends of an interval.</summary>
    public static Cubic Hermite(
        double width,
        double left,
        double right,
        double leftSlope,
        double rightSlope
    )
    {
        var secant = (right - left) / width;
        return new(
            left,
            leftSlope,
            (3 * secant - 2 * leftSlope - rightSlope) / width,
            (leftSlope + rightSlope - 2 * secant) / (width * width)
        );
    }

    /// <summary>Value at a distance from the left end.</summary>
    public double At(double distance) => C0 + distance * (C1 + distance * (C2 + distance * C3));
}
