using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>
/// A smooth curve through given points (Catmull–Rom), resampled every <see cref="StepMm"/> along itself and carried on straight beyond
/// its ends. Its frame does not twist (rotation from sample to sample by the least turn).
/// </summary>
public sealed class SpaceCurve
{
    /// <summary>Way from sample to sample, mm.</summary>
    public const double StepMm = 1;

    /// <summary>Longest curve, mm.</summary>
    public const double LongestMm = 2000;

    private const int Pieces = 64;
    private readonly Vector3D[] points;
    private readonly Vector3D[] tangents;
    private readonly Vector3D[] normals;

    /// <summary>A curve through points.</summary>
    /// <param name="through">At least two points, mm, no two neighbours the same.</param>
    /// <exception cref="InputFaultException">Too few points, two in one place, or a curve that is too long.</exception>
    public SpaceCurve(IReadOnlyList<Vector3D> through)
    {
        ArgumentNullException.ThrowIfNull(through);
        const string Remedy = "Give the points of the curve in their order, mm.";
        _ = Require.InRange(through.Count, 2, 1000, "curve.points", Remedy);
        for (int i = 0; i + 1 < through.Count; i++)
        {
            _ = Require.InRange((through[i + 1] - through[i]).Length, 0.1, LongestMm, "curve.pointDistanceMm", Remedy);
        }

        (points, tangents, normals) = Framed(Resampled(Dense(through)));
        LengthMm = (points.Length - 1) * StepMm;
    }

    private SpaceCurve(Vector3D[] samples)
    {
        (points, tangents, normals) = Framed(samples);
        LengthMm = (points.Length - 1) * StepMm;
    }

    /// <summary>Length, mm; a whole number of steps.</summary>
    public double LengthMm { get; }

    /// <summary>Number of samples.</summary>
    internal int Count => points.Length;

    /// <summary>The place at a length along the curve.</summary>
    /// <param name="arcMm">Way from the first point, mm; may lie beyond the ends.</param>
    public Vector3D At(double arcMm)
    {
        (int i, double part) = Cell(arcMm);
        return points[i] + (part * (points[i + 1] - points[i]));
    }

    /// <summary>The way along the curve at a length.</summary>
    /// <param name="arcMm">Way from the first point, mm.</param>
    public Vector3D Tangent(double arcMm) => Blend(tangents, arcMm).Unit;

    /// <summary>The two directions square to the curve.</summary>
    /// <param name="arcMm">Way from the first point, mm.</param>
    public (Vector3D Normal, Vector3D Binormal) Frame(double arcMm)
    {
        Vector3D tangent = Tangent(arcMm);
        Vector3D normal = Blend(normals, arcMm);
        normal = (normal - (normal.Dot(tangent) * tangent)).Unit;
        return (normal, tangent.Cross(normal));
    }

    /// <summary>A curve from samples that stand a step apart already.</summary>
    internal static SpaceCurve Sampled(IReadOnlyList<Vector3D> samples) => new([.. samples]);

    /// <summary>Sample of a number.</summary>
    internal Vector3D Sample(int i) => points[i];

    private Vector3D Blend(Vector3D[] of, double arcMm)
    {
        (int i, double part) = Cell(Math.Clamp(arcMm, 0, LengthMm));
        return ((1 - part) * of[i]) + (part * of[i + 1]);
    }

    private (int I, double Part) Cell(double arcMm)
    {
        int i = Math.Clamp((int)Math.Floor(arcMm / StepMm), 0, points.Length - 2);
        return (i, (arcMm / StepMm) - i);
    }

    private static (Vector3D[] Points, Vector3D[] Tangents, Vector3D[] Normals) Framed(Vector3D[] points)
    {
        Vector3D[] tangents = new Vector3D[points.Length];
        Vector3D[] normals = new Vector3D[points.Length];
        for (int i = 0; i < points.Length; i++)
        {
            tangents[i] = (points[Math.Min(i + 1, points.Length - 1)] - points[Math.Max(i - 1, 0)]).Unit;
            Vector3D seed = i > 0 ? normals[i - 1] : Math.Abs(tangents[0].X) < 0.9 ? new Vector3D(1, 0, 0) : new Vector3D(0, 1, 0);
            normals[i] = (seed - (seed.Dot(tangents[i]) * tangents[i])).Unit;
        }

        return (points, tangents, normals);
    }

    private static List<Vector3D> Dense(IReadOnlyList<Vector3D> through)
    {
        List<Vector3D> dense = [through[0]];
        for (int i = 0; i + 1 < through.Count; i++)
        {
            Vector3D a = i > 0 ? through[i - 1] : through[i] - (through[i + 1] - through[i]);
            Vector3D d = i + 2 < through.Count ? through[i + 2] : through[i + 1] + (through[i + 1] - through[i]);
            for (int k = 1; k <= Pieces; k++)
            {
                double t = (double)k / Pieces;
                dense.Add(0.5 * ((2 * through[i]) + (t * (through[i + 1] - a))
                    + (t * t * ((2 * a) - (5 * through[i]) + (4 * through[i + 1]) - d))
                    + (t * t * t * ((3 * through[i]) - a - (3 * through[i + 1]) + d))));
            }
        }

        return dense;
    }

    private static Vector3D[] Resampled(List<Vector3D> dense)
    {
        List<Vector3D> kept = [dense[0]];
        double next = StepMm;
        double gone = 0;
        for (int i = 0; i + 1 < dense.Count; i++)
        {
            double piece = (dense[i + 1] - dense[i]).Length;
            while (next <= gone + piece + 1e-9)
            {
                kept.Add(dense[i] + ((next - gone) / piece * (dense[i + 1] - dense[i])));
                next += StepMm;
            }

            gone += piece;
        }

        _ = Require.InRange(gone, StepMm, LongestMm, "curve.lengthMm", "Give a curve of a length that a patient or a bath has room for.");
        return [.. kept];
    }
}
