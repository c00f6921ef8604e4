using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Measurement;

/// <summary>How surely a point is placed on what it is meant for.</summary>
public sealed record CaliperError
{
    /// <summary>An error.</summary>
    /// <param name="placementSdPx">Standard deviation of a placed point, pixels, in each direction by itself.</param>
    /// <param name="source">Where the number comes from.</param>
    /// <exception cref="InputFaultException">Negative or above 100 pixels.</exception>
    public CaliperError(double placementSdPx, Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        PlacementSdPx = Require.InRange(placementSdPx, 0, 100, "caliper.placementSdPx", "Give the standard deviation of a placed point in pixels.");
        Source = source;
    }

    /// <summary>What is taken where nobody says another: one and a half pixels in each direction, for the blur of a wall and the hand together.</summary>
    public static CaliperError Usual { get; } = new(1.5, new Source("common practice, no source", Certainty.CommonPractice));

    /// <summary>Standard deviation of a placed point, pixels.</summary>
    public double PlacementSdPx { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }
}
