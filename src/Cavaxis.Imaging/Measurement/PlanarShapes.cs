using Cavaxis.Imaging.Calibration;

namespace Cavaxis.Imaging.Measurement;

/// <summary>Plane geometry in mm. Points are pairs that lie one after the other: x0, y0, x1, y1, …</summary>
internal static class PlanarShapes
{
    /// <summary>Length of the line through all points.</summary>
    public static double PathMm(ReadOnlySpan<double> mm)
    {
        double length = 0;
        for (int i = 2; i < mm.Length; i += 2)
        {
            length += Math.Sqrt(Square(mm[i] - mm[i - 2]) + Square(mm[i + 1] - mm[i - 1]));
        }

        return length;
    }

    /// <summary>Area inside the closed line through all points: half the sum of x(i) y(i+1) − x(i+1) y(i), without sign.</summary>
    public static double AreaMm2(ReadOnlySpan<double> mm)
    {
        double twice = 0;
        int n = mm.Length;
        for (int i = 0; i < n; i += 2)
        {
            int next = (i + 2) % n;

            // From the first point, so that outlines far from the origin lose nothing.
            twice += ((mm[i] - mm[0]) * (mm[next + 1] - mm[1])) - ((mm[next] - mm[0]) * (mm[i + 1] - mm[1]));
        }

        return Math.Abs(twice) / 2;
    }

    /// <summary>Angle at the second of three points, degrees, 0 to 180.</summary>
    public static double AngleDeg(ReadOnlySpan<double> mm)
    {
        double ax = mm[0] - mm[2];
        double ay = mm[1] - mm[3];
        double bx = mm[4] - mm[2];
        double by = mm[5] - mm[3];
        return Math.Atan2(Math.Abs((ax * by) - (ay * bx)), (ax * bx) + (ay * by)) * (180 / Math.PI);
    }

    /// <summary>True where the closed line through the points crosses itself.</summary>
    public static bool CrossesItself(IReadOnlyList<PixelPoint> points)
    {
        int n = points.Count;
        for (int i = 0; i < n; i++)
        {
            for (int j = i + 2; j < n; j++)
            {
                if ((j + 1) % n != i && Cross(points[i], points[i + 1], points[j], points[(j + 1) % n]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Cross(PixelPoint a, PixelPoint b, PixelPoint c, PixelPoint d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    private static int Side(PixelPoint a, PixelPoint b, PixelPoint p) => Math.Sign(((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X)));

    private static double Square(double x) => x * x;
}
