using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Figures;

/// <summary>A part of a page whose numbers open their derivation, one at a time; the content says where it stands.</summary>
public partial class WhyScope
{
    private string words = "";
    private ElementReference asked;

    /// <summary>What holds the numbers; it places <see cref="Card"/>.</summary>
    [Parameter, EditorRequired]
    public required RenderFragment<WhyScope> ChildContent { get; set; }

    /// <summary>The open derivation; nothing while none is open.</summary>
    public RenderFragment? Card => OpenPath is null ? null : OpenCard;

    private string? OpenPath { get; set; }

    /// <summary>Whether the open derivation is that of a number of this thing.</summary>
    /// <param name="thing">Path of the thing in the answer.</param>
    public bool IsOpenWithin(string thing) =>
        OpenPath?.StartsWith(thing + ".", StringComparison.Ordinal) == true;

    /// <summary>Opens the derivation of a number, or closes it.</summary>
    /// <param name="figurePath">Path of the number.</param>
    /// <param name="figureWords">The number with its unit.</param>
    /// <param name="figure">Its button, to which the focus returns.</param>
    public void Toggle(string figurePath, string figureWords, ElementReference figure)
    {
        OpenPath = OpenPath == figurePath ? null : figurePath;
        words = figureWords;
        asked = figure;
        StateHasChanged();
    }

    private async Task CloseAsync()
    {
        OpenPath = null;
        StateHasChanged();
        await asked.FocusAsync();
    }
}
