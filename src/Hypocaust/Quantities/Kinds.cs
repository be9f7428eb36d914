namespace Hypocaust.Quantities;

// Factors are written from exact constituents (international foot 0.3048 m, pound 0.45359237 kg, g0 9.80665 m/s²,
// international table BTU 1055.05585262 J, US gallon 231 in³); every one is checked against a general unit library in the tests.

/// <summary>Length, height, thickness, diameter, pump head of the pumped fluid; SI metre.</summary>
public sealed class LengthKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "length",
            "12 ft 6 in",
            [
                Unit.Of("m", 1, "metre", "metres", "meter", "meters"),
                Unit.Of("mm", 0.001),
                Unit.Of("cm", 0.01),
                Unit.Of("ft", 0.3048, "'", "′", "foot", "feet"),
                Unit.Of("in", 0.0254, "\"", "″", "''", "inch", "inches"),
            ]
        );
}

/// <summary>Area; SI square metre.</summary>
public sealed class AreaKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "area",
            "60 m²",
            [Unit.Of("m²", 1, "sqm", "m^2"), Unit.Of("ft²", 0.3048 * 0.3048, "sqft")]
        );
}

/// <summary>Volume; SI cubic metre.</summary>
public sealed class VolumeKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "volume",
            "12 L",
            [
                Unit.Of("m³", 1),
                Unit.Of("L", 0.001, "litre", "litres", "liter", "liters"),
                Unit.Of("gal", 231 * 0.0254 * 0.0254 * 0.0254, "gallon", "gallons"),
                Unit.Of("ft³", 0.3048 * 0.3048 * 0.3048, "cuft"),
            ]
        );
}

/// <summary>Temperature as a point; we compute in degrees Celsius.</summary>
public sealed class TemperatureKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "temperature",
            "40 °C",
            [
                Unit.Of("°C", 1, "degC", "celsius"),
                new Unit("°F", 5.0 / 9.0, -32, ["degF", "fahrenheit"]),
                new Unit("K", 1, -273.15, ["kelvin"]),
            ]
        );
}

/// <summary>Temperature difference; SI kelvin.</summary>
public sealed class TemperatureDifferenceKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "temperature difference",
            "8 K",
            [Unit.Of("K", 1, "°C", "degC"), Unit.Of("°F", 5.0 / 9.0, "degF", "R", "°R")]
        );
}

/// <summary>Power, heat flow; SI watt.</summary>
public sealed class PowerKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "power",
            "9 kW",
            [
                Unit.Of("W", 1, "watt", "watts"),
                Unit.Of("kW", 1000),
                Unit.Of("BTU/h", 1055.05585262 / 3600, "BTUH", "BTU/hr"),
                Unit.Of("kBTU/h", 1055.05585262 / 3.6, "MBH", "kBTUH"),
            ]
        );
}

/// <summary>Pressure above atmosphere (gauge) or pressure difference; SI pascal.</summary>
public sealed class PressureKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "pressure",
            "1.5 bar",
            [
                Unit.Of("Pa", 1),
                Unit.Of("kPa", 1000),
                Unit.Of("bar", 100000, "barg", "bar g"),
                Unit.Of("mbar", 100),
                Unit.Of("psi", 0.45359237 * 9.80665 / (0.0254 * 0.0254), "psig"),
            ]
        );
}

/// <summary>Volume flow; SI cubic metre per second.</summary>
public sealed class VolumeFlowKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "flow",
            "9.8 L/min",
            [
                Unit.Of("m³/s", 1),
                Unit.Of("m³/h", 1.0 / 3600),
                Unit.Of("L/min", 0.001 / 60, "lpm"),
                Unit.Of("L/s", 0.001),
                Unit.Of("L/h", 0.001 / 3600),
                Unit.Of("gpm", 231 * 0.0254 * 0.0254 * 0.0254 / 60, "gal/min"),
            ]
        );
}

/// <summary>Thermal conductivity; SI W/mK.</summary>
public sealed class ConductivityKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "thermal conductivity",
            "1.4 W/mK",
            [
                Unit.Of("W/mK", 1),
                Unit.Of(
                    "BTU·in/h·ft²·°F",
                    1055.05585262 / 3600 * 0.0254 / (0.3048 * 0.3048 * 5.0 / 9.0),
                    "BTU in/(h ft² °F)",
                    "BTU in/h/ft²/°F"
                ),
            ]
        );
}

/// <summary>Thermal resistance of one square metre; SI m²K/W. The US form is written R-20.</summary>
public sealed class ThermalResistanceKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "thermal resistance",
            "R-20",
            [
                Unit.Of("m²K/W", 1, "m2K/W"),
                Unit.Of(
                    "ft²·°F·h/BTU",
                    0.3048 * 0.3048 * (5.0 / 9.0) * 3600 / 1055.05585262,
                    "h ft² °F/BTU",
                    "hr ft² °F/BTU"
                ),
            ]
        );
}

/// <summary>Thermal transmittance (U-value); SI W/m²K.</summary>
public sealed class TransmittanceKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "thermal transmittance",
            "0.2 W/m²K",
            [
                Unit.Of("W/m²K", 1),
                Unit.Of(
                    "BTU/h·ft²·°F",
                    1055.05585262 / 3600 / (0.3048 * 0.3048 * 5.0 / 9.0),
                    "BTU/(h ft² °F)",
                    "BTU/hr ft² °F"
                ),
            ]
        );
}

/// <summary>A share of a whole; SI 1, written in per cent.</summary>
public sealed class FractionKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new("share", "35 %", [Unit.Of("1", 1, "of 1"), Unit.Of("%", 0.01, "percent", "per cent")]);
}

/// <summary>Air changes per hour; we compute in 1/h as the standards do.</summary>
public sealed class AirChangeKind : IQuantityKind
{
    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new("air change rate", "0.5 1/h", [Unit.Of("1/h", 1, "ach", "/h")]);
}

/// <summary>Valve flow coefficient Kv: m³/h of water at a drop of 1 bar. The US form is written Cv 1.2.</summary>
public sealed class FlowCoefficientKind : IQuantityKind
{
    private const double PsiPerBar = 100000 / (0.45359237 * 9.80665 / (0.0254 * 0.0254));

    /// <inheritdoc/>
    public static QuantityKind Kind { get; } =
        new(
            "flow coefficient",
            "Kv 1.6",
            [
                Unit.Of("Kv", 1),
                Unit.Of("Cv", 231 * 0.0254 * 0.0254 * 0.0254 * 60 * Math.Sqrt(PsiPerBar)),
            ]
        );
}
