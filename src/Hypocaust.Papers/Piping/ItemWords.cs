using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Piping;

/// <summary>What the drawing says of items, in the reader's units.</summary>
internal sealed class ItemWords(PipingGraph graph, UnitSystem units)
{
    /// <summary>Figures at the symbol, the most important first.</summary>
    public ImmutableArray<string> Figures(DrawnItem item) =>
        [
            .. item.Kind switch
            {
                SymbolKind.Circulator => Pump(item),
                SymbolKind.Thermometer => One(
                    item.Answer?.TemperatureC is { } t ? Shown.Temperature.Format(t, units)
                    : graph.Answer is null ? null
                    : "no flow"
                ),
                SymbolKind.Gauge => One(Pressure(item.Answer?.PressurePa)),
                SymbolKind.Relief => One(Pressure((item.Part as ReliefPart)?.Opens.Si)),
                SymbolKind.Vessel => One(
                    item.Part is VesselPart vessel
                        ? Shown.Volume.Format(vessel.Size.Si, units)
                        : null
                ),
                SymbolKind.Heater => Heater(item),
                SymbolKind.ShutOff or SymbolKind.Purge => One(item.Item.Shut ? "shut" : null),
                SymbolKind.FlowMeter => One(Flow(item.Answer?.FlowKgPerS)),
                _ => [],
            },
        ];

    /// <summary>A second line under the name, or null.</summary>
    public static string? Remark(DrawnItem item) =>
        item is { Kind: SymbolKind.Circulator, Item.Speed: { } speed } ? $"speed {speed}" : null;

    /// <summary>All figures of an item, for a pointer resting on it.</summary>
    public string Title(DrawnItem item)
    {
        var parts = new List<string> { $"{item.Name} ({item.Item.Part})" };
        parts.AddRange(Figures(item));
        if (item.Answer is { } answer)
        {
            if (answer.TemperatureC is { } temperature)
            {
                parts.Add(Shown.Temperature.Format(temperature, units));
            }

            if (answer.PressurePa is { } pressure)
            {
                parts.Add(Shown.Gauge.Format(pressure, units));
            }

            if (Flow(answer.FlowKgPerS) is { } flow && item.IsInline)
            {
                parts.Add(flow);
            }

            if (answer.DropPa is { } drop && item.IsInline)
            {
                parts.Add("drop " + Shown.Drop.Format(drop, units));
            }
        }

        parts.Add(
            "height " + Shown.Length.Format(item.Answer?.HeightM ?? item.Item.Height.Si, units)
        );
        return string.Join(", ", parts.Distinct(StringComparer.Ordinal));
    }

    /// <summary>A mass flow as the volume flow of the fluid in running.</summary>
    public string? Flow(double? kgPerS) =>
        kgPerS is { } flow && graph.Answer is { Fluid.DensityKgPerM3: > 0 } plant
            ? Shown.Flow.Format(flow / plant.Fluid.DensityKgPerM3, units)
            : null;

    /// <summary>A heater's state in plain words.</summary>
    public static string State(HeaterState state) =>
        state switch
        {
            HeaterState.HoldsSetPoint => "holds its set point",
            HeaterState.FullPower => "at full power",
            HeaterState.Idle => "idle: water warm enough",
            HeaterState.FlowTooSmall => "off: flow too small",
            _ => "switched off",
        };

    private static IEnumerable<string> One(string? words) => words is null ? [] : [words];

    private string? Pressure(double? pa) =>
        pa is { } value ? Shown.Gauge.Format(value, units) : null;

    private IEnumerable<string> Pump(DrawnItem item)
    {
        var pump = graph.Answer?.Circulators.FirstOrDefault(one => one.Item == item.Name);
        return pump is null ? One(item.Item.Off ? "off" : null)
            : pump.Running ? [Shown.Flow.Format(pump.FlowM3PerS, units)]
            : ["off"];
    }

    private IEnumerable<string> Heater(DrawnItem item)
    {
        var heater = graph.Answer?.Heaters.FirstOrDefault(one => one.Item == item.Name);
        return heater is null
            ? One(item.Item.Off ? "off" : null)
            : [Shown.Heat.Format(heater.DeliveredW, units), State(heater.State)];
    }
}
