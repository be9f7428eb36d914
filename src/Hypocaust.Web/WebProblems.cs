using System.Globalization;
using Hypocaust.Problems;

namespace Hypocaust.Web;

/// <summary>Every message of starting the web app, made by name.</summary>
internal static class WebProblems
{
    public static Problem PortTaken(int port) =>
        new(
            "port-taken",
            "--port",
            string.Create(
                CultureInfo.InvariantCulture,
                $"port {port} of this machine cannot be used"
            ),
            "name another one, or leave it out for a free one"
        );
}
