using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Cli.Output;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary><c>image measure</c>: a length, area, angle, a vein over the breath, or Doppler flow on a frame, with error and provenance.</summary>
/// <param name="output">Where results go.</param>
public sealed class ImageMeasureCommand(CommandOutput output) : AsyncCommand<ImageMeasureSettings>
{
    private const double UsualKnownShare = 0.01;

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, ImageMeasureSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        RequireOneKind(settings);
        DicomReader reader = new();
        await using (reader.ConfigureAwait(false))
        {
            DicomFile file = await reader.ReadAsync(settings.Path, cancellationToken).ConfigureAwait(false);
            int frame = OptionNumbers.Whole("--frame", settings.Frame, Math.Max(1, file.FrameCount));
            FrameCalibration calibration = Calibrated(settings, file);
            CaliperError caliper = OptionNumbers.Number("--placement-px", settings.PlacementPx) is double px ? new CaliperError(px, new Source("given by a person", Certainty.Assumption)) : CaliperError.Usual;
            KnownLength? known = Known(settings);
            MeasureSheet sheet = new(file.Sha256, file.Header.Columns, file.Header.Rows, file.FrameCount, frame, [.. calibration.Regions.Select(RegionRow.Of)], [], null);
            FrameRuler Ruler(int on) => new(new FrameIdentity(file.Sha256, on), calibration, caliper, known);
            if (settings.Vti)
            {
                IReadOnlyList<ImageMeasurement> flow = FlowOptions.Read(
                    settings, await reader.FrameAsync(file, frame - 1, cancellationToken).ConfigureAwait(false), new FrameIdentity(file.Sha256, frame), calibration, caliper);
                sheet = sheet with { Measurements = [.. flow.Select(MeasurementRow.Of)] };
            }
            else if (settings.Breath)
            {
                (IReadOnlyList<ImageMeasurement> diameters, BreathVariation breath) = await BreathOptions.FollowAsync(
                    reader, file, frame, OptionNumbers.Points("POINTS", settings.Points), Ruler, cancellationToken).ConfigureAwait(false);
                sheet = sheet with { Measurements = [MeasurementRow.Of(breath.Widest), MeasurementRow.Of(breath.Narrowest)], Breath = BreathRow.Of(diameters, breath) };
            }
            else
            {
                sheet = sheet with { Measurements = [MeasurementRow.Of(Measured(settings, Ruler(frame)))] };
            }

            if (settings.Json)
            {
                output.Json(sheet);
            }
            else
            {
                Write(sheet);
            }
        }

        return (int)ExitCode.Done;
    }

    private static void RequireOneKind(ImageMeasureSettings s)
    {
        int asked = new[] { s.Distance, s.Curve, s.Area, s.Angle, s.Motion, s.Breath, s.Vti }.Count(static flag => flag);
        if (asked != 1)
        {
            throw OptionNumbers.Refused(
                "command line", string.Create(CultureInfo.InvariantCulture, $"{asked} kinds of measurement"), "one of --distance, --curve, --area, --angle, --motion, --breath, --vti", "Name what is to be measured.");
        }
    }

    private static FrameCalibration Calibrated(ImageMeasureSettings settings, DicomFile file)
    {
        FrameCalibration calibration = RegionJudge.Judge(file.Header.Columns, file.Header.Rows, file.Regions);
        if (settings.ConfirmShrink is not string decision)
        {
            return calibration;
        }

        (double region, double times) = OptionNumbers.Pair("--confirm-shrink", decision, '=');
        return calibration.Confirm(region == Math.Floor(region) && Math.Abs(region) < 1000 ? (int)region : 0, times);
    }

    private static KnownLength? Known(ImageMeasureSettings settings)
    {
        if (OptionNumbers.Number("--known-length-mm", settings.KnownLengthMm) is not double mm)
        {
            return settings.Known.Length == 0 ? null : throw OptionNumbers.Refused("--known-length-mm", "(nothing)", "the length between the points of --known, mm", "Give the true length too.");
        }

        PixelPoint[] ends = OptionNumbers.Points("--known", settings.Known);
        return ends.Length == 2
            ? new KnownLength(mm, OptionNumbers.Number("--known-sd-mm", settings.KnownSdMm) ?? (UsualKnownShare * mm), ends[0], ends[1], string.IsNullOrWhiteSpace(settings.KnownWhat) ? "named by a person" : settings.KnownWhat)
            : throw OptionNumbers.Refused("--known", string.Create(CultureInfo.InvariantCulture, $"{ends.Length} points"), "two points", "Give both ends of the known length: --known \"x,y x,y\".");
    }

    private static ImageMeasurement Measured(ImageMeasureSettings settings, FrameRuler ruler)
    {
        PixelPoint[] points = OptionNumbers.Points("POINTS", settings.Points);
        int needed = settings.Distance || settings.Motion ? 2 : settings.Angle ? 3 : 0;
        if (needed > 0 && points.Length != needed)
        {
            throw OptionNumbers.Refused(
                "POINTS", string.Create(CultureInfo.InvariantCulture, $"{points.Length} points"), string.Create(CultureInfo.InvariantCulture, $"{needed} points"), "Give each as column,row in pixels.");
        }

        return settings.Distance ? ruler.Distance(points[0], points[1])
            : settings.Angle ? ruler.Angle(points[0], points[1], points[2])
            : settings.Motion ? ruler.MotionDepth(points[0], points[1])
            : settings.Area ? ruler.Area(points, !settings.Straight)
            : ruler.Course(points, !settings.Straight);
    }

    private void Write(MeasureSheet sheet)
    {
        output.Line(string.Create(CultureInfo.InvariantCulture, $"Frame {sheet.Frame} of {sheet.Frames}, {sheet.Columns} by {sheet.Rows}, file {sheet.FileSha256[..12]}"));
        foreach (string finding in sheet.Regions.SelectMany(static r => r.Findings))
        {
            output.Wrapped("  ! ", finding);
        }

        foreach (MeasurementRow row in sheet.Measurements)
        {
            output.Line(string.Create(CultureInfo.InvariantCulture, $"{PlainWords.FromName(row.Kind.ToString())} (frame {row.Frame}): {Words(row.Value)} {row.Unit}"));
        }

        foreach (string text in sheet.Measurements.Select(static m => m.Calibration).Concat(sheet.Measurements.SelectMany(static m => m.Remarks)).Distinct())
        {
            output.Wrapped("  ", text);
        }

        if (sheet.Breath is BreathRow breath)
        {
            output.Line($"collapsibility (max - min)/max: {Words(breath.CollapsibilityPercent)} %");
            output.Line($"distensibility (max - min)/min: {Words(breath.DistensibilityPercent)} %");
            output.Line($"variation (max - min)/mean: {Words(breath.VariationPercent)} %");
            foreach (string remark in breath.Remarks)
            {
                output.Wrapped("  ", remark);
            }
        }

        output.Wrapped("", "± is one standard deviation, in brackets nine tenths of the belief. " + SheetWords.Caution);
    }

    private static string Words(Estimate value) => string.Create(CultureInfo.InvariantCulture, $"{value.Value:G4} ± {value.Sd:G2} ({value.Low:G4} to {value.High:G4})");
}
