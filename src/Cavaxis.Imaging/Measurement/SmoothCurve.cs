namespace Cavaxis.Imaging.Measurement;

/// <summary>
/// The smooth curve through points: centripetal Catmull–Rom (Barry and Goldman 1988; Yuksel, Schaefer and Keyser 2011), which has neither loops nor cusps within a piece.
/// Ends of an open curve go on as the mirror image of the last piece. Points are pairs that lie one after the other.
/// </summary>
internal static class SmoothCurve
{
    /// <summary>Points along the curve, close enough to take it for the line through them.</summary>
    /// <param name="points">At least two points, no two neighbours alike.</param>
    /// <param name="closed">True where the last point goes on to the first; then at least three.</param>
    /// <param name="perPiece">Steps for each piece.</param>
    /// <returns>Points of the curve, those given among them; a closed one does not repeat its first.</returns>
    public static double[] Through(ReadOnlySpan<double> points, bool closed, int perPiece = 32)
    {
        int n = points.Length / 2;
        int pieces = closed ? n : n - 1;
        double[] curve = new double[2 * ((pieces * perPiece) + (closed ? 0 : 1))];
        int at = 0;
        for (int piece = 0; piece < pieces; piece++)
        {
            (double X, double Y) p0 = Point(points, piece - 1, closed);
            (double X, double Y) p1 = Point(points, piece, closed);
            (double X, double Y) p2 = Point(points, piece + 1, closed);
            (double X, double Y) p3 = Point(points, piece + 2, closed);
            double t1 = Knot(p0, p1);
            double t2 = t1 + Knot(p1, p2);
            double t3 = t2 + Knot(p2, p3);
            int last = !closed && piece == pieces - 1 ? perPiece : perPiece - 1;
            for (int step = 0; step <= last; step++)
            {
                double t = t1 + ((t2 - t1) * step / perPiece);
                (double X, double Y) a1 = Mix(p0, p1, t / t1);
                (double X, double Y) a2 = Mix(p1, p2, (t - t1) / (t2 - t1));
                (double X, double Y) a3 = Mix(p2, p3, (t - t2) / (t3 - t2));
                (double X, double Y) b1 = Mix(a1, a2, t / t2);
                (double X, double Y) b2 = Mix(a2, a3, (t - t1) / (t3 - t1));
                (curve[at], curve[at + 1]) = Mix(b1, b2, (t - t1) / (t2 - t1));
                at += 2;
            }
        }

        return curve;
    }

    private static (double X, double Y) Point(ReadOnlySpan<double> points, int i, bool closed)
    {
        int n = points.Length / 2;
        if (closed)
        {
            int around = (i + n) % n;
            return (points[2 * around], points[(2 * around) + 1]);
        }

        int inside = Math.Clamp(i, 0, n - 1);
        if (inside == i)
        {
            return (points[2 * i], points[(2 * i) + 1]);
        }

        int neighbour = i < 0 ? 1 : n - 2;
        return ((2 * points[2 * inside]) - points[2 * neighbour], (2 * points[(2 * inside) + 1]) - points[(2 * neighbour) + 1]);
    }

    // The square root of the distance: what makes it centripetal.
    private static double Knot((double X, double Y) a, (double X, double Y) b) => Math.Pow(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)), 0.25);

    private static (double X, double Y) Mix((double X, double Y) a, (double X, double Y) b, double share) =>
        (a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)));
}
