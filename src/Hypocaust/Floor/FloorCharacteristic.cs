using Hypocaust.Floor.Section;

namespace Hypocaust.Floor;

/// <summary>
/// A floor as the plant sees it: linear in the water temperature. Water at T_w gives G (T_w − T_e) for each square metre,
/// of which K_H (T_w − room) goes up and the rest down.
/// </summary>
/// <remarks>
/// Up: EN 1264-2. Down: q_u = (R_o q + θ_i − θ_u)/R_u of EN 1264-2/-3 (from memory), written in the water temperature.
/// Valid for either sign in the plant's balance, but the standard speaks of heating only.
/// </remarks>
/// <source>EN 1264-2, EN 1264-3 (from memory)</source>
public sealed record FloorCharacteristic
{
    private FloorCharacteristic() { }

    /// <summary>Heat to the room for each kelvin of water over room, K_H, in W/(m²·K).</summary>
    public double UpwardConductanceWPerM2K { get; private init; }

    /// <summary>Further heat downward for each kelvin of water over room, K_H R_o/R_u, in W/(m²·K).</summary>
    public double DownwardConductanceWPerM2K { get; private init; }

    /// <summary>Downward heat in W/m² while the water has room temperature, (θ_i − θ_u)/R_u; negative if it is warmer below.</summary>
    public double DownwardAtRoomTemperatureWPerM2 { get; private init; }

    /// <summary>Upward heat in W/m² while the water has room temperature: what passes the tubes from below; negative if it is colder there, 0 by the standard.</summary>
    public double UpwardAtRoomTemperatureWPerM2 { get; private init; }

    /// <summary>Room temperature in °C.</summary>
    public double RoomC { get; private init; }

    /// <summary>Heat out of the water for each kelvin, G, in W/(m²·K).</summary>
    public double TotalConductanceWPerM2K => UpwardConductanceWPerM2K + DownwardConductanceWPerM2K;

    /// <summary>Water temperature T_e in °C at which the floor takes no heat from the water.</summary>
    /// <remarks>
    /// An intercept of the standard's straight lines: with K_H (R_o + R_u) below 1 it lies outside room and ground, which no still
    /// water can (note <c>floor-weak-below</c>); the heat at heating temperatures is sound all the same.
    /// </remarks>
    public double EquivalentAmbientC =>
        RoomC
        - (UpwardAtRoomTemperatureWPerM2 + DownwardAtRoomTemperatureWPerM2)
            / TotalConductanceWPerM2K;

    /// <summary>The characteristic of a floor between two temperatures.</summary>
    public static FloorCharacteristic Of(En1264Output output, FloorSurroundings surroundings)
    {
        var below = output.Section.ResistanceBelowM2KPerW;
        return new FloorCharacteristic
        {
            UpwardConductanceWPerM2K = output.ConductanceWPerM2K,
            DownwardConductanceWPerM2K =
                output.ConductanceWPerM2K * output.ResistanceAboveM2KPerW / below,
            DownwardAtRoomTemperatureWPerM2 = (surroundings.RoomC - surroundings.BelowC) / below,
            RoomC = surroundings.RoomC,
        };
    }

    /// <summary>The characteristic of a section solved in two dimensions, between two temperatures.</summary>
    public static FloorCharacteristic Of(SectionResponse section, FloorSurroundings surroundings)
    {
        var fallK = surroundings.RoomC - surroundings.BelowC;
        return new FloorCharacteristic
        {
            UpwardConductanceWPerM2K = section.UpWPerM2K,
            UpwardAtRoomTemperatureWPerM2 = section.UpFluxWPerM2(0, -fallK),
            DownwardConductanceWPerM2K = section.DownWPerM2K,
            DownwardAtRoomTemperatureWPerM2 = section.DownFluxWPerM2(0, -fallK),
            RoomC = surroundings.RoomC,
        };
    }

    /// <summary>Heat to the room in W/m² from water at a temperature in °C.</summary>
    public double UpwardFluxWPerM2(double waterC) =>
        UpwardConductanceWPerM2K * (waterC - RoomC) + UpwardAtRoomTemperatureWPerM2;

    /// <summary>Water temperature in °C that sends a flux in W/m² to the room.</summary>
    public double WaterForC(double fluxWPerM2) =>
        RoomC + (fluxWPerM2 - UpwardAtRoomTemperatureWPerM2) / UpwardConductanceWPerM2K;

    /// <summary>Heat downward in W/m² from water at a temperature in °C.</summary>
    public double DownwardFluxWPerM2(double waterC) =>
        DownwardConductanceWPerM2K * (waterC - RoomC) + DownwardAtRoomTemperatureWPerM2;

    /// <summary>Cools water along a loop: T falls exponentially towards T_e with NTU = G A/(m c_p).</summary>
    /// <param name="areaM2">Heated area of the loop in m², 0 or more.</param>
    /// <param name="supplyC">Water temperature at the inlet in °C.</param>
    /// <param name="capacityRateWPerK">Mass flow times specific heat m c_p in W/K; 0 stands for still water.</param>
    /// <exception cref="ArgumentOutOfRangeException">Area or capacity rate is negative.</exception>
    public LoopCooling Cool(double areaM2, double supplyC, double capacityRateWPerK)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(areaM2);
        ArgumentOutOfRangeException.ThrowIfNegative(capacityRateWPerK);
        return LoopCooling.Of(
            TotalConductanceWPerM2K * areaM2,
            EquivalentAmbientC,
            supplyC,
            capacityRateWPerK
        );
    }
}
