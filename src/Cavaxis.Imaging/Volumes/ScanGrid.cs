using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Volumes;

/// <summary>
/// Part of a scan on even cubes along the patient's own axes, whatever way its slices lie: what a path is looked for in. Each cube holds the
/// mean of eight readings in it.
/// </summary>
internal sealed class ScanGrid
{
    private readonly float[] values;

    private ScanGrid(Vector3D origin, double stepMm, int nx, int ny, int nz, float[] values) =>
        (Origin, StepMm, CountX, CountY, CountZ, this.values) = (origin, stepMm, nx, ny, nz, values);

    /// <summary>Middle of the first cube, mm.</summary>
    public Vector3D Origin { get; }

    /// <summary>Edge of a cube, mm.</summary>
    public double StepMm { get; }

    /// <summary>Cubes from right to left.</summary>
    public int CountX { get; }

    /// <summary>Cubes from front to back.</summary>
    public int CountY { get; }

    /// <summary>Cubes from the feet to the head.</summary>
    public int CountZ { get; }

    /// <summary>HU, x fastest, then y, then z.</summary>
    public ReadOnlySpan<float> Values => values;

    /// <summary>Reads a box of a scan.</summary>
    /// <param name="sampler">The scan.</param>
    /// <param name="low">Corner to the right, front and feet, mm.</param>
    /// <param name="high">Corner to the left, back and head, mm.</param>
    /// <param name="stepMm">Edge of a cube, mm.</param>
    /// <returns>The grid.</returns>
    public static ScanGrid Of(ScanSampler sampler, Vector3D low, Vector3D high, double stepMm)
    {
        int nx = 1 + Math.Max(2, (int)Math.Round((high.X - low.X) / stepMm));
        int ny = 1 + Math.Max(2, (int)Math.Round((high.Y - low.Y) / stepMm));
        int nz = 1 + Math.Max(2, (int)Math.Round((high.Z - low.Z) / stepMm));
        float[] values = new float[nx * ny * nz];
        double quarter = stepMm / 4;
        _ = Parallel.For(0, nz, k =>
        {
            for (int j = 0; j < ny; j++)
            {
                for (int i = 0; i < nx; i++)
                {
                    Vector3D middle = low + new Vector3D(i * stepMm, j * stepMm, k * stepMm);
                    double sum = 0;
                    for (int corner = 0; corner < 8; corner++)
                    {
                        sum += sampler.At(middle + new Vector3D(
                            (corner & 1) == 0 ? -quarter : quarter, (corner & 2) == 0 ? -quarter : quarter, (corner & 4) == 0 ? -quarter : quarter));
                    }

                    values[(((k * ny) + j) * nx) + i] = (float)(sum / 8);
                }
            }
        });
        return new ScanGrid(low, stepMm, nx, ny, nz, values);
    }

    /// <summary>The same grid after a binomial filter (1, 2, 1)/4 along each axis, as often as told.</summary>
    /// <param name="times">How often.</param>
    /// <returns>The smoothed grid.</returns>
    public ScanGrid Smoothed(int times)
    {
        float[] now = values;
        for (int time = 0; time < times; time++)
        {
            now = Along(Along(Along(now, CountX, 1), CountY, CountX), CountZ, CountX * CountY);
        }

        return new ScanGrid(Origin, StepMm, CountX, CountY, CountZ, now);
    }

    private static float[] Along(float[] from, int count, int stride)
    {
        float[] to = new float[from.Length];
        int block = count * stride;
        _ = Parallel.For(0, from.Length / block, b =>
        {
            int start = b * block;
            for (int n = 0; n < block; n++)
            {
                int at = start + n;
                int before = n < stride ? at : at - stride;
                int after = n >= block - stride ? at : at + stride;
                to[at] = 0.25f * (from[before] + (2 * from[at]) + from[after]);
            }
        });
        return to;
    }
}
