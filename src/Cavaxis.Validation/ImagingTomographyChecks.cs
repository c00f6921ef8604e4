using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Tomography against closed forms: straight and broken ways, arcs, ellipses, and a curved tube in a scan made for it.</summary>
public sealed class ImagingTomographyChecks : IReferenceChecks
{
    private const string Room = "Imaging";

    /// <summary>Radius of the curve of the tube, mm.</summary>
    private const double BendMm = 70;

    private const double TubeMm = 8;
    private static readonly Source Straight = new("straight line between two places", Certainty.ClosedForm);
    private static readonly Source Snell = new("least of the cost over the place of crossing (Fermat), searched in one dimension", Certainty.ClosedForm);
    private static readonly Source Torus = new("a tube bent to a part of a torus: length R times angle, radius of the tube", Certainty.ClosedForm);
    private static readonly Source Ellipse = new("area of an ellipse, pi a b", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        TravelCost even = new(Vector3D.Zero, 2, 31, 31, 41, Enumerable.Repeat(1f, 31 * 31 * 41).ToArray());
        Vector3D from = new(6, 9, 7);
        Vector3D to = new(51, 44, 71);
        (SpaceCurve way, double cost) = MinimalPath.Between(even, from, to);
        yield return Row("cheapest way where all costs the same: its length", Straight, (to - from).Length, way.LengthMm, "mm", 0.01, "Grid of 2 mm.");
        yield return Row("the same: its cost", Straight, (to - from).Length, cost, "1", 0.03, "Fast marching on a grid of 2 mm, up to the middle of the last cube.");
        yield return Broken();
        double[] radii = [.. Enumerable.Range(0, 48).Select(static n => 13 * 8 / Math.Sqrt(Square(8 * Math.Cos(Math.PI * n / 24)) + Square(13 * Math.Sin(Math.PI * n / 24))))];
        yield return Row("area of an ellipse by 48 rays", Ellipse, Math.PI * 13 * 8, new LumenSection(0, Vector3D.Zero, new(1, 0, 0), new(0, 1, 0), radii, 0, 0, 0).AreaMm2, "mm2", 1e-4);
        AxisTrace trace = AxisTracer.Trace(BentTube(), new TraceRequest([Middle(-0.65), Middle(0.65)]));
        yield return Row("centreline of a bent tube in a scan: its length", Torus, 1.3 * BendMm, trace.Axis?.Line.LengthMm ?? double.NaN, "mm", 0.02);
        yield return Row("the same: its diameter", Torus, 2 * TubeMm, trace.Axis?.MeanDiameterMm(5, 85) ?? double.NaN, "mm", 0.02, "Voxels of 1 mm with the share of the tube in each.");
        double aside = trace.Axis?.Sections.Where(static s => s.ArcMm is > 4 and < 87).Max(static s => Math.Abs(s.Centroid.Length - BendMm)) ?? double.NaN;
        yield return new ValidationRow(Room, "Tomography: the same: farthest that the middle of a section lies from the middle of the tube", Torus, 0, aside, "mm", Tolerance.Absolute, 0.4);
        yield return new ValidationRow(
            Room, "Tomography: the same: junctions proposed in a tube that does not widen", Torus, 0, trace.Axis?.Landmarks.Count(static l => l.Landmark is CavalLandmark.Scaj or CavalLandmark.Icaj && l.IsThere) ?? double.NaN, "1", Tolerance.Absolute, 0);
    }

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, double bound, string note = "") =>
        new(Room, $"Tomography: {check}", source, expected, got, unit, Tolerance.Relative, bound, note);

    private static ValidationRow Broken()
    {
        float[] perMm = [.. Enumerable.Range(0, 81 * 81 * 5).Select(static n => n % 81 < 40 ? 1f : 2f)];
        SpaceCurve way = MinimalPath.Between(new TravelCost(Vector3D.Zero, 1, 81, 81, 5, perMm), new(10, 10, 2), new(70, 60, 2)).Way;
        double crossing = Enumerable.Range(0, 5001).Select(static n => 10 + (n / 100.0))
            .MinBy(static y => Math.Sqrt(Square(29.5) + Square(y - 10)) + (2 * Math.Sqrt(Square(30.5) + Square(60 - y))));
        double got = way.Points.MinBy(static p => Math.Abs(p.X - 39.5)).Y;
        return new ValidationRow(Room, "Tomography: cheapest way into ground of twice the cost: where it crosses", Snell, crossing, got, "mm", Tolerance.Absolute, 1.5, "Grid of 1 mm; the border lies between two cubes.");
    }

    private static Vector3D Middle(double angle) => new(BendMm * Math.Cos(angle), 0, BendMm * Math.Sin(angle));

    private static ScanVolume BentTube()
    {
        const int Wide = 64;
        const int Deep = 48;
        const int Tall = 120;
        short[] values = new short[Wide * Deep * Tall];
        for (int n = 0; n < values.Length; n++)
        {
            Vector3D at = new((n % Wide) + 30, (n / Wide % Deep) - 24, (n / (Wide * Deep)) - 60);
            double ring = Math.Sqrt(Square(at.X) + Square(at.Z)) - BendMm;
            double share = Math.Clamp(0.5 + TubeMm - Math.Sqrt(Square(ring) + Square(at.Y)), 0, 1);
            values[n] = (short)Math.Round(40 + (200 * share));
        }

        return new ScanVolume(Wide, Deep, Tall, values, new(30, -24, -60), new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));
    }

    private static double Square(double x) => x * x;
}
