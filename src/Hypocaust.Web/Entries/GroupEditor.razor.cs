using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Entries;

/// <summary>All values of a thing and of the things in it, folded away; unfolded on demand or where a value in it is wanted.</summary>
public partial class GroupEditor
{
    private ElementReference summary;
    private bool isOpen;
    private string? openedFor;

    /// <summary>The thing.</summary>
    [Parameter, EditorRequired]
    public required FieldGroup Group { get; set; }

    /// <summary>Path of a value that somebody wants to see.</summary>
    [Parameter]
    public string? Wanted { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Wanted != openedFor)
        {
            openedFor = Wanted;
            isOpen |= Wanted is not null && Group.Holds(Wanted);
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && Wanted == Group.Path)
        {
            await summary.FocusAsync();
        }
    }

    private void Toggle() => isOpen = !isOpen;
}
