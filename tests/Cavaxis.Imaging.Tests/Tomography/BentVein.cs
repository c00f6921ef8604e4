using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>A vein whose middle swings about a leaning line, as a function of the level; flat or round across it.</summary>
internal sealed class BentVein(Vector3D mouth, double way, (double Right, double Back) lean, double swingMm, double phase, double radiusMm, double flat)
{
    private readonly double wide = radiusMm * Math.Sqrt(flat);
    private readonly double deep = radiusMm / Math.Sqrt(flat);

    /// <summary>The middle at a level.</summary>
    public Vector3D At(double z)
    {
        double down = way * (z - mouth.Z);
        double swing = Math.PI * Math.Max(0, down) / 55;
        return new Vector3D(
            mouth.X + (way * lean.Right * down) + (swingMm * (Math.Sin(swing + phase) - Math.Sin(phase))),
            mouth.Y - (way * lean.Back * down) + (0.7 * swingMm * (Math.Cos(swing - phase) - Math.Cos(phase))),
            z);
    }

    /// <summary>Towards the feet.</summary>
    public Vector3D Down(double z) => (At(z - 0.05) - At(z + 0.05)).Unit;

    /// <summary>A place on the wall.</summary>
    public Vector3D Wall(double z, double angle)
    {
        (Vector3D across, Vector3D upright) = Frame(z);
        return At(z) + (wide * Math.Cos(angle) * across) + (deep * Math.Sin(angle) * upright);
    }

    /// <summary>How far a place lies outside of the wall, about; where it lies across the vein, in radii; and its level on the vein.</summary>
    public (double OutsideMm, double Across, double Upright, double Level) From(Vector3D place)
    {
        double z = place.Z;
        for (int turn = 0; turn < 4; turn++)
        {
            Vector3D down = Down(z);
            z += (place - At(z)).Dot(down) * down.Z;
        }

        (Vector3D across, Vector3D upright) = Frame(z);
        Vector3D off = place - At(z);
        double x = off.Dot(across) / wide;
        double y = off.Dot(upright) / deep;
        double share = Math.Sqrt((x * x) + (y * y));
        double slope = Math.Sqrt((x * x / (wide * wide)) + (y * y / (deep * deep)));
        return (slope < 1e-9 ? -deep : share * (share - 1) / slope, x, y, z);
    }

    /// <summary>Length of the middle between two levels, mm.</summary>
    public double Length(double from, double to)
    {
        double sum = 0;
        for (int n = 0; n < 400; n++)
        {
            sum += (At(from + ((n + 1) * (to - from) / 400)) - At(from + (n * (to - from) / 400))).Length;
        }

        return sum;
    }

    /// <summary>The level so many millimetres along the middle from another.</summary>
    public double Level(double from, double alongMm, double towards)
    {
        double z = from;
        for (double gone = 0; gone < alongMm; gone += 0.05)
        {
            z += towards * 0.05 * Math.Abs(Down(z).Z);
        }

        return z;
    }

    private (Vector3D Across, Vector3D Upright) Frame(double z)
    {
        Vector3D down = Down(z);
        Vector3D across = (new Vector3D(1, 0, 0) - (down.X * down)).Unit;
        return (across, down.Cross(across));
    }
}
