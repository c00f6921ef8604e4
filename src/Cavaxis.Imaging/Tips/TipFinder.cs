using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tips;

/// <summary>
/// Finds where the tip lies from what is visible. In each sampled anatomy the landmark is placed, the distance is drawn with its error, freed from the tilt of the plane, laid along the axis to the
/// feature, and the device is followed from there to its tip by the way it takes through the atrium. Model: docs/models/measurement.md.
/// </summary>
public static class TipFinder
{
    // Groups of Philox that neither the axes (below 64) nor the lumens (from 64) use.
    private const uint ErrorGroup = 512;
    private const uint CourseGroup = 513;

    private static readonly CavalLandmark[] Inside =
    [
        CavalLandmark.BrachiocephalicConfluence, CavalLandmark.Scaj, CavalLandmark.TricuspidCentre, CavalLandmark.Icaj, CavalLandmark.HepaticVein, CavalLandmark.RenalVein, CavalLandmark.IliacConfluence,
    ];

    /// <summary>Finds it.</summary>
    /// <param name="question">What is known.</param>
    /// <param name="samples">Sampled anatomies of this patient.</param>
    /// <param name="seed">Seed of the drawn errors; the same seed gives the same answer.</param>
    /// <returns>Where the tip lies.</returns>
    /// <exception cref="InputFaultException">The scale of the body is out of range.</exception>
    public static TipPlacement Find(TipQuestion question, AxisSamples samples, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(samples);
        return Find(question, [.. Enumerable.Range(0, samples.Count).Select(i => CavalAxis.OfSample(samples, i))], seed);
    }

    /// <summary>The same for given anatomies.</summary>
    internal static TipPlacement Find(TipQuestion question, IReadOnlyList<CavalAxis> axes, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(question);
        _ = Require.InRange(question.BodyScale, 0.2, 1, "bodyScale", "Height over 170 cm, at most 1.");
        int n = axes.Count;
        double[][] below = [.. Inside.Select(_ => new double[n])];
        double[] feature = new double[n];
        double[][] courses = [new double[n], new double[n], new double[n]];
        double[] inPlane = new double[n];
        double[] beyond = new double[n];
        int[] zones = new int[Enum.GetValues<AxisZone>().Length];
        for (int i = 0; i < n; i++)
        {
            CavalAxis axis = axes[i];
            Draw draw = new(question, axis, (uint)i, seed);
            double tip = draw.Tip(question.Course);
            feature[i] = draw.Feature - draw.Landmark;
            for (int l = 0; l < Inside.Length; l++)
            {
                // Against the landmark that was measured from: the edge that was seen, not the model's own.
                below[l][i] = tip - (Inside[l] == question.Seen.Landmark ? draw.Landmark : axis[Inside[l]]);
            }

            courses[0][i] = draw.Tip(DeviceCourse.Straight) - draw.Landmark;
            courses[1][i] = draw.Tip(DeviceCourse.AlongAxis) - draw.Landmark;
            courses[2][i] = draw.Tip(DeviceCourse.AlongWall) - draw.Landmark;
            inPlane[i] = draw.TipInPlane(question.Course) - draw.Landmark;
            beyond[i] = draw.Direction * (tip - draw.TipBySkin);
            zones[(int)ZoneOf(axis, tip)]++;
        }

        Estimate? skin = question.SkinDepthMm is null ? null : Of(beyond);
        return new TipPlacement(
            question,
            [.. Inside.Select((landmark, l) => new LandmarkDistance(landmark, Of(below[l])))],
            Of(feature),
            [.. zones.Select((count, z) => (Zone: (AxisZone)z, Count: count)).Where(static z => z.Count > 0).Select(z => new ZoneShare(z.Zone, WilsonShare.Of(z.Count, n)))],
            Of(courses[0]), Of(courses[1]), Of(courses[2]), Of(inPlane), skin, Remarks(question, skin));
    }

    /// <summary>The zone at a place of the axis.</summary>
    /// <param name="axis">The anatomy.</param>
    /// <param name="z">mm below the SCAJ.</param>
    /// <returns>The zone; a place on a border belongs to the lower one.</returns>
    public static AxisZone ZoneOf(CavalAxis axis, double z)
    {
        ArgumentNullException.ThrowIfNull(axis);
        double confluence = axis[CavalLandmark.BrachiocephalicConfluence];
        return z < confluence ? AxisZone.NeckVein
            : z < confluence / 2 ? AxisZone.UpperSvc
            : z < 0 ? AxisZone.LowerSvc
            : z < axis[CavalLandmark.TricuspidCentre] ? AxisZone.UpperAtrium
            : z < axis[CavalLandmark.Icaj] ? AxisZone.LowerAtrium
            : z < axis[CavalLandmark.HepaticVein] ? AxisZone.SuprahepaticIvc
            : z < axis[CavalLandmark.RenalVein] ? AxisZone.InfrahepaticIvc
            : z < axis[CavalLandmark.IliacConfluence] ? AxisZone.InfrarenalIvc
            : AxisZone.IliofemoralVein;
    }

    private static Estimate Of(double[] samples)
    {
        double[] sorted = [.. samples.Order()];
        return Estimate.FromSorted(sorted, Origin.Calculated);
    }

    private static ImmutableArray<string> Remarks(TipQuestion question, Estimate? skin)
    {
        List<string> remarks =
        [
            "The tip was not seen: it follows from what was seen and the dimensions of the device. A tip in a branch (hepatic vein, right ventricle, appendage) or bent over is not told by this.",
        ];
        if (question.Seen.Tilt is { Degrees: 0, SdDegrees: 0 })
        {
            remarks.Add("The line measured is taken to lie in the plane of the picture exactly; if it leans out of it, the true distance is longer.");
        }
        else
        {
            remarks.Add(string.Create(
                CultureInfo.InvariantCulture, $"What a picture shows of a leaning line is too short; a tilt of {question.Seen.Tilt.Degrees:F0} ± {question.Seen.Tilt.SdDegrees:F0} degrees is allowed for."));
        }

        if (question.Seen.Landmark is CavalLandmark.Scaj or CavalLandmark.Icaj && question.Seen.Edge == JunctionEdge.Unknown)
        {
            remarks.Add("Which edge was taken as the junction is not said; that alone spreads the result by about a centimetre.");
        }

        if (skin is not null && Math.Abs(skin.Value) > 2 * Math.Max(skin.Sd, 1))
        {
            remarks.Add(string.Create(
                CultureInfo.InvariantCulture, $"Depth at the skin and what was seen do not agree ({skin.Value:F0} mm apart): look for a loop, a slipped fixation, another landmark or another device."));
        }

        return [.. remarks];
    }

    /// <summary>One anatomy with one draw of all errors.</summary>
    private readonly struct Draw
    {
        private readonly TipQuestion question;
        private readonly AxisCurve curve;
        private readonly double fromTipMm;
        private readonly double featureInPlane;
        private readonly double uniform;

        public Draw(TipQuestion question, CavalAxis axis, uint index, ulong seed)
        {
            this.question = question;
            curve = new AxisCurve(axis);
            (double measuring, double edge) = Normals(index, ErrorGroup, seed, out double tilt, out double device);
            (uint word, _, uint third, uint fourth) = Philox.Bits(index, 0, CourseGroup, 0, seed);
            uniform = (word + 0.5) / 4294967296.0;
            SeenDistance seen = question.Seen;
            Landmark = axis[seen.Landmark] + EdgeBelowOwn(seen, question.BodyScale, edge);
            double measured = Math.Max(0, seen.MeasuredMm.Value + (seen.MeasuredMm.Sd * measuring));
            Feature = Place(measured * seen.Tilt.Stretch(tilt));
            featureInPlane = Place(measured);
            fromTipMm = question.Feature.FromTipMm + (question.Feature.SdMm * device);
            Direction = question.Entry is SkinSite.RightNeck or SkinSite.LeftNeck ? 1 : -1;
            double skin = axis[question.Entry switch
            {
                SkinSite.RightNeck => CavalLandmark.RightNeckSkin,
                SkinSite.LeftNeck => CavalLandmark.LeftNeckSkin,
                SkinSite.RightGroin => CavalLandmark.RightGroinSkin,
                _ => CavalLandmark.LeftGroinSkin,
            }];
            double depthError = Math.Sqrt(-2 * Math.Log((third + 0.5) / 4294967296.0)) * Math.Cos(2 * Math.PI * (fourth / 4294967296.0));
            TipBySkin = question.SkinDepthMm is Estimate depth ? skin + (Direction * (depth.Value + (depth.Sd * depthError))) : double.NaN;
        }

        /// <summary>The edge that was seen, mm below the SCAJ.</summary>
        public double Landmark { get; }

        /// <summary>The feature, mm below the SCAJ.</summary>
        public double Feature { get; }

        /// <summary>1 where the device points to the feet, −1 to the head.</summary>
        public double Direction { get; }

        /// <summary>The tip by the depth at the skin.</summary>
        public double TipBySkin { get; }

        public double Tip(DeviceCourse course) => curve.Along(Feature, Direction * fromTipMm, CourseLength.Ratio(curve, course, uniform));

        public double TipInPlane(DeviceCourse course) => curve.Along(featureInPlane, Direction * fromTipMm, CourseLength.Ratio(curve, course, uniform));

        private double Place(double mm) => question.Seen.Way == DistanceWay.Straight
            ? curve.AtStraight(Landmark, mm, question.Seen.TowardsFeet)
            : Landmark + (question.Seen.TowardsFeet ? mm : -mm);

        private static double EdgeBelowOwn(SeenDistance seen, double bodyScale, double normal)
        {
            EdgeDefinition? edge = seen.Landmark switch
            {
                CavalLandmark.Scaj => JunctionEdges.Superior(seen.Edge),
                CavalLandmark.Icaj => JunctionEdges.Inferior(seen.Edge),
                _ => null,
            };
            return edge is null ? 0 : bodyScale * (edge.BelowOwnEdgeMm + (edge.SdMm * normal));
        }

        private static (double First, double Second) Normals(uint index, uint group, ulong seed, out double third, out double fourth)
        {
            (uint w0, uint w1, uint w2, uint w3) = Philox.Bits(index, 0, group, 0, seed);
            double radius = Math.Sqrt(-2 * Math.Log((w0 + 0.5) / 4294967296.0));
            double other = Math.Sqrt(-2 * Math.Log((w2 + 0.5) / 4294967296.0));
            (double sin, double cos) = Math.SinCos(2 * Math.PI * (w1 / 4294967296.0));
            (double sin2, double cos2) = Math.SinCos(2 * Math.PI * (w3 / 4294967296.0));
            (third, fourth) = (other * cos2, other * sin2);
            return (radius * cos, radius * sin);
        }
    }
}
