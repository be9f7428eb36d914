using System.Collections.Immutable;
using Hypocaust.Conduction;

namespace Hypocaust.Floor.Section;

/// <summary>A section as a conduction problem, and its surface read from the solution.</summary>
internal static class SectionConduction
{
    /// <summary>The section with its room at 0.</summary>
    public static ConductionProblem Unit(
        SectionBuildUp section,
        ImmutableArray<double> x,
        ImmutableArray<double> y,
        double waterC,
        double belowC
    )
    {
        var (columns, rows) = (x.Length - 1, y.Length - 1);
        var conductivities = ImmutableArray.CreateBuilder<double>(columns * rows);
        for (var row = 0; row < rows; row++)
        {
            var conductivity = ConductivityAt(section, section.ThicknessM - Middle(y, row));
            for (var column = 0; column < columns; column++)
            {
                conductivities.Add(conductivity);
            }
        }

        var radius = section.Tube.OuterDiameterM / 2;
        var wall = section.Tube.WallResistanceMKPerW + section.FilmMKPerW;
        return ConductionProblem
            .Create(
                x,
                y,
                conductivities.MoveToImmutable(),
                ConductionFace.Uniform(
                    0,
                    section.SurfaceM2KPerW + section.CoveringM2KPerW,
                    columns
                ),
                ConductionFace.Uniform(belowC, section.BelowM2KPerW, columns),
                tubes:
                [
                    new ImmersedTube(
                        0,
                        section.ThicknessM - section.TubeDepthM,
                        radius,
                        wall * 2 * Math.PI * radius,
                        waterC
                    ),
                ]
            )
            .Value;
    }

    /// <summary>Surface over the room above the tube and midway: both are planes of symmetry, so that the surface is level there.</summary>
    public static (double Warmest, double Coldest) Surface(
        SectionBuildUp section,
        ConductionSolution solution
    )
    {
        var x = solution.Problem.XLinesM;
        var (last, end) = (x.Length - 2, x[^1]);
        double At(int column) =>
            solution.TopHeatWPerM(column) / (x[column + 1] - x[column]) * section.SurfaceM2KPerW;
        return (
            Level(Middle(x, 0), At(0), Middle(x, 1), At(1)),
            Level(end - Middle(x, last), At(last), end - Middle(x, last - 1), At(last - 1))
        );
    }

    // value at 0 of the parabola that is level at 0
    private static double Level(double near, double atNear, double far, double atFar) =>
        ((atNear * far * far) - (atFar * near * near)) / ((far * far) - (near * near));

    private static double Middle(ImmutableArray<double> lines, int cell) =>
        (lines[cell] + lines[cell + 1]) / 2;

    private static double ConductivityAt(SectionBuildUp section, double depthM)
    {
        var bottom = 0.0;
        foreach (var layer in section.Layers)
        {
            bottom += layer.ThicknessM;
            if (depthM < bottom)
            {
                return layer.ConductivityWPerMK;
            }
        }

        return section.Layers[^1].ConductivityWPerMK;
    }
}
