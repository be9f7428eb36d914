using Hypocaust.Quantities;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Figures;

/// <summary>A computed number; pressing it opens its derivation.</summary>
public partial class Figure
{
    private ElementReference button;

    /// <summary>Path of the number in the answer.</summary>
    [Parameter, EditorRequired]
    public required string Path { get; set; }

    /// <summary>The number in SI; null where there is none.</summary>
    [Parameter]
    public double? Value { get; set; }

    /// <summary>How it is shown.</summary>
    [Parameter]
    public Shown Shown { get; set; } = Shown.Number;

    /// <summary>Whether its unit stands beside it; in a table the head carries it.</summary>
    [Parameter]
    public bool WithUnit { get; set; }

    /// <summary>The number as already written in a sentence, instead of <see cref="Value"/>.</summary>
    [Parameter]
    public string? Text { get; set; }

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    [CascadingParameter]
    private WhyScope? Scope { get; set; }

    [CascadingParameter(Name = "OpenPath")]
    private string? OpenPath { get; set; }

    private string? Words =>
        Text
        ?? (
            Value is not { } value ? null
            : WithUnit ? Shown.Format(value, Moment.Units)
            : Shown.Figure(value, Moment.Units)
        );

    private void Ask() =>
        Scope?.Toggle(
            Path,
            Text ?? (Value is { } value ? Shown.Format(value, Moment.Units) : ""),
            button
        );
}
