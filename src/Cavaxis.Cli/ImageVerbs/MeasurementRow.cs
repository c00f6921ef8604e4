using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>A measurement as <c>image measure</c> tells it.</summary>
/// <param name="Kind">What.</param>
/// <param name="Value">Value, error, interval and origin.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Frame">Frame, from 1.</param>
/// <param name="Points">Points, pixels.</param>
/// <param name="Region">Number of the region, from 1; null where none was used.</param>
/// <param name="Scale">Where the scale comes from.</param>
/// <param name="Calibration">The scale, in words.</param>
/// <param name="PlacementSdPx">Error of a placed point, pixels.</param>
/// <param name="Remarks">What has to be known with the number.</param>
public sealed record MeasurementRow(
    MeasurementKind Kind, Estimate Value, string Unit, int Frame, IReadOnlyList<PixelPoint> Points, int? Region, ScaleOrigin Scale, string Calibration, double PlacementSdPx, IReadOnlyList<string> Remarks)
{
    /// <summary>The row of a measurement.</summary>
    /// <param name="m">The measurement.</param>
    /// <returns>Its row.</returns>
    internal static MeasurementRow Of(ImageMeasurement m) => new(
        m.Kind, m.Value, m.Unit, m.Provenance.Frames[0].Frame, m.Provenance.Points, m.Provenance.Region, m.Provenance.ScaleOrigin, m.Provenance.Calibration, m.Provenance.PlacementSdPx, m.Remarks);
}
