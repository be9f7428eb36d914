using System.Globalization;
using Hypocaust.Problems;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Shell;

/// <summary>What the person should know before going on: edits brought back, a save that failed, a file that cannot be read.</summary>
public partial class Messages
{
    private const int MostShown = 200;

    [CascadingParameter]
    private SessionView View { get; set; } = null!;

    [Inject]
    private DesignSession Session { get; set; } = null!;

    private static string When(DateTimeOffset at) =>
        at.ToLocalTime().ToString("d MMMM, HH:mm", CultureInfo.InvariantCulture);

    private static string Count(int problems) =>
        problems == 1
            ? "One problem"
            : string.Create(CultureInfo.InvariantCulture, $"{problems} problems");

    private static string Where(Problem problem) =>
        problem.Position is { } position
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"line {position.Line}, column {position.Column}, {problem.Place}:"
            )
            : $"{problem.Place}:";
}
