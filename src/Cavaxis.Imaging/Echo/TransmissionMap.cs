namespace Cavaxis.Imaging.Echo;

/// <summary>
/// What of the pressure reaches each depth and comes back: the loss along the straight ways from all over the aperture and the slice, averaged
/// as amplitudes (a thin wire hides a part of the aperture, a cannula's wall all of it), squared for the two ways, times the gain with depth.
/// </summary>
internal sealed class TransmissionMap
{
    private const int MostAcross = 100;
    private const int Down = 160;
    private static readonly double[] Aside = [-0.4, -0.2, 0, 0.2, 0.4];
    private static readonly double[] Thick = [-0.8, 0, 0.8];
    private readonly double cell;
    private readonly int across;
    private readonly double acrossScale;
    private readonly double downScale;
    private readonly float[] through;

    /// <summary>The map of a scene in a plane.</summary>
    public TransmissionMap(BeamLayout layout, ScanPlane plane, SceneSpace space, double depthGainDbPerCmMHz)
    {
        Probe probe = layout.Probe;
        (double left, double right, double top, double bottom) = layout.Bounds();
        cell = Math.Max(0.3, probe.DepthMm / 350);
        double margin = probe.ApertureMm / 2;
        int columns = (int)((right - left + (2 * margin)) / cell) + 2;
        int rows = (int)((bottom - top) / cell) + 2;
        // Even on both sides of the middle, so that a probe turned round sees the mirror picture.
        double edge = -(columns - 1) * cell / 2;
        across = Math.Min(layout.Lines, MostAcross);
        (acrossScale, downScale) = ((across - 1.0) / (layout.Lines - 1), (Down - 1.0) / (layout.Samples - 1));
        double[] sum = new double[across * Down];
        float[] loss = new float[columns * rows];
        double gain = depthGainDbPerCmMHz * probe.FrequencyMHz / 10;
        foreach (double thick in Thick)
        {
            for (int j = 0; j < rows; j++)
            {
                double z = top + (j * cell);
                double e = thick * probe.SliceWidthMm(Math.Max(z, 1)) / 2;
                for (int i = 0; i < columns; i++)
                {
                    loss[(j * columns) + i] = (float)space.LossDbPerMm(
                        plane.Place(edge + (i * cell), z, e), probe.FrequencyMHz);
                }
            }

            Walk(layout, loss, columns, rows, edge, top, sum);
        }

        through = new float[sum.Length];
        for (int k = 0; k < sum.Length; k++)
        {
            double mean = sum[k] / (Aside.Length * Thick.Length);
            double depth = k % Down * probe.DepthMm / (Down - 1);
            through[k] = (float)(mean * mean * Math.Pow(10, 2 * gain * depth / 20));
        }
    }

    /// <summary>Two-way amplitude at a line and a sample, gain with depth included.</summary>
    public float At(double line, double sample)
    {
        double a = Math.Clamp(line * acrossScale, 0, across - 1.001);
        double d = Math.Clamp(sample * downScale, 0, Down - 1.001);
        int i = (int)a;
        int j = (int)d;
        float u = (float)(a - i);
        float v = (float)(d - j);
        int at = (i * Down) + j;
        float near = through[at] + (v * (through[at + 1] - through[at]));
        float far = through[at + Down] + (v * (through[at + Down + 1] - through[at + Down]));
        return near + (u * (far - near));
    }

    private void Walk(BeamLayout layout, float[] loss, int columns, int rows, double left, double top, double[] sum)
    {
        Probe probe = layout.Probe;
        for (int i = 0; i < across; i++)
        {
            double line = i / acrossScale;
            (double faceX, double faceZ) = layout.At(line, 0);
            (double sideX, double sideZ) = layout.At(line, 0, 1);
            (sideX, sideZ) = (sideX - faceX, sideZ - faceZ);
            for (int j = 0; j < Down; j++)
            {
                double depth = j * probe.DepthMm / (Down - 1);
                (double endX, double endZ) = layout.At(line, depth);
                double aperture = probe.ApertureAt(depth);
                foreach (double aside in Aside)
                {
                    double x = (faceX + (aside * aperture * sideX) - left) / cell;
                    double z = (faceZ + (aside * aperture * sideZ) - top) / cell;
                    double toX = (endX - left) / cell;
                    double toZ = (endZ - top) / cell;
                    double way = Math.Sqrt(((toX - x) * (toX - x)) + ((toZ - z) * (toZ - z))) * cell;
                    int steps = (int)(way / cell) + 1;
                    double stepX = (toX - x) / steps;
                    double stepZ = (toZ - z) / steps;
                    (x, z) = (x + (stepX / 2) + 0.5, z + (stepZ / 2) + 0.5);
                    float decibel = 0;
                    for (int s = 0; s < steps; s++)
                    {
                        int column = (int)x;
                        int row = (int)z;
                        if ((uint)column < (uint)columns && (uint)row < (uint)rows)
                        {
                            decibel += loss[(row * columns) + column];
                        }

                        x += stepX;
                        z += stepZ;
                    }

                    sum[(i * Down) + j] += Math.Exp(decibel * (way / steps) * (-Math.Log(10) / 20));
                }
            }
        }
    }
}
