using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>Finds the nearest point of a curve quickly: a grid of cells that know the sample nearest to their middle.</summary>
internal sealed class CurveGrid
{
    private const double CellMm = 4;
    private const double HalfDiagonalMm = 3.47;
    private readonly SpaceCurve curve;
    private readonly (Vector3D Normal, Vector3D Binormal, Vector3D Tangent)[] frames;
    private readonly Vector3D corner;
    private readonly int nx;
    private readonly int ny;
    private readonly int nz;
    private readonly short[] nearest;

    /// <summary>A grid about a curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="reachMm">Farthest distance that matters.</param>
    public CurveGrid(SpaceCurve curve, double reachMm)
    {
        this.curve = curve;
        frames = new (Vector3D, Vector3D, Vector3D)[curve.Count];
        Vector3D low = curve.Sample(0);
        Vector3D high = low;
        for (int i = 0; i < curve.Count; i++)
        {
            (Vector3D normal, Vector3D binormal) = curve.Frame(i * SpaceCurve.StepMm);
            frames[i] = (normal, binormal, curve.Tangent(i * SpaceCurve.StepMm));
            Vector3D p = curve.Sample(i);
            low = new Vector3D(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
            high = new Vector3D(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
        }

        double margin = reachMm + CellMm;
        corner = low - new Vector3D(margin, margin, margin);
        (nx, ny, nz) = (Cells(low.X, high.X, margin), Cells(low.Y, high.Y, margin), Cells(low.Z, high.Z, margin));
        nearest = new short[nx * ny * nz];
        Array.Fill(nearest, (short)-1);
        double[] least = new double[nearest.Length];
        Array.Fill(least, (reachMm + HalfDiagonalMm) * (reachMm + HalfDiagonalMm));
        int span = (int)Math.Ceiling((reachMm + HalfDiagonalMm) / CellMm);
        for (int i = 0; i < curve.Count; i++)
        {
            Mark(i, span, least);
        }
    }

    /// <summary>Where a point lies beside the curve; null where it is farther than the reach, or beyond an end.</summary>
    /// <param name="p">The point.</param>
    /// <returns>The place.</returns>
    public CurvePlace? Find(Vector3D p)
    {
        int i = (int)Math.Floor((p.X - corner.X) / CellMm);
        int j = (int)Math.Floor((p.Y - corner.Y) / CellMm);
        int k = (int)Math.Floor((p.Z - corner.Z) / CellMm);
        if (i < 0 || j < 0 || k < 0 || i >= nx || j >= ny || k >= nz)
        {
            return null;
        }

        int at = nearest[(((i * ny) + j) * nz) + k];
        if (at < 0)
        {
            return null;
        }

        double best = (p - curve.Sample(at)).SquaredLength;
        while (at + 1 < curve.Count && (p - curve.Sample(at + 1)).SquaredLength is double up && up < best)
        {
            (best, at) = (up, at + 1);
        }

        while (at > 0 && (p - curve.Sample(at - 1)).SquaredLength is double down && down < best)
        {
            (best, at) = (down, at - 1);
        }

        Vector3D from = p - curve.Sample(at);
        (Vector3D normal, Vector3D binormal, Vector3D tangent) = frames[at];
        double along = from.Dot(tangent);
        bool beyond = (at == 0 && along < -SpaceCurve.StepMm / 2) || (at == curve.Count - 1 && along > SpaceCurve.StepMm / 2);
        return beyond ? null : new CurvePlace((at * SpaceCurve.StepMm) + along, from.Dot(normal), from.Dot(binormal));
    }

    private static int Cells(double low, double high, double margin) => (int)Math.Ceiling((high - low + (2 * margin)) / CellMm) + 1;

    private void Mark(int sample, int span, double[] least)
    {
        Vector3D p = curve.Sample(sample);
        int ci = (int)((p.X - corner.X) / CellMm);
        int cj = (int)((p.Y - corner.Y) / CellMm);
        int ck = (int)((p.Z - corner.Z) / CellMm);
        for (int i = Math.Max(0, ci - span); i <= Math.Min(nx - 1, ci + span); i++)
        {
            for (int j = Math.Max(0, cj - span); j <= Math.Min(ny - 1, cj + span); j++)
            {
                for (int k = Math.Max(0, ck - span); k <= Math.Min(nz - 1, ck + span); k++)
                {
                    Vector3D middle = corner + (CellMm * new Vector3D(i + 0.5, j + 0.5, k + 0.5));
                    double distance = (middle - p).SquaredLength;
                    int cell = (((i * ny) + j) * nz) + k;
                    if (distance < least[cell])
                    {
                        least[cell] = distance;
                        nearest[cell] = (short)sample;
                    }
                }
            }
        }
    }
}
