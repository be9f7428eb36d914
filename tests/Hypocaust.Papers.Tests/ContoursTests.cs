using System.Collections.Immutable;
using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Tests;

public sealed class ContoursTests
{
    private static readonly double[] Places = [.. Enumerable.Range(0, 101).Select(i => i * 0.1)];

    private static Contours Of(Func<double, double, double> value) =>
        Contours.Of(Places, Places, (i, j) => value(Places[i], Places[j]));

    private static double Area(ImmutableArray<Point> line) => Math.Abs(Signed(line));

    // a line around a hole counts against the one around it
    private static double Signed(ImmutableArray<Point> line) =>
        line.Select((a, i) => (A: a, B: line[(i + 1) % line.Length]))
            .Sum(pair => (pair.A.X * pair.B.Y) - (pair.B.X * pair.A.Y)) / 2;

    [Fact]
    public void Line_around_a_cone_is_a_circle()
    {
        var line = Of((x, y) => 10 - double.Hypot(x - 5, y - 5)).At(7).Single();
        line.ShouldAllBe(at => Math.Abs(double.Hypot(at.X - 5, at.Y - 5) - 3) < 0.005);
        Area(line).ShouldBe(Math.PI * 9, 0.02);
    }

    [Fact]
    public void Line_that_leaves_the_grid_closes_along_its_rim()
    {
        var line = Of((x, _) => x).At(4.25).Single();
        Area(line).ShouldBe(5.75 * 10, 1e-9);
    }

    [Fact]
    public void All_hot_is_the_whole_grid_and_all_cold_is_nothing()
    {
        Area(Of((_, _) => 1).At(0).Single()).ShouldBe(100, 1e-9);
        Of((_, _) => 1).At(2).ShouldBeEmpty();
    }

    [Fact]
    public void Two_hills_have_two_lines_until_they_meet()
    {
        static double Hills(double x, double y) =>
            Math.Max(3 - double.Hypot(x - 3, y - 5), 3 - double.Hypot(x - 7, y - 5));

        Of(Hills).At(1.5).Length.ShouldBe(2);
        Of(Hills).At(0.5).Length.ShouldBe(1);
    }

    // A chessboard is all saddles, and their middles, at the level, count as hot: what stays cold are the 13 cold points with half a
    // step around them, whole diamonds inside, halves at the rim, quarters in the corners: 5 · 0.5 + 4 · 0.25 + 4 · 0.125 = 4 of 16.
    [Fact]
    public void Saddles_neither_break_nor_cross_the_lines()
    {
        var lines = Contours.Of([0, 1, 2, 3, 4], [0, 1, 2, 3, 4], (i, j) => (i + j) % 2).At(0.5);
        Math.Abs(lines.Sum(Signed)).ShouldBe(12, 1e-9);
    }
}
