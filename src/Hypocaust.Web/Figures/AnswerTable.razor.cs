using System.Collections.Immutable;
using System.Globalization;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Figures;

/// <summary>A table of answers; on a phone each row becomes a small block.</summary>
/// <typeparam name="TRow">What a row shows.</typeparam>
public partial class AnswerTable<TRow>
{
    /// <summary>What the table shows.</summary>
    [Parameter, EditorRequired]
    public required string Caption { get; set; }

    /// <summary>Path of the list in the answer: <c>floor.loops</c>.</summary>
    [Parameter, EditorRequired]
    public required string Path { get; set; }

    /// <summary>The rows.</summary>
    [Parameter, EditorRequired]
    public required ImmutableArray<TRow> Rows { get; set; }

    /// <summary>Place of each row in the list, where only some of its items are shown.</summary>
    [Parameter]
    public ImmutableArray<int> Indices { get; set; }

    /// <summary>The columns.</summary>
    [Parameter, EditorRequired]
    public required ImmutableArray<Column<TRow>> Columns { get; set; }

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    private string PathOf(int row) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Path}[{(Indices.IsDefault ? row : Indices[row])}]"
        );

    private static string ClassOf(Column<TRow> column) => column.Value is null ? "words" : "number";
}
