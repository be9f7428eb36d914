using System.Collections.Immutable;
using System.Text.Json;
using Hypocaust.Conduction;

namespace Hypocaust.Bench;

/// <summary>Problem P5 of <c>bench/reference/problems/p5.json</c>, built anew for each solve.</summary>
internal sealed class SectionProblem
{
    private readonly JsonElement solution;
    private readonly int columns;
    private readonly int rows;
    private readonly double stepM;
    private readonly ImmutableArray<(int Cells, double Conductivity)> layers;
    private readonly ImmutableArray<(double X, double Y, double Celsius)> pipes;
    private readonly double radiusM;
    private readonly double rugFromM;
    private readonly double rug;
    private readonly double film;
    private readonly double bottom;
    private readonly double roomC;
    private readonly double groundC;

    private SectionProblem(JsonElement inputs, JsonElement solution)
    {
        double Number(string name) => inputs.GetProperty(name).GetDouble();
        this.solution = solution;
        columns = inputs.GetProperty("nx").GetInt32();
        rows = inputs.GetProperty("ny").GetInt32();
        stepM = Number("dx");
        layers =
        [
            .. inputs
                .GetProperty("layers")
                .EnumerateArray()
                .Select(layer =>
                    (layer.GetProperty("cells").GetInt32(), layer.GetProperty("k").GetDouble())
                ),
        ];
        var celsius = inputs.GetProperty("T_pipe").EnumerateArray().ToList();
        pipes =
        [
            .. inputs
                .GetProperty("pipes")
                .EnumerateArray()
                .Select(
                    (pipe, i) =>
                        (
                            pipe.GetProperty("x").GetDouble(),
                            pipe.GetProperty("y").GetDouble(),
                            celsius[i].GetDouble()
                        )
                ),
        ];
        (radiusM, rugFromM, rug) = (Number("pipe_radius"), Number("rug_from_x"), Number("R_rug"));
        (film, bottom) = (1 / Number("h_top"), 1 / Number("U_bottom"));
        (roomC, groundC) = (Number("T_room"), Number("T_ground"));
    }

    public static SectionProblem Read(string path)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(path));
        return new SectionProblem(
            document.RootElement.GetProperty("inputs"),
            document.RootElement.GetProperty("solution").Clone()
        );
    }

    public ConductionProblem Build()
    {
        var conductivities = ImmutableArray.CreateBuilder<double>(columns * rows);
        foreach (var (cells, conductivity) in layers)
        {
            for (var i = 0; i < cells * columns; i++)
            {
                conductivities.Add(conductivity);
            }
        }

        return ConductionProblem
            .Create(
                Lines(columns),
                Lines(rows),
                conductivities.MoveToImmutable(),
                new ConductionFace(
                    roomC,
                    [
                        .. Enumerable
                            .Range(0, columns)
                            .Select(column => film + (Middle(column) > rugFromM ? rug : 0)),
                    ]
                ),
                ConductionFace.Uniform(groundC, bottom, columns),
                [.. pipes.SelectMany(Cells)]
            )
            .Value;
    }

    private ImmutableArray<double> Lines(int cells) =>
        [.. Enumerable.Range(0, cells + 1).Select(i => i * stepM)];

    private double Middle(int cell) => (cell + 0.5) * stepM;

    private IEnumerable<HeldCell> Cells((double X, double Y, double Celsius) pipe)
    {
        var reach = (int)Math.Ceiling(radiusM / stepM) + 1;
        var (i, j) = ((int)(pipe.X / stepM), (int)(pipe.Y / stepM));
        for (var row = j - reach; row <= j + reach; row++)
        {
            for (var column = i - reach; column <= i + reach; column++)
            {
                var (x, y) = (Middle(column) - pipe.X, Middle(row) - pipe.Y);
                if ((x * x) + (y * y) <= radiusM * radiusM)
                {
                    yield return new HeldCell(column, row, pipe.Celsius);
                }
            }
        }
    }

    /// <summary>Largest relative difference to the known solution, over every figure that the problem asks for.</summary>
    public double Difference(ConductionSolution solved)
    {
        var surface = Enumerable.Range(0, columns).Select(solved.TopFaceC).ToList();
        var sum = 0.0;
        foreach (var celsius in solved.TemperaturesC)
        {
            sum += celsius;
        }

        List<(double Ours, double Known)> pairs =
        [
            (solved.TopHeatWPerM(), Known("q_up")),
            (solved.BottomHeatWPerM(), Known("q_down")),
            (surface.Max(), Known("T_surface_max")),
            (surface.Min(), Known("T_surface_min")),
            (sum, Known("sum_T")),
            .. solution
                .GetProperty("probes")
                .EnumerateArray()
                .Select(probe =>
                    (
                        solved.TemperatureC(probe[0].GetInt32(), probe[1].GetInt32()),
                        probe[2].GetDouble()
                    )
                ),
        ];
        return pairs.Max(pair => Math.Abs((pair.Ours / pair.Known) - 1));
    }

    private double Known(string name) => solution.GetProperty(name).GetDouble();
}
