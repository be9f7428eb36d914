using System.Collections.Immutable;

namespace Hypocaust.Conduction;

/// <summary>One horizontal face of the section: what lies between it and a temperature, for each column of cells.</summary>
/// <param name="TemperatureC">Temperature beyond in °C.</param>
/// <param name="ResistancesM2KPerW">Resistance of film and covering over each column in m²·K/W, 0 or more; infinite lets no heat through.</param>
public sealed record ConductionFace(double TemperatureC, ImmutableArray<double> ResistancesM2KPerW)
{
    /// <summary>A face with the same resistance everywhere.</summary>
    /// <param name="temperatureC">Temperature beyond in °C.</param>
    /// <param name="resistanceM2KPerW">Resistance of film and covering in m²·K/W, 0 or more; infinite lets no heat through.</param>
    /// <param name="columns">Number of columns.</param>
    public static ConductionFace Uniform(
        double temperatureC,
        double resistanceM2KPerW,
        int columns
    ) => new(temperatureC, [.. Enumerable.Repeat(resistanceM2KPerW, columns)]);

    /// <summary>A face that lets no heat through.</summary>
    /// <param name="columns">Number of columns.</param>
    public static ConductionFace Adiabatic(int columns) =>
        Uniform(0, double.PositiveInfinity, columns);
}

/// <summary>A cell whose temperature is given.</summary>
/// <param name="Column">Column, from 0 at the left.</param>
/// <param name="Row">Row, from 0 at the bottom.</param>
/// <param name="TemperatureC">Its temperature in °C.</param>
public readonly record struct HeldCell(int Column, int Row, double TemperatureC);

/// <summary>
/// A round tube in the section. Cells whose centre lies inside are the tube; heat between them and their neighbours crosses the
/// circle itself, wherever it cuts the way, and then the resistance of wall and film.
/// </summary>
/// <param name="XM">Centre from the left edge of the grid's lines in m.</param>
/// <param name="YM">Centre in m, on the scale of the grid's lines.</param>
/// <param name="RadiusM">Outer radius in m, above 0.</param>
/// <param name="SurfaceResistanceM2KPerW">Resistance between the fluid and the outer surface, for a square metre of that surface, in m²·K/W, 0 or more.</param>
/// <param name="TemperatureC">Temperature of the fluid in °C.</param>
public sealed record ImmersedTube(
    double XM,
    double YM,
    double RadiusM,
    double SurfaceResistanceM2KPerW,
    double TemperatureC
);
