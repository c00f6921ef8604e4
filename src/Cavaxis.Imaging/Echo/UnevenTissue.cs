using Cavaxis.Anatomy.Sampling;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>Slow unevenness of how much tissue scatters: smooth noise over a lattice of 7 mm that is fixed in space, longer along z, as layers and fibres are.</summary>
internal sealed class UnevenTissue
{
    private const double CellMm = 7;
    private const double LongCellMm = 22;
    private const uint Mark = 0x71550e;
    private readonly int lowX;
    private readonly int lowY;
    private readonly int lowZ;
    private readonly int countY;
    private readonly int countZ;
    private readonly float[] corners;

    /// <summary>The unevenness of a box.</summary>
    /// <param name="seed">Seed.</param>
    /// <param name="sdDb">Standard deviation at the lattice's points, dB.</param>
    /// <param name="low">Least place, mm.</param>
    /// <param name="high">Greatest place, mm.</param>
    public UnevenTissue(ulong seed, double sdDb, Vector3D low, Vector3D high)
    {
        (lowX, lowY, lowZ) = ((int)Math.Floor(low.X / CellMm), (int)Math.Floor(low.Y / CellMm), (int)Math.Floor(low.Z / LongCellMm));
        int countX = (int)Math.Floor(high.X / CellMm) - lowX + 2;
        countY = (int)Math.Floor(high.Y / CellMm) - lowY + 2;
        countZ = (int)Math.Floor(high.Z / LongCellMm) - lowZ + 2;
        corners = new float[countX * countY * countZ];
        for (int i = 0; i < countX; i++)
        {
            for (int j = 0; j < countY; j++)
            {
                for (int k = 0; k < countZ; k++)
                {
                    corners[(((i * countY) + j) * countZ) + k] = Corner(seed, sdDb, lowX + i, lowY + j, lowZ + k);
                }
            }
        }
    }

    /// <summary>Factor on the scattered amplitude at a place of the box.</summary>
    /// <param name="p">The place.</param>
    public double At(Vector3D p)
    {
        double x = (p.X / CellMm) - lowX;
        double y = (p.Y / CellMm) - lowY;
        double z = (p.Z / LongCellMm) - lowZ;
        (int i, int j, int k) = ((int)x, (int)y, (int)z);
        (double u, double v, double w) = (Smooth(x - i), Smooth(y - j), Smooth(z - k));
        int at = (((i * countY) + j) * countZ) + k;
        int overX = countY * countZ;
        double low = ((1 - u) * Along(at, w)) + (u * Along(at + overX, w));
        double high = ((1 - u) * Along(at + countZ, w)) + (u * Along(at + overX + countZ, w));
        return low + (v * (high - low));
    }

    private double Along(int at, double w) => corners[at] + (w * (corners[at + 1] - corners[at]));

    private static float Corner(ulong seed, double sdDb, int i, int j, int k)
    {
        (uint w0, uint w1, uint w2, uint w3) = Philox.Bits((uint)i, (uint)j, (uint)k, Mark, seed);
        // Four even draws make nearly a normal one; √3 makes its deviation one.
        double normal = (((w0 + (double)w1 + w2 + w3) / 4294967296.0) - 2) * Math.Sqrt(3);
        return (float)Math.Pow(10, normal * sdDb / 20);
    }

    private static double Smooth(double t) => t * t * (3 - (2 * t));
}
