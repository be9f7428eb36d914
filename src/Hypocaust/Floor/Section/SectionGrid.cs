using System.Collections.Immutable;

namespace Hypocaust.Floor.Section;

/// <summary>Grid lines of half a spacing: even across the tube, growing away from it, on every boundary between layers.</summary>
/// <remarks>The tube's centre stands at x = 0, on the left edge; y rises from the bottom of the layers.</remarks>
internal static class SectionGrid
{
    private const double Growth = 1.25;

    public static ImmutableArray<double> Across(SectionBuildUp section, int cellsPerRadius)
    {
        var radius = section.Tube.OuterDiameterM / 2;
        List<double> lines = [.. Even(0, radius, cellsPerRadius)];
        Grow(lines, section.SpacingM / 2, radius / cellsPerRadius, Coarsest(section));
        return [.. lines];
    }

    public static ImmutableArray<double> Upward(SectionBuildUp section, int cellsPerRadius)
    {
        var radius = section.Tube.OuterDiameterM / 2;
        var step = radius / cellsPerRadius;
        var centre = section.ThicknessM - section.TubeDepthM;
        List<double> boundaries = [0];
        foreach (var layer in section.Layers.Reverse())
        {
            boundaries.Add(boundaries[^1] + layer.ThicknessM);
        }

        boundaries[^1] = section.ThicknessM;
        return
        [
            .. Away(boundaries.Select(at => centre - at), radius, step, Coarsest(section))
                .Select(distance => centre - distance)
                .Reverse(),
            .. Even(centre - radius, centre + radius, 2 * cellsPerRadius).Skip(1).SkipLast(1),
            .. Away(boundaries.Select(at => at - centre), radius, step, Coarsest(section))
                .Select(distance => centre + distance),
        ];
    }

    /// <summary>Halves every cell.</summary>
    public static ImmutableArray<double> Halve(ImmutableArray<double> lines) =>
        [
            .. lines
                .Zip(lines.Skip(1), (from, to) => new[] { from, (from + to) / 2 })
                .SelectMany(pair => pair),
            lines[^1],
        ];

    // far from the tube the field is smooth on the scale of the spacing, and in a thin slab on that of its thickness
    private static double Coarsest(SectionBuildUp section) =>
        Math.Min(section.SpacingM / 10, section.TubeDepthM);

    // distances from the tube's centre, in one direction, from its edge to the farthest boundary
    private static List<double> Away(
        IEnumerable<double> boundaries,
        double radius,
        double step,
        double coarsest
    )
    {
        List<double> lines = [radius];
        foreach (var boundary in boundaries.Where(at => at > radius + 1e-9).Order())
        {
            var before = lines.Count > 1 ? lines[^1] - lines[^2] : step;
            Grow(lines, boundary, before, coarsest);
        }

        return lines;
    }

    private static void Grow(List<double> lines, double to, double step, double coarsest)
    {
        var from = lines[^1];
        if (to - from <= 1e-9)
        {
            return;
        }

        // as many cells as it takes, then shrunk together so that the last one ends on the boundary
        List<double> steps = [];
        var sum = 0.0;
        while (sum < to - from)
        {
            step = Math.Min(step * Growth, Math.Max(coarsest, step));
            steps.Add(step);
            sum += step;
        }

        var at = from;
        foreach (var one in steps.SkipLast(1))
        {
            at += one * (to - from) / sum;
            lines.Add(at);
        }

        lines.Add(to);
    }

    private static IEnumerable<double> Even(double from, double to, int cells) =>
        Enumerable.Range(0, cells + 1).Select(i => from + ((to - from) * i / cells));
}
