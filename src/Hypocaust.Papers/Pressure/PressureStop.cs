namespace Hypocaust.Papers.Pressure;

/// <summary>An item that the water passes on a circuit, with the pressures there.</summary>
/// <param name="Name">Name of the item or loop.</param>
/// <param name="InPa">Pressure where the water comes in, Pa above atmosphere.</param>
/// <param name="OutPa">Pressure where it leaves.</param>
/// <param name="IsVessel">Whether the expansion vessel joins here.</param>
/// <param name="IsItem">Whether it is an item of the plant, not a loop.</param>
internal sealed record PressureStop(
    string Name,
    double InPa,
    double OutPa,
    bool IsVessel = false,
    bool IsItem = true
);

/// <summary>One circuit as a row of stops.</summary>
internal sealed record PressureWay(string Title, IReadOnlyList<PressureStop> Stops);
