using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>The temperatures above and below the floor.</summary>
public sealed record FloorSurroundings
{
    private FloorSurroundings(double roomC, double belowC)
    {
        RoomC = roomC;
        BelowC = belowC;
    }

    /// <summary>Room temperature θ_i in °C (operative, as EN 1264 means it).</summary>
    public double RoomC { get; }

    /// <summary>Temperature θ_u in °C of the room, ground or air below all layers.</summary>
    public double BelowC { get; }

    /// <summary>Checks the two temperatures.</summary>
    /// <param name="roomC">Room temperature in °C, −50 to 60.</param>
    /// <param name="belowC">Temperature below in °C, −50 to 60.</param>
    public static Result<FloorSurroundings> Create(double roomC, double belowC)
    {
        List<Problem> problems = [];
        if (!roomC.IsWithin(-50, 60))
        {
            problems.Add(Outside(nameof(roomC), "room temperature", roomC));
        }

        if (!belowC.IsWithin(-50, 60))
        {
            problems.Add(Outside(nameof(belowC), "temperature below the floor", belowC));
        }

        return problems.Count > 0
            ? Result<FloorSurroundings>.Failed(problems)
            : new FloorSurroundings(roomC, belowC);
    }

    private static Problem Outside(string place, string quantity, double value) =>
        FloorProblems.Outside(
            "floor-temperature-outside",
            place,
            quantity,
            value,
            "°C",
            "Give a temperature from -50 °C to 60 °C"
        );
}
