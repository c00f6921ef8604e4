using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// Draws a centreline by going along it: straight on, or turning smoothly into another direction. The tangent is known at every
/// step, so lengths along the curve are those that were asked for.
/// </summary>
internal sealed class CurveBuilder
{
    /// <summary>Steps of the integration in each stretch between knots.</summary>
    private const int Substeps = 4;

    private readonly double spacingMm;
    private readonly List<CurveKnot> knots = [];
    private Vector3D at;
    private Vector3D direction;
    private double lengthMm;

    /// <summary>Begins.</summary>
    /// <param name="from">First point.</param>
    /// <param name="direction">Direction there.</param>
    /// <param name="spacingMm">Largest distance between knots, mm.</param>
    public CurveBuilder(Vector3D from, Vector3D direction, double spacingMm)
    {
        (at, this.direction, this.spacingMm) = (from, direction.Unit, spacingMm);
        knots.Add(new CurveKnot(0, at, this.direction));
    }

    /// <summary>The knots so far.</summary>
    public IReadOnlyList<CurveKnot> Knots => knots;

    /// <summary>Length so far, mm.</summary>
    public double LengthMm => lengthMm;

    /// <summary>Direction at the end so far.</summary>
    public Vector3D Direction => direction;

    /// <summary>Goes straight on.</summary>
    /// <param name="distanceMm">How far, mm; nothing happens for zero or less.</param>
    /// <returns>This.</returns>
    public CurveBuilder Straight(double distanceMm) => Bend(distanceMm, direction);

    /// <summary>Turns into another direction, slowly at both ends.</summary>
    /// <param name="distanceMm">Over which length, mm; nothing happens for zero or less.</param>
    /// <param name="towards">Direction at the end; not opposite to the one at the start.</param>
    /// <returns>This.</returns>
    public CurveBuilder Bend(double distanceMm, Vector3D towards)
    {
        if (distanceMm <= 0)
        {
            return this;
        }

        (Vector3D start, Vector3D end) = (direction, towards.Unit);
        int pieces = Math.Max(1, (int)Math.Ceiling(distanceMm / spacingMm));
        double step = distanceMm / (pieces * Substeps);
        for (int i = 0; i < pieces; i++)
        {
            for (int k = 0; k < Substeps; k++)
            {
                // Simpson's rule along the tangent: the curve is smooth within a stretch.
                double share = ((i * Substeps) + k) / (double)(pieces * Substeps);
                double next = ((i * Substeps) + k + 1.0) / (pieces * Substeps);
                at += step / 6 * (Between(start, end, share) + (4 * Between(start, end, (share + next) / 2)) + Between(start, end, next));
            }

            lengthMm += distanceMm / pieces;
            knots.Add(new CurveKnot(lengthMm, at, Between(start, end, (i + 1.0) / pieces)));
        }

        direction = end;
        return this;
    }

    /// <summary>Along the great circle from one direction to another, with no speed at either end.</summary>
    private static Vector3D Between(Vector3D start, Vector3D end, double share)
    {
        double eased = share * share * (3 - (2 * share));
        double cos = Math.Clamp(start.Dot(end), -1, 1);
        double angle = Math.Acos(cos);
        if (angle < 1e-9)
        {
            return end;
        }

        double sin = Math.Sin(angle);
        return ((Math.Sin((1 - eased) * angle) / sin) * start) + ((Math.Sin(eased * angle) / sin) * end);
    }
}
