using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>Which Hounsfield units are shown from black to white (DICOM PS3.3 C.11.2.1.2, exact linear).</summary>
public sealed record GreyWindow
{
    /// <summary>A window.</summary>
    /// <param name="levelHu">Middle, HU.</param>
    /// <param name="widthHu">From black to white, HU, 1 or more.</param>
    /// <exception cref="InputFaultException">A number is out of bounds.</exception>
    public GreyWindow(double levelHu, double widthHu)
    {
        LevelHu = Require.InRange(levelHu, -2000, 4000, "window.levelHu", "Give the middle of the window in Hounsfield units.");
        WidthHu = Require.InRange(widthHu, 1, 8000, "window.widthHu", "Give the width of the window in Hounsfield units.");
    }

    /// <summary>For veins in a scan without or with contrast.</summary>
    /// <param name="bloodHu">What blood reads, HU.</param>
    public static GreyWindow ForBlood(double bloodHu) => new(Math.Clamp(bloodHu, 30, 400), 160 + (1.6 * Math.Clamp(bloodHu - 40, 0, 400)));

    /// <summary>Middle, HU.</summary>
    public double LevelHu { get; }

    /// <summary>From black to white, HU.</summary>
    public double WidthHu { get; }

    /// <summary>The grey of a value.</summary>
    /// <param name="hu">HU.</param>
    /// <returns>0 black to 255 white.</returns>
    public byte Grey(double hu) => (byte)Math.Clamp(Math.Round(255 * (((hu - LevelHu) / WidthHu) + 0.5)), 0, 255);
}
