using System.ComponentModel;
using System.Diagnostics;

namespace Hypocaust.Web.Server;

/// <summary>Shows an address in the person's own browser.</summary>
internal static class Browser
{
    /// <summary>Whether there is a screen in front of which someone could sit.</summary>
    public static bool HasDesktop =>
        OperatingSystem.IsWindows()
        || OperatingSystem.IsMacOS()
        || Variable("DISPLAY")
        || Variable("WAYLAND_DISPLAY");

    /// <summary>Asks the system to open the address; the printed address is enough where it cannot.</summary>
    public static bool TryOpen(string address)
    {
        try
        {
            using var started = Process.Start(
                new ProcessStartInfo(address) { UseShellExecute = true }
            );
            return true;
        }
        catch (Exception failure)
            when (failure
                    is Win32Exception
                        or InvalidOperationException
                        or PlatformNotSupportedException
            )
        {
            return false;
        }
    }

    private static bool Variable(string name) =>
        !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(name));
}
