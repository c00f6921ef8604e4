using Cavaxis.Anatomy.Sampling;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>Slow unevenness of how much tissue scatters: smooth noise over a lattice of 7 mm, longer along z, as layers and fibres are.</summary>
/// <param name="seed">Seed.</param>
/// <param name="sdDb">Standard deviation at the lattice's points, dB.</param>
internal sealed class UnevenTissue(ulong seed, double sdDb)
{
    private const double CellMm = 7;
    private const double LongCellMm = 22;
    private const uint Mark = 0x71550e;
    private readonly Dictionary<(int I, int J, int K), float> known = [];
    private readonly float[] corners = new float[8];
    private (int I, int J, int K) last = (int.MinValue, 0, 0);

    /// <summary>Factor on the scattered amplitude.</summary>
    /// <param name="p">The place.</param>
    public double At(Vector3D p)
    {
        if (sdDb == 0)
        {
            return 1;
        }

        double x = p.X / CellMm;
        double y = p.Y / CellMm;
        double z = p.Z / LongCellMm;
        int i = (int)Math.Floor(x);
        int j = (int)Math.Floor(y);
        int k = (int)Math.Floor(z);
        if ((i, j, k) != last)
        {
            last = (i, j, k);
            for (int c = 0; c < 8; c++)
            {
                corners[c] = Corner(i + (c & 1), j + ((c >> 1) & 1), k + (c >> 2));
            }
        }

        (double u, double v, double w) = (Smooth(x - i), Smooth(y - j), Smooth(z - k));
        double low = Plane(0, u, v);
        double high = Plane(4, u, v);
        return Math.Exp((low + (w * (high - low))) * sdDb * (Math.Log(10) / 20));
    }

    private double Plane(int first, double u, double v)
    {
        double near = corners[first] + (u * (corners[first + 1] - corners[first]));
        double far = corners[first + 2] + (u * (corners[first + 3] - corners[first + 2]));
        return near + (v * (far - near));
    }

    private float Corner(int i, int j, int k)
    {
        if (!known.TryGetValue((i, j, k), out float value))
        {
            (uint w0, uint w1, uint w2, uint w3) = Philox.Bits((uint)i, (uint)j, (uint)k, Mark, seed);
            // Four even draws make nearly a normal one; √3 makes its deviation one.
            value = (float)((((w0 + (double)w1 + w2 + w3) / 4294967296.0) - 2) * Math.Sqrt(3));
            known[(i, j, k)] = value;
        }

        return value;
    }

    private static double Smooth(double t) => t * t * (3 - (2 * t));
}
