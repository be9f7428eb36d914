using System.Globalization;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Shell;

/// <summary>The desk: questions at the side, the page beside them; shows every change of the session at once.</summary>
public partial class MainLayout
{
    private SessionView view = null!;

    [Inject]
    private DesignSession Session { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private string Page => "/" + Navigation.ToBaseRelativePath(Navigation.Uri).Split('?', '#')[0];

    private string SkipAddress => Page + "#answer";

    private string Here
    {
        get
        {
            var index = Questions.All.ToList().FindIndex(question => question.Address == Page);
            return index < 0
                ? "All questions"
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Questions.All[index].Name}, question {index + 1} of {Questions.All.Length}: all questions"
                );
        }
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        view = Session.View;
        Session.Changed += Show;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Session.Changed -= Show;
        GC.SuppressFinalize(this);
    }

    private void Show(object? sender, EventArgs e) =>
        _ = InvokeAsync(() =>
        {
            view = Session.View;
            StateHasChanged();
        });
}
