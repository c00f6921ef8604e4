using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Measurement;

/// <summary>
/// Measures on one frame. The scale is that of the region in which all points lie; with a known length it is that, everywhere on the frame, and every measurement says so.
/// Without either nothing is measured. Errors and their sources: docs/models/measurement.md.
/// </summary>
public sealed class FrameRuler
{
    /// <summary>Most points of one measurement.</summary>
    public const int MostPoints = 500;

    private const double RowsAtMost = 16_384;

    private readonly FrameCalibration calibration;
    private readonly KnownLength? known;
    private readonly CaliperError caliper;

    /// <summary>A ruler for a frame.</summary>
    /// <param name="frame">Which frame.</param>
    /// <param name="calibration">Its regions, judged.</param>
    /// <param name="caliper">How surely points are placed; null for the usual.</param>
    /// <param name="known">A known length that replaces the calibration of the file; null for none.</param>
    /// <exception cref="InputFaultException">The known length lies outside of the image or gives no sure scale.</exception>
    public FrameRuler(FrameIdentity frame, FrameCalibration calibration, CaliperError? caliper = null, KnownLength? known = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(calibration);
        (Frame, this.calibration, this.known, this.caliper) = (frame, calibration, known, caliper ?? CaliperError.Usual);
        if (known is not null)
        {
            calibration.RequireOnImage([known.From, known.To]);
            _ = known.Scale(this.caliper.PlacementSdPx);
        }
    }

    /// <summary>The frame.</summary>
    public FrameIdentity Frame { get; }

    /// <summary>Straight distance, mm.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other.</param>
    /// <returns>The distance with its error.</returns>
    /// <exception cref="InputFaultException">The points cannot be measured between.</exception>
    public ImageMeasurement Distance(PixelPoint from, PixelPoint to) =>
        Of(MeasurementKind.Distance, "mm", 1, [from, to], 2, PlanarShapes.PathMm);

    /// <summary>Length of a course, mm.</summary>
    /// <param name="points">Two points or more along it.</param>
    /// <param name="smooth">True for the smooth curve through the points, false for straight pieces.</param>
    /// <returns>The length with its error. For a smooth course half the difference to the straight pieces is added as error of what lies between the points.</returns>
    /// <exception cref="InputFaultException">The points cannot be measured along.</exception>
    public ImageMeasurement Course(IReadOnlyList<PixelPoint> points, bool smooth = true)
    {
        ImageMeasurement straight = Of(MeasurementKind.CurvedDistance, "mm", 1, points, 2, PlanarShapes.PathMm);
        return smooth ? WithSpanError(Of(MeasurementKind.CurvedDistance, "mm", 1, points, 2, static mm => PlanarShapes.PathMm(SmoothCurve.Through(mm, closed: false))), straight) : straight;
    }

    /// <summary>Area inside an outline, cm².</summary>
    /// <param name="points">Three points or more along it, in order.</param>
    /// <param name="smooth">True for the smooth outline through the points, false for straight pieces, which lie inside a round one.</param>
    /// <returns>The area with its error.</returns>
    /// <exception cref="InputFaultException">The outline crosses itself, or cannot be measured.</exception>
    public ImageMeasurement Area(IReadOnlyList<PixelPoint> points, bool smooth = true)
    {
        ImageMeasurement straight = Of(MeasurementKind.Area, "cm²", 0.01, points, 3, PlanarShapes.AreaMm2);
        if (PlanarShapes.CrossesItself(points))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "points", string.Create(CultureInfo.InvariantCulture, $"{points.Count} points"), "an outline that does not cross itself", "Place the points in order around the outline."));
        }

        ImageMeasurement area = smooth
            ? WithSpanError(Of(MeasurementKind.Area, "cm²", 0.01, points, 3, static mm => PlanarShapes.AreaMm2(SmoothCurve.Through(mm, closed: true))), straight)
            : straight;
        double round = 20 * Math.Sqrt(area.Value.Value / Math.PI);
        return area with { Remarks = area.Remarks.Add(string.Create(CultureInfo.InvariantCulture, $"A circle of this area has a diameter of {round:F1} mm.")) };
    }

    /// <summary>Angle at a point, degrees.</summary>
    /// <param name="from">On one line.</param>
    /// <param name="vertex">Where the lines meet.</param>
    /// <param name="to">On the other line.</param>
    /// <returns>The angle, 0 to 180.</returns>
    /// <exception cref="InputFaultException">The points cannot be measured between.</exception>
    public ImageMeasurement Angle(PixelPoint from, PixelPoint vertex, PixelPoint to)
    {
        ImageMeasurement angle = Of(MeasurementKind.Angle, "deg", 1, [from, vertex, to], 3, PlanarShapes.AngleDeg);
        double low = Math.Max(0, angle.Value.Low);
        return angle with { Value = Estimate.WithInterval(angle.Value.Value, angle.Value.Sd, low, Math.Max(low, Math.Min(180, angle.Value.High)), Origin.Measured), ScaleRelativeSd = 0 };
    }

    /// <summary>Depth between two points of a trace of motion over time, mm; the time between them does not count.</summary>
    /// <param name="from">One point.</param>
    /// <param name="to">The other.</param>
    /// <returns>The depth with its error.</returns>
    /// <exception cref="InputFaultException">The points do not lie in one such trace, or in one row.</exception>
    public ImageMeasurement MotionDepth(PixelPoint from, PixelPoint to)
    {
        JudgedRegion region = calibration.RegionFor([from, to], RegionMeasure.DepthOverTime);
        double rows = Require.InRange(Math.Abs(from.Y - to.Y), 0.5, RowsAtMost, "points", "Place the two points on different walls.");
        double mmPerRow = 10 * region.Usable.StepY;
        double placing = Math.Sqrt(2) * caliper.PlacementSdPx * mmPerRow;
        double scale = ScaleTolerance.LengthRelativeSd;
        string words = string.Create(CultureInfo.InvariantCulture, $"Scale by {region.Name} of the file, motion over time: {region.Usable.StepY:G5} cm a row.");
        ScaleOrigin origin = region.State == RegionState.Confirmed ? ScaleOrigin.ConfirmedRegion : ScaleOrigin.Region;
        return Result(MeasurementKind.MotionDepth, "mm", rows * mmPerRow, placing, rows * mmPerRow * scale, [from, to], region.Number, origin, words);
    }

    private ImageMeasurement Of(MeasurementKind kind, string unit, double factor, IReadOnlyList<PixelPoint> points, int least, Func<ReadOnlySpan<double>, double> function)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < least || points.Count > MostPoints)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "points", points.Count.ToString(CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"{least} to {MostPoints} points"), "Place the points on the image."));
        }

        calibration.RequireOnImage(points);
        for (int i = 1; i < points.Count; i++)
        {
            if (points[i].DistanceTo(points[i - 1]) < 0.5)
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.Contradiction, "points", string.Create(CultureInfo.InvariantCulture, $"{points[i - 1]} and {points[i]}"), "neighbouring points half a pixel apart or more", "Remove one of the two points."));
            }
        }

        LengthScale scale = known is null ? calibration.ScaleFor(points) : known.Scale(caliper.PlacementSdPx);
        (double value, double placing, double byScale) = ErrorModel.Of(points, scale, caliper.PlacementSdPx, function);
        return Result(kind, unit, factor * value, factor * placing, factor * byScale, [.. points], scale.Region, scale.Origin, scale.Words);
    }

    private ImageMeasurement Result(
        MeasurementKind kind, string unit, double value, double placing, double byScale, ImmutableArray<PixelPoint> points, int? region, ScaleOrigin origin, string words)
    {
        ImmutableArray<string> remarks = origin == ScaleOrigin.Region ? [] : [words];
        return new ImageMeasurement(
            kind, Estimate.Normal(value, Math.Sqrt((placing * placing) + (byScale * byScale)), Origin.Measured), unit,
            new MeasurementProvenance([Frame], points, region, origin, words, caliper.PlacementSdPx), remarks)
        {
            PlacementSd = placing,
            ScaleRelativeSd = value > 0 ? byScale / value : 0,
        };
    }

    // Half the difference between smooth and straight, taken as even within that on both sides: /√3.
    private static ImageMeasurement WithSpanError(ImageMeasurement smooth, ImageMeasurement straight)
    {
        double between = Math.Abs(smooth.Value.Value - straight.Value.Value) / (2 * Math.Sqrt(3));
        double placing = Math.Sqrt((smooth.PlacementSd * smooth.PlacementSd) + (between * between));
        double byScale = smooth.ScaleRelativeSd * smooth.Value.Value;
        return smooth with { Value = Estimate.Normal(smooth.Value.Value, Math.Sqrt((placing * placing) + (byScale * byScale)), Origin.Measured), PlacementSd = placing };
    }
}
