using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;

namespace Cavaxis.Imaging.Tests.Samples;

/// <summary>Regions and frames that tests build.</summary>
internal static class Boxes
{
    public static FrameIdentity Frame { get; } = new(new string('a', 64), 1);

    public static CalibratedRegion Tissue(int left, int top, int right, int bottom, double stepX = 0.02, double? stepY = null) => new(
        RegionFormat.TwoDimensional, RegionContent.Tissue, left, top, right, bottom, RegionUnit.Centimetre, RegionUnit.Centimetre, stepX, stepY ?? stepX);

    public static CalibratedRegion Spectrum(int left, int top, int right, int bottom, int? baseline, double secondsPerColumn = 0.01, double cmPerSPerRow = 1, double? baselineSpeed = null) => new(
        RegionFormat.Spectral, RegionContent.PulsedWave, left, top, right, bottom, RegionUnit.Second, RegionUnit.CentimetrePerSecond, secondsPerColumn, cmPerSPerRow, 0, baseline, 0, baselineSpeed);

    public static FrameRuler Ruler(double stepX, double stepY, double placementSdPx = 1.5) => new(
        Frame, RegionJudge.Judge(800, 600, [Tissue(0, 0, 799, 599, stepX, stepY)]), new CaliperError(placementSdPx, CaliperError.Usual.Source));
}
