using System.Collections.Immutable;

namespace Hypocaust.Quantities;

/// <summary>All kinds of quantity that a design may hold.</summary>
public static class AllKinds
{
    /// <summary>The kinds, in the order in which a unit is looked up.</summary>
    public static ImmutableArray<QuantityKind> List { get; } =
    [
        LengthKind.Kind,
        AreaKind.Kind,
        VolumeKind.Kind,
        TemperatureKind.Kind,
        TemperatureDifferenceKind.Kind,
        PowerKind.Kind,
        PressureKind.Kind,
        VolumeFlowKind.Kind,
        ConductivityKind.Kind,
        ThermalResistanceKind.Kind,
        TransmittanceKind.Kind,
        FractionKind.Kind,
        AirChangeKind.Kind,
        FlowCoefficientKind.Kind,
    ];

    /// <summary>The first kind that knows a unit, or null.</summary>
    public static QuantityKind? Find(string unit) =>
        List.FirstOrDefault(kind => kind.Find(unit) is not null);
}
