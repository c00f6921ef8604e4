using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Imaging.Calibration;

namespace Cavaxis.Imaging.Measurement;

/// <summary>Everything that is needed to measure again: frame, points, calibration. Who measured is for the record that takes it.</summary>
/// <param name="Frames">The frame, or frames, measured on.</param>
/// <param name="Points">The points, pixels; the first belong to the first frame.</param>
/// <param name="Region">Number of the calibrated region, from 1; null where none was used.</param>
/// <param name="ScaleOrigin">Where the scale comes from.</param>
/// <param name="Calibration">The calibration, for people.</param>
/// <param name="PlacementSdPx">Error of a placed point, pixels.</param>
public sealed record MeasurementProvenance(
    ImmutableArray<FrameIdentity> Frames, ImmutableArray<PixelPoint> Points, int? Region, ScaleOrigin ScaleOrigin, string Calibration, double PlacementSdPx)
{
    /// <summary>One sentence for people.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"On {Framed()}. {Calibration} Points placed to {PlacementSdPx:0.##} pixels.");

    /// <summary>The same in at most 200 characters, for a field of the record: frame and hash, scale and number of points.</summary>
    public string ShortWords
    {
        get
        {
            string scale = ScaleOrigin switch
            {
                ScaleOrigin.KnownLength => "scale by a known length given by a person, file not calibrated",
                ScaleOrigin.ConfirmedRegion => string.Create(CultureInfo.InvariantCulture, $"scale of region {Region} confirmed by a person"),
                _ => string.Create(CultureInfo.InvariantCulture, $"scale of region {Region}"),
            };
            return string.Create(CultureInfo.InvariantCulture, $"measured on {Framed()}; {scale}; {Points.Length} points, {PlacementSdPx:0.##} px");
        }
    }

    private string Framed() => Frames.Length == 1
        ? Frames[0].ToString()
        : string.Create(CultureInfo.InvariantCulture, $"frames {Frames.Min(static f => f.Frame)} to {Frames.Max(static f => f.Frame)} of file {Frames[0].FileSha256[..12]}");
}
