using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// A vessel or chamber as spheres along a centreline: d(p) = |p − c(s)| − r(s) at the nearest point c(s) of the line. The line is a cubic
/// Hermite curve through knots with their tangents, so the gradient is continuous wherever the nearest point is unique (closer to the
/// line than its radius of curvature); where the radius changes, r′ ∇s is part of it. Both ends are round.
/// </summary>
public sealed class SweptTube : ILumen
{
    private const int KnotsPerBlock = 8;
    private const int MostSteps = 12;

    /// <summary>Newton's method doubles the figures: a step of this share of a piece leaves an error of its square.</summary>
    private const double Near = 1e-6;

    private readonly CurveKnot[] knots;
    private readonly Vector3D[] places;
    private readonly double[] radii;
    private readonly double[] slopes;
    private readonly CurvePiece[] pieces;

    /// <summary>Largest radius and, with a tenth to spare for a cubic that is longer than its lengths say, half of the longest piece, mm.</summary>
    private readonly double farthestMm;
    private readonly (Vector3D Middle, double Reach)[] blocks;

    /// <summary>Builds the tube.</summary>
    /// <param name="knots">Centreline, at least two knots with growing lengths.</param>
    /// <param name="radiusMm">Radius at a length along the line, mm, above zero.</param>
    internal SweptTube(IReadOnlyList<CurveKnot> knots, Func<double, double> radiusMm)
    {
        this.knots = [.. knots];
        places = [.. this.knots.Select(static k => k.Point)];
        radii = [.. this.knots.Select(k => radiusMm(k.ArcMm))];
        slopes = Slopes(this.knots, radii);
        pieces = [.. this.knots.Zip(this.knots.Skip(1), static (a, b) => new CurvePiece(a, b))];
        blocks = new (Vector3D, double)[(this.knots.Length + KnotsPerBlock - 1) / KnotsPerBlock];
        for (int b = 0; b < blocks.Length; b++)
        {
            blocks[b] = Block(b);
        }

        (Vector3D low, Vector3D high) = (this.knots[0].Point, this.knots[0].Point);
        foreach (CurveKnot knot in this.knots)
        {
            low = new Vector3D(Math.Min(low.X, knot.Point.X), Math.Min(low.Y, knot.Point.Y), Math.Min(low.Z, knot.Point.Z));
            high = new Vector3D(Math.Max(high.X, knot.Point.X), Math.Max(high.Y, knot.Point.Y), Math.Max(high.Z, knot.Point.Z));
        }

        double reach = radii.Max();
        farthestMm = reach + (0.6 * this.knots.Zip(this.knots.Skip(1), static (a, b) => b.ArcMm - a.ArcMm).Max());
        Vector3D all = new(reach, reach, reach);
        (Low, High) = (low - all, high + all);
    }

    /// <summary>Lowest corner of a box that holds the tube, mm.</summary>
    public Vector3D Low { get; }

    /// <summary>Highest corner of a box that holds the tube, mm.</summary>
    public Vector3D High { get; }

    /// <summary>Length at the first knot, mm.</summary>
    public double StartMm => knots[0].ArcMm;

    /// <summary>Length at the last knot, mm.</summary>
    public double EndMm => knots[^1].ArcMm;

    /// <inheritdoc/>
    public LumenPoint At(Vector3D point)
    {
        TubePoint nearest = Nearest(point);
        return new LumenPoint(nearest.DistanceMm, nearest.Outward);
    }

    /// <summary>Distance, gradient and place along the line.</summary>
    /// <param name="point">Place, mm.</param>
    /// <returns>All three; finite for every finite point.</returns>
    public TubePoint Nearest(Vector3D point)
    {
        int knot = NearestKnot(point, out _);
        (int piece, double share) = Foot(point, knot);
        return Told(point, piece, share);
    }

    /// <summary>The same for one that needs only what is near.</summary>
    /// <param name="point">Place, mm.</param>
    /// <param name="withinMm">Distance from the wall up to which the answer matters, mm.</param>
    /// <param name="at">Distance and gradient.</param>
    /// <returns>False where the point is surely farther from the wall.</returns>
    internal bool TryAt(Vector3D point, double withinMm, out LumenPoint at)
    {
        at = default;
        double box = BoxDistanceMm(point);
        if (box > 0 && box >= withinMm)
        {
            return false;
        }

        // No place of the line is farther from a knot than half of the longest piece.
        int knot = NearestKnot(point, out double squared);
        double reach = withinMm + farthestMm;
        if (reach <= 0 || squared > reach * reach)
        {
            return false;
        }

        (int piece, double share) = Foot(point, knot);
        TubePoint nearest = Told(point, piece, share);
        at = new LumenPoint(nearest.DistanceMm, nearest.Outward);
        return true;
    }

    /// <summary>Place of the centreline.</summary>
    /// <param name="arcMm">Length along it, mm; clamped to its ends.</param>
    /// <returns>mm.</returns>
    public Vector3D PointAt(double arcMm)
    {
        (int piece, double share) = PieceOf(arcMm);
        return pieces[piece].PointAt(share);
    }

    /// <summary>Direction of the centreline in which the length grows.</summary>
    /// <param name="arcMm">Length along it, mm; clamped to its ends.</param>
    /// <returns>A unit vector.</returns>
    public Vector3D DirectionAt(double arcMm)
    {
        (int piece, double share) = PieceOf(arcMm);
        return pieces[piece].Derivatives(share).First.Unit;
    }

    /// <summary>Radius.</summary>
    /// <param name="arcMm">Length along the line, mm; clamped to its ends.</param>
    /// <returns>mm.</returns>
    public double RadiusAt(double arcMm)
    {
        (int piece, double share) = PieceOf(arcMm);
        return Radius(piece, share).Value;
    }

    /// <summary>Distance from a point to a box around the tube: never more than the distance from its wall.</summary>
    /// <param name="point">Place, mm.</param>
    /// <returns>mm; zero inside the box.</returns>
    private double BoxDistanceMm(Vector3D point)
    {
        double x = Math.Max(0, Math.Max(Low.X - point.X, point.X - High.X));
        double y = Math.Max(0, Math.Max(Low.Y - point.Y, point.Y - High.Y));
        double z = Math.Max(0, Math.Max(Low.Z - point.Z, point.Z - High.Z));
        return Math.Sqrt((x * x) + (y * y) + (z * z));
    }

    private (int Piece, double Share) PieceOf(double arcMm)
    {
        double arc = Math.Clamp(arcMm, StartMm, EndMm);
        int low = 0;
        int high = knots.Length - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = knots[middle].ArcMm <= arc ? (middle, high) : (low, middle);
        }

        return (low, (arc - knots[low].ArcMm) / (knots[low + 1].ArcMm - knots[low].ArcMm));
    }

    private int NearestKnot(Vector3D point, out double squared)
    {
        // The nearest block first: then most others are seen to be farther without a look at their knots.
        Span<double> apart = stackalloc double[blocks.Length];
        int first = 0;
        for (int b = 0; b < blocks.Length; b++)
        {
            apart[b] = (point - blocks[b].Middle).SquaredLength;
            first = apart[b] < apart[first] ? b : first;
        }

        int nearest = 0;
        squared = double.PositiveInfinity;
        double reach = double.PositiveInfinity;
        for (int k = 0; k < blocks.Length; k++)
        {
            int b = k == 0 ? first : k <= first ? k - 1 : k;
            double limit = blocks[b].Reach + reach;
            if (apart[b] > limit * limit)
            {
                continue;
            }

            int end = Math.Min(knots.Length, (b + 1) * KnotsPerBlock);
            for (int i = b * KnotsPerBlock; i < end; i++)
            {
                double square = (point - places[i]).SquaredLength;
                if (square < squared)
                {
                    (squared, nearest) = (square, i);
                }
            }

            reach = Math.Sqrt(squared);
        }

        return nearest;
    }

    /// <summary>The nearest place of the line: on which side of its nearest knot it lies is told by the direction of the line there.</summary>
    private (int Piece, double Share) Foot(Vector3D point, int knot)
    {
        double ahead = (point - places[knot]).Dot(knots[knot].Tangent);
        int piece = Math.Clamp(ahead > 0 ? knot : knot - 1, 0, pieces.Length - 1);
        double share = (piece == knot ? 0 : 1) + (ahead / (knots[piece + 1].ArcMm - knots[piece].ArcMm));
        return (piece, Projected(point, piece, Math.Clamp(share, 0, 1)));
    }

    /// <summary>Newton's method for (c − p)·c′ = 0 within one piece; where the curve bends away too much a step along the chord is taken.</summary>
    private double Projected(Vector3D point, int piece, double start)
    {
        ref readonly CurvePiece line = ref pieces[piece];
        double t = start;
        for (int i = 0; i < MostSteps; i++)
        {
            (Vector3D first, Vector3D second) = line.Derivatives(t);
            Vector3D away = line.PointAt(t) - point;
            double slope = away.Dot(first);
            double bend = first.SquaredLength + away.Dot(second);
            double least = 0.1 * first.SquaredLength;
            double next = Math.Clamp(t - (slope / Math.Max(bend, least)), 0, 1);
            if (Math.Abs(next - t) < Near)
            {
                return next;
            }

            t = next;
        }

        return t;
    }

    private TubePoint Told(Vector3D point, int piece, double share)
    {
        (Vector3D first, Vector3D second) = pieces[piece].Derivatives(share);
        Vector3D away = point - pieces[piece].PointAt(share);
        double distance = away.Length;
        (double radius, double slope) = Radius(piece, share);
        Vector3D outward = distance > 1e-12 ? away / distance : Square(first);
        double bend = first.SquaredLength - away.Dot(second);
        bool inside = (share > 0 || piece > 0) && (share < 1 || piece < knots.Length - 2);
        Vector3D gradient = inside && slope != 0 ? outward - ((slope / Math.Max(bend, 0.1 * first.SquaredLength)) * first) : outward;
        double span = knots[piece + 1].ArcMm - knots[piece].ArcMm;
        return new TubePoint(distance - radius, gradient, knots[piece].ArcMm + (share * span));
    }

    /// <summary>Radius and its slope over the share of the piece.</summary>
    private (double Value, double Slope) Radius(int piece, double t)
    {
        double span = knots[piece + 1].ArcMm - knots[piece].ArcMm;
        (double a, double b, double p, double q) = (radii[piece], radii[piece + 1], slopes[piece] * span, slopes[piece + 1] * span);
        double t2 = t * t;
        double t3 = t2 * t;
        double value = (((2 * t3) - (3 * t2) + 1) * a) + ((t3 - (2 * t2) + t) * p) + (((3 * t2) - (2 * t3)) * b) + ((t3 - t2) * q);
        double slope = (6 * t * (1 - t) * (b - a)) + (((3 * t2) - (4 * t) + 1) * p) + (((3 * t2) - (2 * t)) * q);
        return (value, slope);
    }

    private (Vector3D Middle, double Reach) Block(int b)
    {
        int first = b * KnotsPerBlock;
        int end = Math.Min(knots.Length, first + KnotsPerBlock);
        Vector3D middle = 0.5 * (knots[first].Point + knots[end - 1].Point);
        double reach = 0;
        for (int i = first; i < end; i++)
        {
            reach = Math.Max(reach, (knots[i].Point - middle).Length);
        }

        return (middle, reach);
    }

    /// <summary>Slopes that keep the radius between its knots (Fritsch and Carlson 1980), zero at both ends.</summary>
    private static double[] Slopes(CurveKnot[] knots, double[] radii)
    {
        double[] slopes = new double[radii.Length];
        for (int i = 1; i < radii.Length - 1; i++)
        {
            double before = (radii[i] - radii[i - 1]) / (knots[i].ArcMm - knots[i - 1].ArcMm);
            double after = (radii[i + 1] - radii[i]) / (knots[i + 1].ArcMm - knots[i].ArcMm);
            slopes[i] = before * after <= 0 ? 0 : 2 * before * after / (before + after);
        }

        return slopes;
    }

    private static Vector3D Square(Vector3D direction)
    {
        Vector3D other = Math.Abs(direction.X) < Math.Abs(direction.Z) ? new Vector3D(1, 0, 0) : new Vector3D(0, 0, 1);
        return direction.Cross(other).Unit;
    }
}
