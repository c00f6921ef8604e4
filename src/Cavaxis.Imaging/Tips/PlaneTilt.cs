using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tips;

/// <summary>
/// How far the line between landmark and device leans out of the plane of the picture. What the picture shows is its projection: measured = true × cos tilt, so that the measured distance is a
/// lower bound. The tilt is taken as |N(middle, spread)|, cut at <see cref="LargestDeg"/>.
/// </summary>
public sealed record PlaneTilt
{
    /// <summary>Beyond this the device is no longer seen lengthwise and nobody would measure along it.</summary>
    public const double LargestDeg = 60;

    /// <summary>A tilt.</summary>
    /// <param name="degrees">Middle, 0 to <see cref="LargestDeg"/>; 0 where the plane was sought along the device.</param>
    /// <param name="sdDegrees">Spread, 0 to 30.</param>
    /// <exception cref="InputFaultException">Out of range.</exception>
    public PlaneTilt(double degrees, double sdDegrees)
    {
        Degrees = Require.InRange(degrees, 0, LargestDeg, "tilt.degrees", "Give the angle between the line measured and the plane of the picture.");
        SdDegrees = Require.InRange(sdDegrees, 0, 30, "tilt.sdDegrees", "Give its standard deviation, degrees.");
    }

    /// <summary>The line lies in the plane exactly.</summary>
    public static PlaneTilt InPlane { get; } = new(0, 0);

    /// <summary>What is taken where nobody says another: a plane sought by hand along the device, within about twenty degrees.</summary>
    public static PlaneTilt Usual { get; } = new(0, 12);

    /// <summary>Where the usual comes from.</summary>
    public static Source UsualSource { get; } = new("a tube of 8 mm seen over 8 cm leans by at most atan(8/80) = 6 degrees; curved lines and a moving heart double it", Certainty.Assumption);

    /// <summary>Middle, degrees.</summary>
    public double Degrees { get; }

    /// <summary>Spread, degrees.</summary>
    public double SdDegrees { get; }

    /// <summary>True length over measured length for a draw.</summary>
    /// <param name="normal">A standard normal number.</param>
    /// <returns>At least 1.</returns>
    internal double Stretch(double normal) => 1 / Math.Cos(Math.Min(LargestDeg, Math.Abs(Degrees + (SdDegrees * normal))) * (Math.PI / 180));
}
