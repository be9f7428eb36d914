using System.Collections.Immutable;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Entries;

/// <summary>One value of the design with its label, hint and, where what was typed cannot be used, its problems.</summary>
public partial class Entry
{
    private ElementReference input;

    /// <summary>The value.</summary>
    [Parameter, EditorRequired]
    public required Field Field { get; set; }

    /// <summary>A label for this place, instead of the value's own.</summary>
    [Parameter]
    public string? Label { get; set; }

    /// <summary>A hint for this place, instead of the value's meaning.</summary>
    [Parameter]
    public string? Hint { get; set; }

    /// <summary>The values to choose from at this place, where the value's own form leaves it open.</summary>
    [Parameter]
    public ImmutableArray<Choice> Choices { get; set; } = [];

    /// <summary>Where this entry stands, so that the same value can stand at two places of a page.</summary>
    [Parameter]
    public string Where { get; set; } = "main";

    /// <summary>Whether somebody came here to see this value.</summary>
    [Parameter]
    public bool IsWanted { get; set; }

    [CascadingParameter]
    private SessionView View { get; set; } = null!;

    [Inject]
    private DesignSession Session { get; set; } = null!;

    private Field Shown =>
        Field with
        {
            Label = Label ?? Field.Label,
            Choices = Field.Choices.IsEmpty ? Choices : Field.Choices,
        };

    private Rejection? Rejection => View.Rejections.GetValueOrDefault(Field.Path);

    private bool IsAssumed => Field.Assumed && Rejection is null;

    private string Text => Rejection?.Text ?? Field.Text;

    private string HintText => Hint ?? Field.Meaning;

    private string Id => IdOf(Where, Field.Path);

    private string InputId => Id + "-input";

    private string HintId => Id + "-hint";

    private string ProblemId => Id + "-problem";

    private string? DescribedBy =>
        (HintText.Length > 0, Rejection is not null) switch
        {
            (true, true) => $"{HintId} {ProblemId}",
            (true, false) => HintId,
            (false, true) => ProblemId,
            _ => null,
        };

    /// <summary>Id of an entry in the page, made of the letters and digits of its path.</summary>
    internal static string IdOf(string where, string path) =>
        where + string.Concat(path.Select(c => char.IsLetterOrDigit(c) ? c : '-'));

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && IsWanted)
        {
            await input.FocusAsync();
        }
    }

    private void Commit(string? typed)
    {
        var text = typed ?? "";
        if (text != Text || IsAssumed)
        {
            Session.Edit(
                new DesignEdit(
                    Field.Path,
                    text,
                    $"{Shown.Label} {InWords(Field.Text)} → {InWords(text)}"
                )
            );
        }
    }

    private string InWords(string text) =>
        Shown.Choices.FirstOrDefault(choice => choice.Text == text)?.Label
        ?? (text.Length == 0 ? "not given" : text);
}
