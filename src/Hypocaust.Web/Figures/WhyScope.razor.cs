using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Figures;

/// <summary>A part of a page whose numbers open their derivation below it, one at a time.</summary>
public partial class WhyScope
{
    private string? path;
    private string words = "";
    private ElementReference asked;

    /// <summary>What holds the numbers.</summary>
    [Parameter, EditorRequired]
    public required RenderFragment ChildContent { get; set; }

    /// <summary>Opens the derivation of a number, or closes it.</summary>
    /// <param name="figurePath">Path of the number.</param>
    /// <param name="figureWords">The number as it is shown.</param>
    /// <param name="figure">Its button, to which the focus returns.</param>
    public void Toggle(string figurePath, string figureWords, ElementReference figure)
    {
        path = path == figurePath ? null : figurePath;
        words = figureWords;
        asked = figure;
        StateHasChanged();
    }

    private async Task CloseAsync()
    {
        path = null;
        StateHasChanged();
        await asked.FocusAsync();
    }
}
