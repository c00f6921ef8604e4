using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tips;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Lengths, areas and angles measured on images, and the tip found from what is visible, against geometry and published definitions.</summary>
public sealed class ImagingMeasurementChecks : IReferenceChecks
{
    private const string Room = "Imaging";
    private static readonly FrameIdentity Frame = new(new string('0', 64), 1);
    private static readonly Source Geometry = new("plane geometry", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Shapes(), .. Breath(), .. Regions(), .. Tips()];

    private static IEnumerable<ValidationRow> Shapes()
    {
        FrameRuler ruler = Ruler(0.02, 0.02);
        double area = Math.PI * 9;
        yield return Row("area of a circle of 3 cm through 12 points", Geometry, area, ruler.Area(Ellipse(12, 150, 150, 2 * Math.PI)).Value.Value, "cm2", Tolerance.Relative, 0.006);
        (double _, double e) = EllipticIntegral.Complete(Math.Sqrt(1 - (100.0 * 100 / (180 * 180))));
        yield return Row(
            "length of half an ellipse of 36 by 20 mm half axes through 13 points", new Source("complete elliptic integral of the second kind, Abramowitz and Stegun 17.3", Certainty.ClosedForm),
            2 * 36 * e, ruler.Course([.. Ellipse(24, 180, 100, 2 * Math.PI)[..13]]).Value.Value, "mm", Tolerance.Relative, 0.005);
        yield return Row(
            "distance with pixels of 0.3 by 0.2 mm, 100 columns and 200 rows apart", Geometry, 50, Ruler(0.03, 0.02).Distance(new(100, 100), new(200, 300)).Value.Value, "mm", Tolerance.Absolute, 1e-9);
        yield return Row(
            "angle of 45 degrees in mm on pixels of 0.2 by 0.4 mm", Geometry, 45, Ruler(0.02, 0.04).Angle(new(200, 100), new(100, 100), new(200, 150)).Value.Value, "deg", Tolerance.Absolute, 1e-9);
    }

    private static IEnumerable<ValidationRow> Breath()
    {
        Source table = new("table of factors for control charts, d2 (ASTM)", Certainty.Seen);
        foreach ((int n, double d2) in new[] { (2, 1.128), (5, 2.326), (10, 3.078), (25, 3.931) })
        {
            yield return Row(FormattableString.Invariant($"range by chance of {n} equal diameters, in standard deviations"), table, d2, RangeOfNormals.Expected(n), "1", Tolerance.Absolute, 6e-4);
        }

        BreathVariation breath = BreathReading.Of([Diameter(100), Diameter(60)], 6);
        yield return Row("collapsibility of 20 to 12 mm: (max - min)/max", BreathVariation.CollapsibilityDefinition, 40, breath.CollapsibilityPercent.Value, "%", Tolerance.Absolute, 1e-9);
        yield return Row("distensibility of 20 to 12 mm: (max - min)/min", BreathVariation.DistensibilityDefinition, 66.6667, breath.DistensibilityPercent.Value, "%", Tolerance.Absolute, 1e-3);
        yield return Row("variation of 20 to 12 mm: (max - min)/mean", BreathVariation.VariationDefinition, 50, breath.VariationPercent.Value, "%", Tolerance.Absolute, 1e-9);
    }

    private static IEnumerable<ValidationRow> Regions()
    {
        // An open file of a shrunk image (reference/imaging): its region was written for 640 by 480.
        Source file = new("an open test file whose image was shrunk from 640 by 480 to 320 by 240: true spacing about 0.102 cm a pixel", Certainty.Seen);
        FrameCalibration shrunk = RegionJudge.Judge(320, 240, [Tissue(84, 31, 595, 414, 0.05105)]);
        double suggested = shrunk.Regions[0].SuggestedShrink ?? double.NaN;
        yield return Row("spacing that a region larger than its image is said to mean", file, 0.102, 0.05105 * suggested, "cm", Tolerance.Absolute, 0.001);
        Source standard = new("DICOM PS3.3 C.8.5.5.1: the end of a region is its last pixel, counted from 0", Certainty.Seen);
        yield return Row("last column of a region said to end at 799 on 800 columns", standard, 799, LastColumn(799), "px", Tolerance.Absolute, 0);
        yield return Row("last column of a region said to end at 800 on 800 columns, cut", standard, 799, LastColumn(800), "px", Tolerance.Absolute, 0);
    }

    private static IEnumerable<ValidationRow> Tips()
    {
        // The worked check of the reference on anatomy: tip 40 mm below the ICAJ, span 60, port 95 above the tip: port 5 below the SCAJ.
        Source worked = new("worked check on a bicaval dual-lumen cannula: span 60, tip 40 below the ICAJ, port 95 above the tip, port 5 below the SCAJ", Certainty.Derived);
        SeenFeature port = SeenFeature.ReturnPort(DeviceCatalogue.BuiltIn.FindCannula("bicaval-27fr-29cm")!);
        AxisDistribution belief = PopulationModel.For(new BodyHabitus(45, Sex.Male, 175, 80)).Given(
        [
            AxisMeasurement.Of(AxisDimension.AtrialSpan, 60, 0.1, JunctionEdge.AppendageBorder, JunctionEdge.EustachianRim),
            AxisMeasurement.Of(AxisDimension.CavalBendFrontal, 0, 0.1), AxisMeasurement.Of(AxisDimension.CavalBendSagittal, 0, 0.1), AxisMeasurement.Of(AxisDimension.MouthOffset, 0, 0.1),
        ]);
        AxisSamples samples = AxisSampler.Draw(belief, 400, 1);
        TipPlacement tip = TipFinder.Find(new TipQuestion(port, Seen(5 + 95 - port.FromTipMm, PlaneTilt.InPlane), SkinSite.RightNeck, DeviceCourse.AlongAxis), samples, 1);
        double below = tip.FromLandmarks.Single(static d => d.Landmark == CavalLandmark.Icaj).BelowMm.Value;
        yield return Row("tip below the ICAJ from a return port seen below the SCAJ", worked, 40, below, "mm", Tolerance.Absolute, 0.5);
        TipPlacement leaning = TipFinder.Find(new TipQuestion(SeenFeature.Tip, Seen(40, new PlaneTilt(30, 0)), SkinSite.RightNeck, DeviceCourse.AlongAxis), samples, 1);
        yield return Row(
            "true distance of 40 mm seen on a plane that leans by 30 degrees: 40/cos 30", Geometry, 46.188, leaning.FromSeenLandmark.BelowMm.Value, "mm", Tolerance.Absolute, 0.001);
        yield return Row(
            "arc over chord for a rise of 0.23 of the chord, first term of the series", Geometry, ExactArc(0.23), CourseLength.ArcOverChord(0.23), "1", Tolerance.Relative, 0.02,
            "Against the exact arc of a circle.");
    }

    // Arc over chord: radius r = (1/4 + h²)/(2h) for chord 1 and rise h; half angle asin(1/(2r)).
    private static double ExactArc(double rise)
    {
        double radius = (0.25 + (rise * rise)) / (2 * rise);
        return 2 * radius * Math.Asin(1 / (2 * radius));
    }

    private static SeenDistance Seen(double mm, PlaneTilt tilt) => new(
        CavalLandmark.Scaj, true, Estimate.Normal(mm, 0, Origin.Measured), DistanceWay.Straight, tilt, JunctionEdge.AppendageBorder);

    private static double LastColumn(int stated) => RegionJudge.Judge(800, 600, [Tissue(0, 0, stated, 599, 0.02)]).Regions[0].Usable.Right;

    private static CalibratedRegion Tissue(int left, int top, int right, int bottom, double stepX, double? stepY = null) => new(
        RegionFormat.TwoDimensional, RegionContent.Tissue, left, top, right, bottom, RegionUnit.Centimetre, RegionUnit.Centimetre, stepX, stepY ?? stepX);

    private static FrameRuler Ruler(double stepX, double stepY) => new(Frame, RegionJudge.Judge(800, 600, [Tissue(0, 0, 799, 599, stepX, stepY)]));

    private static ImageMeasurement Diameter(double pixels) => Ruler(0.02, 0.02).Distance(new(100, 100), new(100 + pixels, 100));

    private static PixelPoint[] Ellipse(int count, double a, double b, double whole) =>
        [.. Enumerable.Range(0, count).Select(i => new PixelPoint(400 + (a * Math.Cos(whole * i / count)), 300 + (b * Math.Sin(whole * i / count))))];

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new(Room, $"Measurement: {check}", source, expected, got, unit, tolerance, bound, note);
}
