using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>A line in space, straight from point to point, with lengths along it.</summary>
public sealed class SpaceCurve
{
    private readonly Vector3D[] points;
    private readonly double[] arcs;

    /// <summary>A line.</summary>
    /// <param name="points">Two or more places, mm; repeated ones are dropped.</param>
    /// <exception cref="InputFaultException">Fewer than two different places.</exception>
    public SpaceCurve(IEnumerable<Vector3D> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        List<Vector3D> kept = [];
        List<double> lengths = [];
        foreach (Vector3D point in points)
        {
            double step = kept.Count == 0 ? double.PositiveInfinity : (point - kept[^1]).Length;
            if (step > 1e-6)
            {
                lengths.Add(kept.Count == 0 ? 0 : lengths[^1] + step);
                kept.Add(point);
            }
        }

        if (kept.Count < 2)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "curve.points", kept.Count.ToString(CultureInfo.InvariantCulture), "2 or more places that lie apart", "Give a line with a length."));
        }

        (this.points, arcs) = ([.. kept], [.. lengths]);
    }

    /// <summary>Its points, mm.</summary>
    public IReadOnlyList<Vector3D> Points => points;

    /// <summary>Its length, mm.</summary>
    public double LengthMm => arcs[^1];

    /// <summary>The place at a length along it; before and beyond the ends it goes straight on.</summary>
    /// <param name="arcMm">Length from the first point, mm.</param>
    /// <returns>mm.</returns>
    public Vector3D At(double arcMm)
    {
        int i = Segment(arcMm);
        double share = (arcMm - arcs[i]) / (arcs[i + 1] - arcs[i]);
        return points[i] + (share * (points[i + 1] - points[i]));
    }

    /// <summary>The direction of the chord about a place.</summary>
    /// <param name="arcMm">Length from the first point, mm.</param>
    /// <param name="halfMm">Half of the chord, mm; cut at the ends.</param>
    /// <returns>Unit vector onwards.</returns>
    public Vector3D Direction(double arcMm, double halfMm)
    {
        double from = Math.Clamp(arcMm - halfMm, 0, LengthMm);
        double to = Math.Clamp(arcMm + halfMm, 0, LengthMm);
        return to - from > 1e-6 ? (At(to) - At(from)).Unit : (points[^1] - points[0]).Unit;
    }

    /// <summary>The length along it at which it is nearest to a place.</summary>
    /// <param name="place">mm.</param>
    /// <returns>Length from the first point and distance, mm.</returns>
    public (double ArcMm, double DistanceMm) Nearest(Vector3D place)
    {
        (double arc, double least) = (0, double.PositiveInfinity);
        for (int i = 0; i + 1 < points.Length; i++)
        {
            Vector3D way = points[i + 1] - points[i];
            double share = Math.Clamp((place - points[i]).Dot(way) / way.SquaredLength, 0, 1);
            double distance = (place - points[i] - (share * way)).Length;
            if (distance < least)
            {
                (arc, least) = (arcs[i] + (share * (arcs[i + 1] - arcs[i])), distance);
            }
        }

        return (arc, least);
    }

    /// <summary>The same line with points at even lengths; its ends stay.</summary>
    /// <param name="stepMm">About this far apart, mm.</param>
    /// <returns>The line.</returns>
    public SpaceCurve Resampled(double stepMm)
    {
        int pieces = Math.Max(2, (int)Math.Round(LengthMm / Math.Max(stepMm, 1e-3)));
        return new SpaceCurve(Enumerable.Range(0, pieces + 1).Select(i => At(i * LengthMm / pieces)));
    }

    /// <summary>
    /// The line after a Gaussian filter along its length. Beyond an end it is continued by its own point reflection, so that ends stay and
    /// straight lines stay as they are.
    /// </summary>
    /// <param name="sigmaMm">Width of the filter, mm.</param>
    /// <returns>The smoothed line, at the same number of even lengths.</returns>
    public SpaceCurve Smoothed(double sigmaMm)
    {
        SpaceCurve even = Resampled(LengthMm / Math.Max(2, points.Length - 1));
        int last = even.points.Length - 1;
        double step = even.LengthMm / last;
        int reach = Math.Min(last, (int)Math.Ceiling(3 * sigmaMm / step));
        Vector3D[] smooth = new Vector3D[last + 1];
        for (int i = 0; i <= last; i++)
        {
            Vector3D sum = Vector3D.Zero;
            double weights = 0;
            for (int d = -reach; d <= reach; d++)
            {
                double weight = Math.Exp(-0.5 * d * d * step * step / (sigmaMm * sigmaMm));
                sum += weight * even.Reflected(i + d);
                weights += weight;
            }

            smooth[i] = sum / weights;
        }

        return new SpaceCurve(smooth);
    }

    private Vector3D Reflected(int i)
    {
        int last = points.Length - 1;
        return i < 0 ? (2 * points[0]) - points[Math.Min(-i, last)]
            : i > last ? (2 * points[last]) - points[Math.Max(0, (2 * last) - i)]
            : points[i];
    }

    private int Segment(double arcMm)
    {
        int found = Array.BinarySearch(arcs, arcMm);
        return Math.Clamp(found >= 0 ? found : ~found - 1, 0, arcs.Length - 2);
    }
}
