namespace Cavaxis.Planning.Fit;

/// <summary>
/// Whether the middle of a side jet still meets the tricuspid annulus when the cannula is moved and turned (<c>docs/models/fit.md</c>).
/// The annulus is a circle: what the height leaves of it, the turn may use. With the height as a share u of the half stretch of
/// heights from which the unturned jet meets it, and the turn's sideways way as a share v of what it may be at the best height,
/// the jet meets the annulus where u² + v² is at most 1.
/// </summary>
internal static class TurnedJet
{
    /// <summary>Whether it meets the annulus.</summary>
    /// <param name="portMm">Position of the port along the axis.</param>
    /// <param name="fromMm">Highest position from which the unturned jet meets it.</param>
    /// <param name="toMm">Lowest such position.</param>
    /// <param name="windowDeg">Half width of the turn that is allowed at the best height, below 90.</param>
    /// <param name="turnDeg">Turn away from the valve.</param>
    /// <returns>True where it does.</returns>
    public static bool Enters(double portMm, double fromMm, double toMm, double windowDeg, double turnDeg)
    {
        if (portMm < fromMm || portMm > toMm || Math.Abs(turnDeg) >= 90)
        {
            return false;
        }

        double half = (toMm - fromMm) / 2;
        double u = half > 0 ? (portMm - fromMm - half) / half : 0;
        double v = Math.Tan(turnDeg * Math.PI / 180) / Math.Tan(windowDeg * Math.PI / 180);

        // Unturned, the ends of the stretch are in by the rule itself, whatever rounding makes of u.
        return turnDeg == 0 || (u * u) + (v * v) <= 1;
    }
}
