using System.Collections.Immutable;
using Hypocaust.Quantities;
using Hypocaust.Web.Session;
using Hypocaust.Why;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Hypocaust.Web.Figures;

/// <summary>Where a number comes from: formula, inputs, source, and what it follows most.</summary>
public partial class WhyCard
{
    private const int MostSensitive = 2;
    private ElementReference card;
    private Explanation? explanation;
    private ImmutableArray<Sensitivity> sensitivities;
    private Moment? explained;

    /// <summary>Path of the number in the answer.</summary>
    [Parameter, EditorRequired]
    public required string Path { get; set; }

    /// <summary>The number as it is shown.</summary>
    [Parameter, EditorRequired]
    public required string Words { get; set; }

    /// <summary>The person has seen enough.</summary>
    [Parameter]
    public EventCallback OnClose { get; set; }

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(explained, Moment))
        {
            return;
        }

        explained = Moment;
        explanation = WhyBook.Explain(Moment.Answer, Path);
        sensitivities = explanation is null
            ? []
            : SensitivityRanking.Rank(Moment.Document, Path, MostSensitive);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await card.FocusAsync();
        }
    }

    private Task OnKeyAsync(KeyboardEventArgs key) =>
        key.Key == "Escape" ? OnClose.InvokeAsync() : Task.CompletedTask;

    private string Signed(double change, Shown shown) =>
        shown.FormatDifference(change, Moment.Units);
}
