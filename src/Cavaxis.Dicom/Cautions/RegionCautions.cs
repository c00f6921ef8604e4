using System.Globalization;
using Cavaxis.Dicom.Headers;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Dicom.Cautions;

/// <summary>What <see cref="RegionJudge"/> finds about the calibration of an ultrasound image, as cautions.</summary>
internal static class RegionCautions
{
    private const string NoneNeeded = "Nothing need be done.";

    /// <summary>Everything found.</summary>
    public static IEnumerable<ImageCaution> Of(ImageHeader header, IReadOnlyList<CalibratedRegion> regions)
    {
        FrameCalibration calibration = RegionJudge.Judge(header.Columns, header.Rows, regions);
        foreach (RegionFinding finding in calibration.Findings)
        {
            (string meaning, string remedy) = Words(finding.Flaw);
            yield return new ImageCaution(string.Create(CultureInfo.InvariantCulture, $"(0018,6011) calibrated region {finding.Region}"), finding.Words, meaning, remedy);
        }

        if (regions.Count == 0)
        {
            yield return new ImageCaution(
                "(0018,6011) Sequence of Ultrasound Regions", "none", "The frame has no calibration: no length, time or speed can be measured in it by itself.", "Measure against a known length in the picture, such as depth marks or a cannula's marks.");
        }
        else if (calibration.IsUncalibrated)
        {
            yield return new ImageCaution(
                "(0018,6011) Sequence of Ultrasound Regions", "no region in which lengths can be measured as it stands", "No length can be measured before a person decides, or by another scale.", "Confirm the scale when measuring, or measure against a known length in the picture.");
        }
    }

    private static (string Meaning, string Remedy) Words(RegionFlaw flaw) => flaw switch
    {
        RegionFlaw.LargerThanImage => ("The scale does not hold as stated: lengths would come out wrong by as much as the frame was scaled.", "Check against a known length in the picture, and confirm the scale when measuring."),
        RegionFlaw.EndsOnePixelOutside => ("The end was written as a length. The scale is not touched by it.", NoneNeeded),
        RegionFlaw.UnequalSteps => ("Lengths along rows and columns have scales of their own; both are used.", NoneNeeded),
        RegionFlaw.Overlaps => ("Where regions of different scale overlap, a pixel has two meanings.", "Measure where only one of them lies."),
        _ => ("Nothing is measured in this region.", "Measure in another region, or against a known length in the picture."),
    };
}
