using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Data;

namespace Hypocaust.Fluids;

/// <summary>The published table of one glycol: properties by volume fraction and temperature, freezing points, and mass against volume.</summary>
/// <source>ASHRAE Handbook Fundamentals 2001, physical properties of secondary coolants; see the heads of the files in Data</source>
internal sealed class GlycolTable
{
    /// <summary>Spacing of the table's rows, K.</summary>
    public const double RowStepK = 5;

    /// <summary>Highest temperature of the table, °C.</summary>
    public const double HighestC = 100;

    /// <summary>Above this temperature (°C) supercooled water serves as the 0 % column, so that weak mixtures have a neighbour on both sides.</summary>
    private const double LowestWithWaterC = -10;

    private static readonly Lazy<GlycolTable> LazyPropylene = new(() => Read("propylene"));
    private static readonly Lazy<GlycolTable> LazyEthylene = new(() => Read("ethylene"));

    private readonly SortedDictionary<double, SortedDictionary<double, FluidState>> rows;
    private readonly double[] massFractions;
    private readonly double[] volumeFractions;
    private readonly double[] freezingPointsC;

    private GlycolTable(
        SortedDictionary<double, SortedDictionary<double, FluidState>> rows,
        double[] massFractions,
        double[] volumeFractions,
        double[] freezingPointsC
    )
    {
        this.rows = rows;
        this.massFractions = massFractions;
        this.volumeFractions = volumeFractions;
        this.freezingPointsC = freezingPointsC;
    }

    /// <summary>Largest volume fraction with a freezing point: 0.60 for propylene, 0.578 (60 % by mass) for ethylene glycol.</summary>
    public double HighestVolumeFraction => volumeFractions[^1];

    /// <summary>Largest mass fraction with a freezing point: 0.60.</summary>
    public double HighestMassFraction => massFractions[^1];

    /// <summary>The table of a glycol.</summary>
    public static GlycolTable Of(FluidKind kind) =>
        kind switch
        {
            FluidKind.PropyleneGlycol => LazyPropylene.Value,
            FluidKind.EthyleneGlycol => LazyEthylene.Value,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a glycol"),
        };

    /// <summary>Mass fraction of a mixture given by volume.</summary>
    public double MassFraction(double volumeFraction) =>
        MonotoneCubic.Evaluate(volumeFractions, massFractions, volumeFraction);

    /// <summary>Volume fraction at a given mass fraction: the exact inverse of <see cref="MassFraction"/>.</summary>
    public double VolumeFraction(double massFraction)
    {
        var (low, high) = (0.0, HighestVolumeFraction);
        while (high - low > 1e-15)
        {
            var middle = (low + high) / 2;
            (low, high) = MassFraction(middle) < massFraction ? (middle, high) : (low, middle);
        }

        return high;
    }

    /// <summary>Temperature of the first ice crystals, °C.</summary>
    public double FreezingPointC(double volumeFraction) =>
        MonotoneCubic.Evaluate(volumeFractions, freezingPointsC, volumeFraction);

    /// <summary>Temperature of the lowest row (°C) that the curves of a mixture may use: down to −10 °C always, and further where the table has both neighbouring mixtures.</summary>
    public double LowestRowC(double volumeFraction)
    {
        var lowest = LowestWithWaterC;
        while (
            rows.TryGetValue(lowest - RowStepK, out var row) && row.Keys.First() <= volumeFraction
        )
        {
            lowest -= RowStepK;
        }

        return lowest;
    }

    /// <summary>The state of a mixture at a row of the table.</summary>
    /// <remarks>Where water itself is not safely liquid (0 °C and below) it is a neighbour only of mixtures weaker than all that the row lists: supercooled, it lies too far off to steer the others.</remarks>
    public FluidState AtRow(double rowC, double volumeFraction)
    {
        var row = rows[rowC];
        if (row.TryGetValue(volumeFraction, out var listed))
        {
            return listed;
        }

        var withoutWater = rowC <= 0 && volumeFraction > row.Keys.First(fraction => fraction > 0);
        double[] fractions = [.. row.Keys.Where(fraction => fraction > 0 || !withoutWater)];
        double Interpolate(Func<FluidState, double> property) =>
            MonotoneCubic.Evaluate(
                fractions,
                [.. fractions.Select(fraction => property(row[fraction]))],
                volumeFraction
            );
        return new(
            Interpolate(state => state.DensityKgPerM3),
            Interpolate(state => state.HeatCapacityJPerKgK),
            Math.Exp(Interpolate(state => Math.Log(state.ViscosityPaS))),
            Interpolate(state => state.ConductivityWPerMK)
        );
    }

    private static GlycolTable Read(string fluid)
    {
        var byTemperature = new SortedDictionary<double, SortedDictionary<double, FluidState>>();
        foreach (
            var cells in EmbeddedTable
                .Load("Fluids/glycol-properties.csv")
                .Rows.Where(c => c[0] == fluid)
        )
        {
            var temperatureC = Number(cells[2]);
            if (!byTemperature.TryGetValue(temperatureC, out var row))
            {
                row = [];
                byTemperature.Add(temperatureC, row);
                if (temperatureC >= LowestWithWaterC)
                {
                    row.Add(0, LiquidWater.At(temperatureC));
                }
            }

            row.Add(
                Number(cells[1]),
                new(Number(cells[3]), Number(cells[4]), Number(cells[5]), Number(cells[6]))
            );
        }

        ImmutableArray<string>[] freezing =
        [
            .. EmbeddedTable
                .Load("Fluids/glycol-freezing.csv")
                .Rows.Where(cells => cells[0] == fluid),
        ];
        return new(
            byTemperature,
            [.. freezing.Select(cells => Number(cells[1]))],
            [.. freezing.Select(cells => Number(cells[2]))],
            [.. freezing.Select(cells => Number(cells[3]))]
        );
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
