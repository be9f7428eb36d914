using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Papers.Piping;

/// <summary>Which symbol stands for an item.</summary>
internal enum SymbolKind
{
    Heater,
    Circulator,
    ShutOff,
    Check,
    Strainer,
    AirSeparator,
    DirtSeparator,
    FlowMeter,
    FlowSwitch,
    Purge,
    Relief,
    Vessel,
    Thermometer,
    Gauge,
    AirVent,
    Fill,
    Drain,
    Tee,
    SpacedTees,
    Manifold,
    Unknown,
}

/// <summary>An item of the plant with all that a drawing says of it.</summary>
internal sealed record DrawnItem(
    string Name,
    SymbolKind Kind,
    PlantItem Item,
    Part? Part,
    ItemAnswer? Answer
)
{
    /// <summary>Whether the water passes by it.</summary>
    public bool IsTapped => Kind is >= SymbolKind.Relief and <= SymbolKind.Drain;

    /// <summary>Whether it stands in the pipe, one way through.</summary>
    public bool IsInline => Kind is <= SymbolKind.Purge or SymbolKind.Unknown;

    /// <summary>The symbol of a part; of an unknown one, what the answer says of its kind.</summary>
    public static SymbolKind KindOf(Part? part, string? answered) =>
        part switch
        {
            HeaterPart => SymbolKind.Heater,
            CirculatorPart => SymbolKind.Circulator,
            InlinePart inline => (SymbolKind)((int)SymbolKind.ShutOff + (int)inline.Function),
            ReliefPart => SymbolKind.Relief,
            VesselPart => SymbolKind.Vessel,
            TappingPart tapping => (SymbolKind)(
                (int)SymbolKind.Thermometer + (int)tapping.Function
            ),
            TeePart => SymbolKind.Tee,
            CloselySpacedTeesPart => SymbolKind.SpacedTees,
            ManifoldPart => SymbolKind.Manifold,
            _ => Enum.TryParse<SymbolKind>(answered, ignoreCase: true, out var kind)
                ? kind
                : SymbolKind.Unknown,
        };
}

/// <summary>A pipe between two ports, with the water in it.</summary>
/// <param name="FromItem">Item where it starts.</param>
/// <param name="FromPort">Port there.</param>
/// <param name="ToItem">Item where it ends.</param>
/// <param name="ToPort">Port there.</param>
/// <param name="FlowKgPerS">Flow from start to end, kg/s; null where unanswered.</param>
/// <param name="TemperatureC">Temperature of the water, °C; null where it stands still or is unanswered.</param>
internal sealed record Piece(
    string FromItem,
    string FromPort,
    string ToItem,
    string ToPort,
    double? FlowKgPerS,
    double? TemperatureC
);
