using Hypocaust.Fluids;
using MathNet.Numerics.Interpolation;

namespace Hypocaust.Tests.Fluids;

public sealed class MonotoneCubicTests
{
    private static readonly double[] X = [0, 1, 2.5, 4, 4.5, 7, 8];
    private static readonly double[] Y = [0, 0.1, 3, 3.1, 3.1, 9, 4];

    [Fact]
    public void Evaluate_AnyPoints_StaysBetweenNeighbours()
    {
        for (var i = 0; i < X.Length - 1; i++)
        {
            for (var part = 0; part <= 20; part++)
            {
                var y = MonotoneCubic.Evaluate(X, Y, X[i] + part / 20.0 * (X[i + 1] - X[i]));
                y.ShouldBeInRange(
                    Math.Min(Y[i], Y[i + 1]) - 1e-12,
                    Math.Max(Y[i], Y[i + 1]) + 1e-12
                );
            }
        }
    }

    [Fact]
    public void Evaluate_AnyPoints_AgreesWithMathNetPchip()
    {
        var reference = CubicSpline.InterpolatePchipSorted(X, Y);
        for (var x = 0.0; x <= 8; x += 0.1)
        {
            MonotoneCubic.Evaluate(X, Y, x).ShouldBe(reference.Interpolate(x), 1e-12);
        }
    }

    [Fact]
    public void Evaluate_TwoPoints_IsALine() =>
        MonotoneCubic.Evaluate([1, 3], [10, 20], 1.5).ShouldBe(12.5, 1e-12);

    [Theory]
    [InlineData(-0.001)]
    [InlineData(8.001)]
    [InlineData(double.NaN)]
    public void Evaluate_OutsideThePoints_Throws(double x) =>
        Should.Throw<ArgumentOutOfRangeException>(() => MonotoneCubic.Evaluate(X, Y, x));
}
