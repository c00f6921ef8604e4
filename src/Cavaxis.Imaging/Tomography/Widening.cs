namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// Where a tube opens into something wider. The areas beyond are fitted by a parabola of the length, which is what sections of an ellipsoid are
/// exactly, and followed back to the area of the tube. The sections at the rim itself, where the wall belongs partly to one and partly to the
/// other, are left out.
/// </summary>
/// <param name="AtMm">The place, mm.</param>
/// <param name="SdMm">Its error by the scatter about the parabola, as a standard deviation, mm.</param>
internal readonly record struct Widening(double AtMm, double SdMm)
{
    private const double RimRatio = 1.5;

    /// <summary>Fits it.</summary>
    /// <param name="points">Length, growing towards the wider part, and area, from about the place sought on.</param>
    /// <param name="tubeMm2">Area of the tube.</param>
    /// <param name="lowMm">The place lies from here, mm.</param>
    /// <param name="highMm">To here, mm.</param>
    /// <returns>The place, or null where the areas do not lead back to the tube.</returns>
    public static Widening? Fit(IEnumerable<(double AtMm, double AreaMm2)> points, double tubeMm2, double lowMm, double highMm)
    {
        (double X, double Y)[] used = [.. points.Where(p => p.AreaMm2 > RimRatio * tubeMm2).Select(p => (p.AtMm - lowMm, p.AreaMm2 - tubeMm2))];
        if (used.Length < 4 || Parabola(used) is not (double c, double b, double a))
        {
            return null;
        }

        // The rising branch of a parabola that bends down: its lower root.
        double inside = (b * b) - (4 * a * c);
        double root = Math.Abs(a) < 1e-9 ? -c / b : inside < 0 ? double.NaN : (-b + Math.Sqrt(inside)) / (2 * a);
        double slope = b + (2 * a * root);
        if (!(root >= 0 && root <= highMm - lowMm && slope > 0))
        {
            return null;
        }

        double scatter = Math.Sqrt(used.Sum(p => Square(p.Y - c - (b * p.X) - (a * p.X * p.X))) / Math.Max(1, used.Length - 3));
        return new Widening(lowMm + root, scatter / slope);
    }

    private static double Square(double x) => x * x;

    private static (double C, double B, double A)? Parabola((double X, double Y)[] points)
    {
        double[,] m = new double[3, 4];
        foreach ((double x, double y) in points)
        {
            double[] row = [1, x, x * x];
            for (int i = 0; i < 3; i++)
            {
                for (int j = 0; j < 3; j++)
                {
                    m[i, j] += row[i] * row[j];
                }

                m[i, 3] += row[i] * y;
            }
        }

        for (int i = 0; i < 3; i++)
        {
            if (Math.Abs(m[i, i]) < 1e-9)
            {
                return null;
            }

            for (int k = 0; k < 3; k++)
            {
                double factor = k == i ? 0 : m[k, i] / m[i, i];
                for (int j = i; j < 4; j++)
                {
                    m[k, j] -= factor * m[i, j];
                }
            }
        }

        return (m[0, 3] / m[0, 0], m[1, 3] / m[1, 1], m[2, 3] / m[2, 2]);
    }
}
