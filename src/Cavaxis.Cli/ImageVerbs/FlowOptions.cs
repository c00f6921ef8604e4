using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Doppler;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Reads Doppler flow as the options of <c>image measure --vti</c> ask.</summary>
internal static class FlowOptions
{
    /// <summary>Traces and reads.</summary>
    /// <param name="settings">Settings as typed.</param>
    /// <param name="image">The frame's pixels.</param>
    /// <param name="frame">Which frame.</param>
    /// <param name="calibration">Its regions.</param>
    /// <param name="caliper">How surely points are placed.</param>
    /// <returns>Integral, peak, mean and, where they follow, rate, stroke volume and output.</returns>
    /// <exception cref="InputFaultException">There is no spectrum, or an option cannot be used.</exception>
    public static IReadOnlyList<ImageMeasurement> Read(ImageMeasureSettings settings, ImageFrame image, FrameIdentity frame, FrameCalibration calibration, CaliperError caliper)
    {
        SpectralAxes axes = SpectralAxes.Of(Region(settings.Region, calibration), OptionNumbers.Number("--baseline", settings.Baseline));
        FlowSide side = settings.Side switch
        {
            null => FlowSide.Stronger,
            "above" => FlowSide.Above,
            "below" => FlowSide.Below,
            string other => throw OptionNumbers.Refused("--side", other, "above or below", "Name the side of the baseline on which the flow is drawn."),
        };
        DopplerEnvelope envelope = EnvelopeTracer.Trace(image, axes, side);
        PixelPoint[] drawn = OptionNumbers.Points("POINTS", settings.Points);
        envelope = drawn.Length > 0 ? envelope.Correct(drawn) : envelope;
        BeatWindow[] beats = settings.Beats.Length == 0
            ? [.. BeatFinder.Find(envelope)]
            : [.. settings.Beats.Select(text => OptionNumbers.Pair("--beat", text, ',')).Select(beat => BeatFinder.ByHand(envelope, beat.First, beat.Second))];
        BeamAngle? angle = OptionNumbers.Number("--beam-deg", settings.BeamDeg) is double degrees ? new BeamAngle(degrees, OptionNumbers.Number("--beam-sd-deg", settings.BeamSdDeg) ?? 5) : null;
        FlowReading flow = FlowMeasuring.Read(frame, envelope, beats, angle, caliper);
        List<ImageMeasurement> measured = [flow.VelocityTimeIntegral, flow.Peak, flow.Mean];
        if (flow.Rate is not null)
        {
            measured.Add(flow.Rate);
        }

        if (OptionNumbers.Number("--lvot-mm", settings.LvotMm) is double mm)
        {
            double sd = Require.InRange(OptionNumbers.Number("--lvot-sd-mm", settings.LvotSdMm) ?? 1, 0, 10, "--lvot-sd-mm", "Give the standard deviation of the diameter in mm.");
            ImageMeasurement volume = StrokeVolumes.Of(flow.VelocityTimeIntegral, Estimate.Normal(mm, sd, Origin.Measured));
            measured.Add(volume);
            if (flow.Rate is not null)
            {
                measured.Add(StrokeVolumes.Output(volume, flow.Rate));
            }
        }

        return measured;
    }

    private static JudgedRegion Region(string? asked, FrameCalibration calibration)
    {
        if (asked is not null)
        {
            return calibration.Regions.IsEmpty
                ? throw OptionNumbers.Refused("--region", asked, "no region: the file states none", "A spectrum without calibration cannot be measured.")
                : calibration.Regions[OptionNumbers.Whole("--region", asked, calibration.Regions.Length) - 1];
        }

        // What is a spectrum but cannot be used is told by name when its axes are read.
        JudgedRegion[] spectra = [.. calibration.Regions.Where(static r => r.Stated.Format == RegionFormat.Spectral)];
        return spectra.Length == 1
            ? spectra[0]
            : throw new InputFaultException(new InputFault(
                spectra.Length == 0 ? FaultCode.NotFound : FaultCode.BadOption, "--region", string.Create(CultureInfo.InvariantCulture, $"{spectra.Length} spectra"), "one spectrum, or --region with its number",
                spectra.Length == 0 ? "The file states no spectrum: choose another file." : "Name the region of the spectrum."));
    }
}
