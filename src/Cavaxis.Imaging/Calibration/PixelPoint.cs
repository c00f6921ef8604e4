namespace Cavaxis.Imaging.Calibration;

/// <summary>A place on a frame in pixels, fractions allowed: (0, 0) is the middle of the top left pixel, x to the right, y down.</summary>
/// <param name="X">Column.</param>
/// <param name="Y">Row.</param>
public readonly record struct PixelPoint(double X, double Y)
{
    /// <summary>Distance in pixels.</summary>
    /// <param name="other">The other place.</param>
    /// <returns>Pixels.</returns>
    public double DistanceTo(PixelPoint other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>Both coordinates, for people.</summary>
    public override string ToString() => FormattableString.Invariant($"({X:0.##}, {Y:0.##})");
}
