namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// Where a tube opens into something wider: areas along it are fitted by a straight line that bends up at one place (least squares over the
/// three coefficients for every place tried). Along an ellipsoid the area grows in proportion to the length from its pole to first order, which is that bend.
/// </summary>
/// <param name="AtMm">The place of the bend, mm.</param>
/// <param name="SdMm">Its error as a standard deviation, mm.</param>
internal readonly record struct Widening(double AtMm, double SdMm)
{
    private const double TryMm = 0.25;

    /// <summary>Fits it.</summary>
    /// <param name="points">Length, growing towards the wider part, and area.</param>
    /// <param name="lowMm">The bend lies from here, mm.</param>
    /// <param name="highMm">To here, mm.</param>
    /// <returns>The place, or null where nothing widens.</returns>
    public static Widening? Fit(IReadOnlyList<(double AtMm, double AreaMm2)> points, double lowMm, double highMm)
    {
        List<(double At, double Sum)> tried = [];
        for (double at = lowMm; at <= highMm; at += TryMm)
        {
            if (Misfit(points, at) is double sum)
            {
                tried.Add((at, sum));
            }
        }

        if (tried.Count < 3)
        {
            return null;
        }

        (double best, double least) = tried.MinBy(static t => t.Sum);
        double allowed = least * (1 + (1 / Math.Max(1.0, points.Count - 4)));
        double[] within = [.. tried.Where(t => t.Sum <= allowed).Select(static t => t.At)];
        return new Widening(best, Math.Max(TryMm, (within[^1] - within[0]) / 2));
    }

    private static double? Misfit(IReadOnlyList<(double AtMm, double AreaMm2)> points, double at)
    {
        // Normal equations of area = a + b (x − at) + c max(0, x − at).
        double[,] m = new double[3, 4];
        foreach ((double x, double area) in points)
        {
            double[] row = [1, x - at, Math.Max(0, x - at)];
            for (int i = 0; i < 3; i++)
            {
                for (int j = 0; j < 3; j++)
                {
                    m[i, j] += row[i] * row[j];
                }

                m[i, 3] += row[i] * area;
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

        (double a, double b, double c) = (m[0, 3] / m[0, 0], m[1, 3] / m[1, 1], m[2, 3] / m[2, 2]);
        if (!(c > 0))
        {
            return null;
        }

        return points.Sum(p =>
        {
            double off = p.AreaMm2 - a - (b * (p.AtMm - at)) - (c * Math.Max(0, p.AtMm - at));
            return off * off;
        });
    }
}
