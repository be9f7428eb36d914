using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Conduction;

/// <summary>Every message of the module, made by name.</summary>
internal static class ConductionProblems
{
    public static Problem LinesDoNotRise() =>
        new(
            "conduction-lines",
            "xLinesM",
            "the grid lines do not rise from each to the next",
            "Give at least two lines in each direction, in rising order"
        );

    public static Problem TooManyCells(int most) =>
        new(
            "conduction-too-many-cells",
            "xLinesM",
            "the grid has more cells than can be held",
            string.Create(CultureInfo.InvariantCulture, $"Give at most {most} cells")
        );

    public static Problem Conductivities(int cells) =>
        new(
            "conduction-conductivity",
            "conductivitiesWPerMK",
            "a cell has no usable conductivity",
            string.Create(
                CultureInfo.InvariantCulture,
                $"Give one conductivity from 0.000001 W/mK to 1000000 W/mK for each of the {cells} cells"
            )
        );

    public static Problem Face(int columns) =>
        new(
            "conduction-face",
            "top",
            "a face does not fit the grid",
            string.Create(
                CultureInfo.InvariantCulture,
                $"Give a temperature and a resistance of 0 or more for each of the {columns} columns"
            )
        );

    public static Problem HeldCell() =>
        new(
            "conduction-held-cell",
            "held",
            "a cell of given temperature lies outside the grid or has no temperature",
            "Give a column and row inside the grid, and a temperature"
        );

    public static Problem Tube() =>
        new(
            "conduction-tube",
            "tubes",
            "a tube has no usable size, place, resistance or temperature",
            "Give a radius above 0, a resistance of 0 or more, and a place and temperature"
        );

    public static Problem NothingHoldsATemperature() =>
        new(
            "conduction-no-temperature",
            "held",
            "nothing holds the section at a temperature",
            "Give a face a finite resistance, or hold a cell or tube at a temperature"
        );
}
