using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>The cubic between two knots that has their places and tangents (Hermite), as a polynomial of the share of the way between them.</summary>
internal readonly struct CurvePiece
{
    private readonly Vector3D start;
    private readonly Vector3D linear;
    private readonly Vector3D square;
    private readonly Vector3D cube;

    /// <summary>Lays it.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends.</param>
    public CurvePiece(CurveKnot from, CurveKnot to)
    {
        double span = to.ArcMm - from.ArcMm;
        Vector3D chord = to.Point - from.Point;
        (Vector3D p, Vector3D q) = (span * from.Tangent, span * to.Tangent);
        start = from.Point;
        linear = p;
        square = (3 * chord) - (2 * p) - q;
        cube = p + q - (2 * chord);
    }

    /// <summary>Place.</summary>
    /// <param name="t">Share of the way, 0 to 1.</param>
    /// <returns>mm.</returns>
    public Vector3D PointAt(double t) => start + (t * (linear + (t * (square + (t * cube)))));

    /// <summary>First and second derivative by the share.</summary>
    /// <param name="t">Share of the way, 0 to 1.</param>
    /// <returns>mm.</returns>
    public (Vector3D First, Vector3D Second) Derivatives(double t) =>
        (linear + (t * ((2 * square) + (3 * t * cube))), (2 * square) + (6 * t * cube));
}
