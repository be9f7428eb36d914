using Hypocaust.Quantities;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Shell;

/// <summary>Undo, redo, save and units.</summary>
public partial class Tools
{
    [CascadingParameter]
    private SessionView View { get; set; } = null!;

    [Inject]
    private DesignSession Session { get; set; } = null!;

    private bool ShowsUs => View.Present.Units == UnitSystem.Us;

    private string SwitchLabel => ShowsUs ? "Show °C, L/min" : "Show °F, gpm";

    private void SwitchUnits() =>
        Session.Edit(
            new DesignEdit(
                "$.units",
                ShowsUs ? "si" : "us",
                ShowsUs ? "units US → SI" : "units SI → US"
            )
        );
}
