using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Calibration;

/// <summary>
/// A length on the picture that a person knows, such as two marks of a cannula or its outer diameter. Pixels are taken as square. The thing must lie in the plane of
/// the picture: one that leans out of it looks shorter, and everything measured by it comes out too long.
/// </summary>
public sealed record KnownLength
{
    /// <summary>Fewest pixels between the two points.</summary>
    public const double FewestPixels = 5;

    /// <summary>A known length between two points.</summary>
    /// <param name="lengthMm">The length, 0.5 to 500 mm.</param>
    /// <param name="sdMm">Its standard deviation, mm: of a printed mark or a label.</param>
    /// <param name="from">One end on the picture.</param>
    /// <param name="to">The other end.</param>
    /// <param name="what">What it is, for people: "two marks of the drainage cannula".</param>
    /// <exception cref="InputFaultException">A number is out of range, or the points are too close together.</exception>
    public KnownLength(double lengthMm, double sdMm, PixelPoint from, PixelPoint to, string what)
    {
        LengthMm = Require.InRange(lengthMm, 0.5, 500, "known.lengthMm", "Give the true length between the two points in mm.");
        SdMm = Require.InRange(sdMm, 0, 0.2 * lengthMm, "known.sdMm", "Give the standard deviation of the length in mm, at most a fifth of it.");
        _ = Require.InRange(from.DistanceTo(to), FewestPixels, 50_000, "known.points", "Choose two points of known distance that lie farther apart: the longer, the surer.");
        ArgumentException.ThrowIfNullOrWhiteSpace(what);
        (From, To, What) = (from, to, what);
    }

    /// <summary>The length, mm.</summary>
    public double LengthMm { get; }

    /// <summary>Its standard deviation, mm.</summary>
    public double SdMm { get; }

    /// <summary>One end.</summary>
    public PixelPoint From { get; }

    /// <summary>The other end.</summary>
    public PixelPoint To { get; }

    /// <summary>What it is.</summary>
    public string What { get; }

    /// <summary>The scale: length over pixels, with the error of both.</summary>
    /// <param name="placementSdPx">Error of placing one end, pixels, in each direction.</param>
    /// <returns>The scale.</returns>
    /// <exception cref="InputFaultException">The scale would be too unsure to be one.</exception>
    public LengthScale Scale(double placementSdPx)
    {
        double pixels = From.DistanceTo(To);
        double placing = Math.Sqrt(2) * placementSdPx / pixels;
        double relative = Math.Sqrt((placing * placing) + (SdMm * SdMm / (LengthMm * LengthMm)));
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"No calibration of the file is used: scale by a known length, {What}, {LengthMm:G4} mm ± {SdMm:G2} between {From} and {To}. Square pixels, and that it lies in the plane of the picture, are assumed.");
        return new LengthScale(LengthMm / pixels, LengthMm / pixels, relative, ScaleOrigin.KnownLength, null, words);
    }
}
