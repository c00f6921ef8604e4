using System.ComponentModel;
using System.Diagnostics;

namespace Cavaxis.Web.Host;

/// <summary>Opens the person's browser.</summary>
internal static class Browser
{
    /// <summary>Opens an address where there is a screen and an opener; the address is printed in any case.</summary>
    public static void Open(string address)
    {
        bool screen = !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("DISPLAY")) || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("WAYLAND_DISPLAY"));
        if (!screen)
        {
            return;
        }

        try
        {
            using Process? opener = Process.Start(new ProcessStartInfo("xdg-open", address) { RedirectStandardError = true, RedirectStandardOutput = true });
        }
        catch (Win32Exception)
        {
            // No opener on this machine: the person types the address.
        }
    }
}
