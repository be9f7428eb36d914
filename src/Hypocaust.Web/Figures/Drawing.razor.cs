using Hypocaust.Papers.Drawing;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Figures;

/// <summary>A drawing of the present answer, once for a desk and once for a phone; the style sheet shows the one that fits.</summary>
public partial class Drawing
{
    private Moment? drawn;
    private string? wide;
    private string narrow = "";

    /// <summary>Draws a moment.</summary>
    [Parameter, EditorRequired]
    public required Func<Moment, SheetShape, Sheet> Of { get; set; }

    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (!ReferenceEquals(drawn, Moment))
        {
            drawn = Moment;
            wide = Of(Moment, SheetShape.Wide).ToSvg();
            narrow = Of(Moment, SheetShape.Narrow).ToSvg();
        }
    }
}
