using System.Collections.Immutable;
using Hypocaust.Data;
using Hypocaust.Problems;

namespace Hypocaust.Floor;

/// <summary>What lies below a heated floor, as the insulation table of EN 1264-4 divides it.</summary>
public enum BelowFloor
{
    /// <summary>A heated room.</summary>
    HeatedRoom,

    /// <summary>An unheated or intermittently heated room, or the ground.</summary>
    UnheatedRoomOrGround,

    /// <summary>Outside air, design temperature 0 °C or above.</summary>
    OutsideFrostFree,

    /// <summary>Outside air, design temperature from −5 °C to 0 °C.</summary>
    OutsideToMinus5,

    /// <summary>Outside air, design temperature from −15 °C to −5 °C.</summary>
    OutsideToMinus15,
}

/// <summary>Least thermal resistance of the insulation below the tubes.</summary>
/// <param name="Below">What lies below.</param>
/// <param name="ResistanceM2KPerW">Least resistance in m²·K/W. Local energy codes often ask for more.</param>
/// <source>EN 1264-4, table 1 (from memory, to be verified)</source>
public sealed record MinimumInsulation(BelowFloor Below, double ResistanceM2KPerW)
{
    private static readonly EmbeddedTable Table = EmbeddedTable.Load("Floor/en1264_insulation.csv");

    /// <summary>The table, in the order of <see cref="BelowFloor"/>.</summary>
    public static ImmutableArray<MinimumInsulation> All { get; } =
    [
        .. Table.Rows.Select(
            (row, index) => new MinimumInsulation((BelowFloor)index, EmbeddedTable.Number(row[1]))
        ),
    ];

    /// <summary>Where the table comes from, and how sure we are.</summary>
    public static string Source => $"{Table.Source} ({Table.Status})";

    /// <summary>The least insulation above a room or the ground, or above one class of outside air.</summary>
    public static MinimumInsulation For(BelowFloor below) => All[(int)below];

    /// <summary>The least insulation above outside air.</summary>
    /// <param name="outsideC">Outside design temperature in °C; below −15 the table ends, which is a problem.</param>
    public static Result<MinimumInsulation> ForOutside(double outsideC) =>
        outsideC switch
        {
            >= 0 => For(BelowFloor.OutsideFrostFree),
            >= -5 => For(BelowFloor.OutsideToMinus5),
            >= -15 => For(BelowFloor.OutsideToMinus15),
            _ => FloorProblems.InsulationTableEnds(outsideC),
        };
}
