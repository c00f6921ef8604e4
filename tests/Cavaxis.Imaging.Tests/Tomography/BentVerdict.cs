using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>A traced made-up chest against its truth: what was found less what is true; of angles the largest, and how far the line lies beside the middle at most.</summary>
internal sealed record BentVerdict(int N, BentKind Kind, string? Refusal, double SvcMm, double IvcMm, double SpanMm, double SvcDiameterMm, double IvcDiameterMm, double AngleDeg, double AsideMm, IReadOnlyList<TraceCautionKind> Cautions)
{
    /// <summary>Within the bars of issue 7: 2 mm, 0.7 mm, 2 degrees; and the line within 1.5 mm of the middle of the veins.</summary>
    public bool IsRight => Refusal is null && Times <= 1;

    /// <summary>The largest error in bars.</summary>
    public double Times => new[] { SvcMm / 2, IvcMm / 2, SpanMm / 2, SvcDiameterMm / 0.7, IvcDiameterMm / 0.7, AngleDeg / 2, AsideMm / 1.5 }.Max(Math.Abs);

    /// <summary>More than twice a bar.</summary>
    public bool IsFarOff => Times > 2;

    /// <summary>The person is told that a wall was lost or that the calibre steps.</summary>
    public bool IsNamed => Cautions.Any(static c => c is TraceCautionKind.CalibreStep or TraceCautionKind.OpenStretch);

    /// <summary>Traces one and measures it.</summary>
    public static BentVerdict Of(int n)
    {
        BentSetting set = BentSettings.Of(n);
        BentChest made = new(set);
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(made.UpperSeed, made.LowerSeed));
        if (trace.Axis is not TracedAxis axis || axis.Directions is not CavalDirections directions)
        {
            return new BentVerdict(n, set.Kind, trace.Failure?.Words ?? "no junctions: " + trace.Axis![CavalLandmark.Scaj].Reason, 0, 0, 0, 0, 0, 0, 0, []);
        }

        AxisLandmark superior = axis[CavalLandmark.Scaj];
        AxisLandmark inferior = axis[CavalLandmark.Icaj];
        Vector3D svc = BentChest.Direction(made.Svc, made.ScajLevel, 1);
        Vector3D ivc = BentChest.Direction(made.Ivc, made.IcajLevel, -1);
        double aside = axis.Sections.Where(s => s.ArcMm < superior.ArcMm - 4 || s.ArcMm > inferior.ArcMm + 4)
            .Max(s => Enumerable.Range(-60, 121).Min(d => ((s.ArcMm < superior.ArcMm ? made.Svc : made.Ivc).At(s.Centre.Z + (0.1 * d)) - s.Centre).Length));
        double[] angles =
        [
            directions.Svc.FrontalDeg - Frontal(svc), directions.Svc.SagittalDeg - Sagittal(svc), directions.Ivc.FrontalDeg - Frontal(ivc), directions.Ivc.SagittalDeg - Sagittal(ivc),
        ];
        return new BentVerdict(
            n,
            set.Kind,
            null,
            superior.ArcMm - 52,
            axis.Line.LengthMm - inferior.ArcMm - 62,
            (inferior.Place - superior.Place).Length - (made.Icaj - made.Scaj).Length,
            Diameter(axis, AxisDimension.SvcDiameter, 2 * set.SvcRadiusMm),
            Diameter(axis, AxisDimension.IvcDiameter, 2 * set.IvcRadiusMm),
            angles.Max(Math.Abs),
            aside,
            [.. trace.Cautions.Select(static c => c.Kind)]);
    }

    // The diameter that goes into the case.
    private static double Diameter(TracedAxis axis, AxisDimension dimension, double truth) =>
        AxisReadings.Of(axis).Where(r => r.Single == dimension).Select(r => r.Value - truth).DefaultIfEmpty(0).Single();

    private static double Frontal(Vector3D down) => Math.Atan2(-down.X, -down.Z) * 180 / Math.PI;

    private static double Sagittal(Vector3D down) => Math.Atan2(down.Y, -down.Z) * 180 / Math.PI;
}
