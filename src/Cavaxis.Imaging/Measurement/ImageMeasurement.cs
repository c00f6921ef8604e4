using System.Collections.Immutable;
using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Measurement;

/// <summary>A number read off an image, with its error and everything needed to read it again.</summary>
/// <param name="Kind">What.</param>
/// <param name="Value">Value and error, in <paramref name="Unit"/>.</param>
/// <param name="Unit">mm, cm², deg, cm, cm/s, /min, mL or L/min.</param>
/// <param name="Provenance">Frame, points, calibration.</param>
/// <param name="Remarks">What has to be known with the number.</param>
public sealed record ImageMeasurement(MeasurementKind Kind, Estimate Value, string Unit, MeasurementProvenance Provenance, ImmutableArray<string> Remarks)
{
    /// <summary>The part of the standard deviation that another measurement with the same scale shares, as a share of the value; zero for an angle.</summary>
    public double ScaleRelativeSd { get; init; }

    /// <summary>The part of the standard deviation that comes from placing the points, in <see cref="Unit"/>.</summary>
    public double PlacementSd { get; init; }
}
