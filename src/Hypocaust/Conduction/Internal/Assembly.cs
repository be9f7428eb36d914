using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Hypocaust.Conduction.Internal;

/// <summary>Takes a problem to its heat balances.</summary>
internal sealed class Assembly
{
    private const int Free = -1;

    // shortest way and half chord, over the radius: a circle that only touches a cell must not divide by zero
    private const double Least = 1e-9;

    private readonly ConductionProblem problem;
    private readonly FivePointSystem system;

    // which body holds a cell: first the tubes, then the held cells; -1 for none
    private readonly int[] body;

    private Assembly(ConductionProblem problem, FivePointSystem system, int[] body) =>
        (this.problem, this.system, this.body) = (problem, system, body);

    private int Columns => problem.Columns;

    /// <summary>Fills a system; <paramref name="body"/> is scratch of one number a cell.</summary>
    public static void Fill(ConductionProblem problem, FivePointSystem system, int[] body)
    {
        var assembly = new Assembly(problem, system, body);
        assembly.MarkBodies();
        assembly.Inside();
        assembly.Faces();
        assembly.CutAtBodies();
    }

    /// <summary>Conductance of a cell on a face to the temperature beyond, in W/(m·K).</summary>
    public static double FaceConductance(
        ConductionProblem problem,
        ConductionFace face,
        int column,
        int row
    )
    {
        var width = problem.XLinesM[column + 1] - problem.XLinesM[column];
        var half = (problem.YLinesM[row + 1] - problem.YLinesM[row]) / 2;
        var conductivity = problem.ConductivitiesWPerMK[(row * problem.Columns) + column];
        return width / ((half / conductivity) + face.ResistancesM2KPerW[column]);
    }

    private void MarkBodies()
    {
        Array.Fill(body, Free);
        for (var tube = 0; tube < problem.Tubes.Length; tube++)
        {
            Mark(problem.Tubes[tube], tube);
        }

        for (var i = 0; i < problem.Held.Length; i++)
        {
            body[(problem.Held[i].Row * Columns) + problem.Held[i].Column] =
                problem.Tubes.Length + i;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Mark(ImmersedTube tube, int number)
    {
        for (var row = 0; row < problem.Rows; row++)
        {
            var y = Middle(problem.YLinesM, row) - tube.YM;
            if (Math.Abs(y) > tube.RadiusM)
            {
                continue;
            }

            for (var column = 0; column < Columns; column++)
            {
                var x = Middle(problem.XLinesM, column) - tube.XM;
                if ((x * x) + (y * y) <= tube.RadiusM * tube.RadiusM)
                {
                    body[(row * Columns) + column] = number;
                }
            }
        }
    }

    private static double Middle(ImmutableArray<double> lines, int cell) =>
        (lines[cell] + lines[cell + 1]) / 2;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Inside()
    {
        var k = problem.ConductivitiesWPerMK.AsSpan();
        var x = problem.XLinesM.AsSpan();
        var y = problem.YLinesM.AsSpan();
        for (var row = 0; row < problem.Rows; row++)
        {
            var height = y[row + 1] - y[row];
            var above = row + 1 < problem.Rows ? y[row + 2] - y[row + 1] : 0;
            for (var column = 0; column < Columns; column++)
            {
                var cell = (row * Columns) + column;
                var width = x[column + 1] - x[column];
                system.Right[cell] =
                    column + 1 < Columns
                        ? 2
                            * height
                            * k[cell]
                            * k[cell + 1]
                            / ((width * k[cell + 1]) + ((x[column + 2] - x[column + 1]) * k[cell]))
                        : 0;
                system.Up[cell] =
                    above > 0
                        ? 2
                            * width
                            * k[cell]
                            * k[cell + Columns]
                            / ((height * k[cell + Columns]) + (above * k[cell]))
                        : 0;
            }
        }
    }

    private void Faces()
    {
        Array.Clear(system.Sink);
        Array.Clear(system.Heat);
        var last = problem.Rows - 1;
        for (var column = 0; column < Columns; column++)
        {
            Add(
                column,
                FaceConductance(problem, problem.Bottom, column, 0),
                problem.Bottom.TemperatureC
            );
            Add(
                (last * Columns) + column,
                FaceConductance(problem, problem.Top, column, last),
                problem.Top.TemperatureC
            );
        }
    }

    private void Add(int cell, double conductance, double temperatureC)
    {
        system.Sink[cell] += conductance;
        system.Heat[cell] += conductance * temperatureC;
    }

    private void CutAtBodies()
    {
        for (var cell = 0; cell < body.Length; cell++)
        {
            if (cell % Columns < Columns - 1 && body[cell] != body[cell + 1])
            {
                Cut(cell, cell + 1, system.Right, isRow: true);
            }

            if (cell + Columns < body.Length && body[cell] != body[cell + Columns])
            {
                Cut(cell, cell + Columns, system.Up, isRow: false);
            }
        }

        for (var cell = 0; cell < body.Length; cell++)
        {
            if (body[cell] != Free)
            {
                Hold(cell);
            }
        }
    }

    // the link becomes a conductance of the free cell to the body's temperature
    private void Cut(int cell, int next, double[] links, bool isRow)
    {
        var link = links[cell];
        links[cell] = 0;
        if (body[cell] != Free && body[next] != Free)
        {
            return;
        }

        var (free, held) = body[cell] == Free ? (cell, next) : (next, cell);
        var conductance =
            body[held] < problem.Tubes.Length
                ? ThroughWall(problem.Tubes[body[held]], free, held, isRow)
                : link;
        Add(free, conductance, TemperatureOf(body[held]));
    }

    // Along the way from the cell's centre to the tube, conduction ends at the circle. Heat leaves the circle along its normal, so
    // the part of it that takes this way meets the wall's resistance over the cosine between the two.
    private double ThroughWall(ImmersedTube tube, int free, int held, bool isRow)
    {
        var (column, row) = (free % Columns, free / Columns);
        var x = Middle(problem.XLinesM, column) - tube.XM;
        var y = Middle(problem.YLinesM, row) - tube.YM;
        var width = problem.XLinesM[column + 1] - problem.XLinesM[column];
        var height = problem.YLinesM[row + 1] - problem.YLinesM[row];
        var (along, across) = isRow ? (Math.Abs(x), y) : (Math.Abs(y), x);
        var (half, face) = isRow ? (width / 2, height) : (height / 2, width);
        var least = Least * tube.RadiusM;
        var reach = Math.Max(Chord(tube.RadiusM, across), least);
        var way = Math.Max(along - reach, least);
        var own = Math.Min(way, half);
        return face
            / (
                (own / problem.ConductivitiesWPerMK[free])
                + ((way - own) / problem.ConductivitiesWPerMK[held])
                + (tube.SurfaceResistanceM2KPerW * tube.RadiusM / reach)
            );
    }

    private static double Chord(double radius, double across) =>
        Math.Sqrt(Math.Max(0, (radius * radius) - (across * across)));

    private double TemperatureOf(int number) =>
        number < problem.Tubes.Length
            ? problem.Tubes[number].TemperatureC
            : problem.Held[number - problem.Tubes.Length].TemperatureC;

    private void Hold(int cell)
    {
        system.Right[cell] = 0;
        system.Up[cell] = 0;
        system.Sink[cell] = 1;
        system.Heat[cell] = TemperatureOf(body[cell]);
    }
}
