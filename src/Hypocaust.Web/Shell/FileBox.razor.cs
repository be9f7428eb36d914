using System.Globalization;
using System.Text;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Hypocaust.Web.Shell;

/// <summary>Which design this is, whether it is saved, and the way to copy it or open another.</summary>
public partial class FileBox
{
    // The reader refuses longer files with a problem of its own; this is room enough for it to do so
    private const long LongestFile = 64L * 1024 * 1024;

    [CascadingParameter]
    private SessionView View { get; set; } = null!;

    [Inject]
    private DesignSession Session { get; set; } = null!;

    private string State =>
        View switch
        {
            { Place: null } => "working copy",
            { IsSaved: false } => "not saved yet",
            { SavedAt: { } at } => "saved " + at.ToString("HH:mm", CultureInfo.InvariantCulture),
            _ => "saved",
        };

    private async Task OpenAsync(InputFileChangeEventArgs chosen)
    {
        await using var stream = chosen.File.OpenReadStream(LongestFile);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        Session.Open(chosen.File.Name, await reader.ReadToEndAsync());
    }
}
