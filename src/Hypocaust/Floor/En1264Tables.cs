using System.Collections.Immutable;
using Hypocaust.Data;

namespace Hypocaust.Floor;

/// <summary>The tables of EN 1264-2, loaded once from the data files of this folder.</summary>
/// <source>EN 1264-2, types A and C (from memory; the head of each file says so)</source>
internal static class En1264Tables
{
    private static readonly EmbeddedTable Factors = EmbeddedTable.Load("Floor/en1264_factors.csv");
    private static readonly EmbeddedTable Limits = EmbeddedTable.Load("Floor/en1264_limits.csv");
    private static readonly LinearTable SpacingFactors = Factor("aT");
    private static readonly LinearTable CoverFactors = Factor("aU");
    private static readonly LinearTable DiameterFactors = Factor("aD");
    private static readonly LinearTable LimitFactors = Limit(2);
    private static readonly LinearTable LimitExponents = Limit(3);

    public static string FactorSource => $"{Factors.Source} ({Factors.Status})";

    public static string LimitSource => $"{Limits.Source} ({Limits.Status})";

    /// <summary>a_T of the covering resistance in m²·K/W.</summary>
    public static double SpacingFactor(double covering) => SpacingFactors.At(0, covering);

    /// <summary>a_U of spacing in m and covering resistance in m²·K/W.</summary>
    public static double CoverFactor(double spacing, double covering) =>
        CoverFactors.At(spacing, covering);

    /// <summary>a_D of spacing in m and covering resistance in m²·K/W.</summary>
    public static double DiameterFactor(double spacing, double covering) =>
        DiameterFactors.At(spacing, covering);

    /// <summary>B_G in W/m² of spacing in m and cover over conductivity in m²·K/W.</summary>
    public static double LimitFactor(double spacing, double ratio) =>
        LimitFactors.At(spacing, ratio);

    /// <summary>n_G of spacing in m and cover over conductivity in m²·K/W.</summary>
    public static double LimitExponent(double spacing, double ratio) =>
        LimitExponents.At(spacing, ratio);

    private static LinearTable Factor(string name) =>
        new([
            .. Factors
                .Rows.Where(row => row[0] == name)
                .Select(row =>
                    (
                        row[1].Length == 0 ? 0 : EmbeddedTable.Number(row[1]),
                        EmbeddedTable.Number(row[2]),
                        EmbeddedTable.Number(row[3])
                    )
                ),
        ]);

    private static LinearTable Limit(int column) =>
        new([
            .. Limits.Rows.Select(row =>
                (
                    EmbeddedTable.Number(row[0]),
                    EmbeddedTable.Number(row[1]),
                    EmbeddedTable.Number(row[column])
                )
            ),
        ]);
}
