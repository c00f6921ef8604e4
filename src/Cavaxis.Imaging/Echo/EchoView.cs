namespace Cavaxis.Imaging.Echo;

/// <summary>Whether a place of a scene can be seen by a probe.</summary>
public static class EchoView
{
    /// <summary>Whether the lines of a probe reach a place of its plane.</summary>
    /// <param name="probe">The probe.</param>
    /// <param name="right">To the right of the middle, mm.</param>
    /// <param name="depth">Depth below the middle of the face, mm.</param>
    public static bool Reaches(Probe probe, double right, double depth)
    {
        ArgumentNullException.ThrowIfNull(probe);
        if (probe.Kind == ProbeKind.Linear)
        {
            return Math.Abs(right) <= probe.WidthMm / 2 && depth >= 0 && depth <= probe.DepthMm;
        }

        double down = depth + probe.RadiusMm;
        double along = Math.Sqrt((right * right) + (down * down)) - probe.RadiusMm;
        return down > 0 && Math.Abs(Math.Atan2(right, down)) <= probe.AngleDeg * Math.PI / 360 && along >= 0 && along <= probe.DepthMm;
    }
}
