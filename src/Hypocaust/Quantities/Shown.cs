using System.Globalization;

namespace Hypocaust.Quantities;

/// <summary>The units in which answers are shown.</summary>
public enum UnitSystem
{
    /// <summary>°C, L/min, kW, m and mm.</summary>
    Si,

    /// <summary>°F, gpm, BTU/h, feet and inches.</summary>
    Us,
}

/// <summary>How a computed number is shown: its unit in either system and how many digits make sense.</summary>
/// <param name="Si">Unit for SI readers.</param>
/// <param name="SiDecimals">Decimals for SI readers.</param>
/// <param name="Us">Unit for US readers.</param>
/// <param name="UsDecimals">Decimals for US readers.</param>
public sealed record Shown(Unit Si, int SiDecimals, Unit Us, int UsDecimals)
{
    /// <summary>Temperature, to a tenth of a degree.</summary>
    public static readonly Shown Temperature = Of(TemperatureKind.Kind, "°C", 1, "°F", 1);

    /// <summary>Temperature difference.</summary>
    public static readonly Shown Difference = Of(TemperatureDifferenceKind.Kind, "K", 1, "°F", 1);

    /// <summary>Heat of a building or heater.</summary>
    public static readonly Shown Heat = Of(PowerKind.Kind, "kW", 1, "BTU/h", 0);

    /// <summary>Heat of one element or loop.</summary>
    public static readonly Shown SmallHeat = Of(PowerKind.Kind, "W", 0, "BTU/h", 0);

    /// <summary>Volume flow.</summary>
    public static readonly Shown Flow = Of(VolumeFlowKind.Kind, "L/min", 1, "gpm", 2);

    /// <summary>Pressure drop.</summary>
    public static readonly Shown Drop = Of(PressureKind.Kind, "kPa", 1, "psi", 2);

    /// <summary>Gauge pressure.</summary>
    public static readonly Shown Gauge = Of(PressureKind.Kind, "bar", 2, "psi", 1);

    /// <summary>Length of tube, height, head.</summary>
    public static readonly Shown Length = Of(LengthKind.Kind, "m", 1, "ft", 1);

    /// <summary>Thickness, spacing, diameter.</summary>
    public static readonly Shown Small = Of(LengthKind.Kind, "mm", 1, "in", 2);

    /// <summary>Area.</summary>
    public static readonly Shown Area = Of(AreaKind.Kind, "m²", 1, "ft²", 0);

    /// <summary>Volume of water.</summary>
    public static readonly Shown Volume = Of(VolumeKind.Kind, "L", 1, "gal", 1);

    /// <summary>U-value.</summary>
    public static readonly Shown Transmittance = Of(
        TransmittanceKind.Kind,
        "W/m²K",
        3,
        "BTU/h·ft²·°F",
        3
    );

    /// <summary>Thermal resistance.</summary>
    public static readonly Shown Resistance = Of(
        ThermalResistanceKind.Kind,
        "m²K/W",
        2,
        "ft²·°F·h/BTU",
        1
    );

    /// <summary>Thermal conductivity.</summary>
    public static readonly Shown Conductivity = Of(
        ConductivityKind.Kind,
        "W/mK",
        2,
        "BTU·in/h·ft²·°F",
        2
    );

    /// <summary>A share of a whole.</summary>
    public static readonly Shown Share = Of(FractionKind.Kind, "%", 0, "%", 0);

    /// <summary>Valve flow coefficient.</summary>
    public static readonly Shown Coefficient = Of(FlowCoefficientKind.Kind, "Kv", 2, "Cv", 2);

    /// <summary>Speed of the water.</summary>
    public static readonly Shown Velocity = new(Unit.Of("m/s", 1), 2, Unit.Of("ft/s", 0.3048), 2);

    /// <summary>Heat flux.</summary>
    public static readonly Shown Flux = new(
        Unit.Of("W/m²", 1),
        0,
        Unit.Of("BTU/h·ft²", 1055.05585262 / 3600 / (0.3048 * 0.3048)),
        1
    );

    /// <summary>A pure number.</summary>
    public static readonly Shown Number = new(Unit.Of("1", 1), 2, Unit.Of("1", 1), 2);

    /// <summary>A whole number.</summary>
    public static readonly Shown Whole = new(Unit.Of("1", 1), 0, Unit.Of("1", 1), 0);

    /// <summary>A factor, to four digits.</summary>
    public static readonly Shown Factor = new(Unit.Of("1", 1), 4, Unit.Of("1", 1), 4);

    /// <summary>A number far from one, by powers of ten.</summary>
    public static readonly Shown Tiny = new(Unit.Of("1", 1), ByPowers, Unit.Of("1", 1), ByPowers);

    /// <summary>Mass flow.</summary>
    public static readonly Shown MassFlow = new(
        Unit.Of("kg/s", 1),
        4,
        Unit.Of("lb/min", 0.45359237 / 60),
        2
    );

    /// <summary>Volume of a room.</summary>
    public static readonly Shown RoomVolume = Of(VolumeKind.Kind, "m³", 1, "ft³", 0);

    /// <summary>Head of a pump.</summary>
    public static readonly Shown Head = Of(LengthKind.Kind, "m", 2, "ft", 1);

    private const int ByPowers = -1;
    private const int MostDecimals = 9;

    /// <summary>The unit for a reader.</summary>
    public Unit UnitIn(UnitSystem system) => system == UnitSystem.Us ? Us : Si;

    /// <summary>Number and unit, for example <c>9.8 L/min</c>.</summary>
    public string Format(double si, UnitSystem system)
    {
        var symbol = UnitIn(system).Symbol;
        return symbol switch
        {
            "1" => Figure(si, system),
            "Kv" or "Cv" => $"{symbol} {Figure(si, system)}",
            _ => $"{Figure(si, system)} {symbol}",
        };
    }

    /// <summary>A difference of two values with its sign, for example <c>−0.4 K</c>; the offset of temperature scales drops out.</summary>
    public string FormatDifference(double si, UnitSystem system)
    {
        var unit = UnitIn(system);
        var symbol = unit.Symbol switch
        {
            "°C" => " K",
            "1" => "",
            var other => " " + other,
        };
        var size = Math.Abs(si) / unit.Factor;
        // three figures: a change is often far smaller than what the number itself shows
        var decimals =
            size == 0 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(size)), 0, MostDecimals);
        var figure = size.ToString(
            "F" + decimals.ToString(CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );
        return (si < 0 ? "−" : "+") + figure + symbol;
    }

    /// <summary>The number alone, for a table whose head carries the unit.</summary>
    public string Figure(double si, UnitSystem system)
    {
        var decimals = system == UnitSystem.Us ? UsDecimals : SiDecimals;
        var text = UnitIn(system)
            .FromSi(si)
            .ToString(
                "F" + decimals.ToString(CultureInfo.InvariantCulture),
                CultureInfo.InvariantCulture
            );
        // "-0.0" is a rounding artefact, not a value
        return text.AsSpan().TrimStart('-').Trim("0.").IsEmpty
            ? text.TrimStart('-')
            : text.Replace('-', '−');
    }

    private static Shown Of(
        QuantityKind kind,
        string si,
        int siDecimals,
        string us,
        int usDecimals
    ) => new(kind.Find(si)!, siDecimals, kind.Find(us)!, usDecimals);
}
