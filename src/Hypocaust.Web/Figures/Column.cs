using Hypocaust.Quantities;

namespace Hypocaust.Web.Figures;

/// <summary>A column of a table of answers: words or a computed number.</summary>
/// <typeparam name="TRow">What a row shows.</typeparam>
/// <param name="Head">Its head, without unit.</param>
/// <param name="Text">The words of a row; null for a number.</param>
/// <param name="Value">The number of a row in SI; null for words.</param>
/// <param name="Member">Path of a computed number within the row's record: <c>running.dropPa</c>; null for one that was given.</param>
/// <param name="Shown">How the number is shown.</param>
public sealed record Column<TRow>(
    string Head,
    Func<TRow, string>? Text,
    Func<TRow, double?>? Value,
    string? Member,
    Shown? Shown
)
{
    /// <summary>Words.</summary>
    public static Column<TRow> Words(string head, Func<TRow, string> text) =>
        new(head, text, null, null, null);

    /// <summary>A computed number.</summary>
    public static Column<TRow> Number(
        string head,
        string member,
        Func<TRow, double?> value,
        Shown shown
    ) => new(head, null, value, member, shown);

    /// <summary>A number that the person gave: it stands as it is and has no derivation.</summary>
    public static Column<TRow> Given(string head, Func<TRow, double?> value, Shown shown) =>
        new(head, null, value, null, shown);

    /// <summary>Head with the unit of the reader.</summary>
    public string HeadIn(UnitSystem units) =>
        Shown?.UnitIn(units).Symbol is { } symbol and not "1" ? $"{Head}, {symbol}" : Head;
}
