using System.Runtime.CompilerServices;

namespace Hypocaust.Conduction.Internal;

/// <summary>
/// The heat balance of every cell: its conductances to the right and upward neighbour, its conductance to given temperatures,
/// and the heat that those would send it at 0 °C. Symmetric and positive definite.
/// </summary>
/// <remarks>Held cells keep no conductances and an own one of 1, so that the pattern stays regular.</remarks>
internal sealed class FivePointSystem(int columns, int rows)
{
    public int Columns => columns;

    public int Rows => rows;

    /// <summary>Conductance to the right neighbour in W/(m·K).</summary>
    public double[] Right { get; } = new double[columns * rows];

    /// <summary>Conductance to the upward neighbour in W/(m·K).</summary>
    public double[] Up { get; } = new double[columns * rows];

    /// <summary>Conductance to given temperatures in W/(m·K).</summary>
    public double[] Sink { get; } = new double[columns * rows];

    /// <summary>Right-hand side: conductance times given temperature, in W/m.</summary>
    public double[] Heat { get; } = new double[columns * rows];

    /// <summary>Largest imbalance of a cell over its sum of conductances, in K: how far a cell is from the mean of its neighbours.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double ImbalanceK(ReadOnlySpan<double> temperatures)
    {
        var worst = 0.0;
        for (var cell = 0; cell < temperatures.Length; cell++)
        {
            var here = temperatures[cell];
            var (sum, heat) = (Sink[cell], Heat[cell] - (Sink[cell] * here));
            var column = cell % columns;
            if (column > 0)
            {
                heat += Right[cell - 1] * (temperatures[cell - 1] - here);
                sum += Right[cell - 1];
            }

            if (column < columns - 1)
            {
                heat += Right[cell] * (temperatures[cell + 1] - here);
                sum += Right[cell];
            }

            if (cell >= columns)
            {
                heat += Up[cell - columns] * (temperatures[cell - columns] - here);
                sum += Up[cell - columns];
            }

            if (cell + columns < temperatures.Length)
            {
                heat += Up[cell] * (temperatures[cell + columns] - here);
                sum += Up[cell];
            }

            var imbalance = Math.Abs(heat) / sum;
            worst = imbalance <= worst ? worst : imbalance;
        }

        return worst;
    }
}
