using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Rods;

/// <summary>Parallel transport of directors (Bergou et al. 2008, section 4.2.2).</summary>
internal static class FrameTransport
{
    /// <summary>Turns a vector by the smallest rotation that takes one unit tangent to another.</summary>
    public static Vector3D Along(Vector3D vector, Vector3D from, Vector3D to)
    {
        Vector3D binormal = from.Cross(to);
        double cosine = from.Dot(to);
        if (cosine < -0.999999)
        {
            // The smallest rotation is not unique where the tangent turns round; a half turn about the director keeps it.
            return vector;
        }

        return (cosine * vector) + binormal.Cross(vector) + (binormal.Dot(vector) / (1 + cosine) * binormal);
    }

    /// <summary>Makes a director square to a tangent and of length one.</summary>
    public static Vector3D Square(Vector3D director, Vector3D tangent) => (director - (director.Dot(tangent) * tangent)).Unit;

    /// <summary>Any director square to a tangent.</summary>
    public static Vector3D AnySquareTo(Vector3D tangent)
    {
        Vector3D axis = Math.Abs(tangent.X) < 0.6 ? new Vector3D(1, 0, 0) : new Vector3D(0, 1, 0);
        return Square(axis, tangent);
    }

    /// <summary>Angle from one director to another about a tangent, rad, from −π to π.</summary>
    public static double Angle(Vector3D from, Vector3D to, Vector3D tangent) => Math.Atan2(tangent.Dot(from.Cross(to)), from.Dot(to));

    /// <summary>Angle from the reference director of an edge, carried over to the next edge, to that edge's own director.</summary>
    /// <param name="director">Director of the edge before.</param>
    /// <param name="tangent">Tangent of the edge before.</param>
    /// <param name="nextDirector">Director of the edge.</param>
    /// <param name="nextTangent">Tangent of the edge.</param>
    /// <param name="near">The angle before; whole turns are added to stay near it.</param>
    public static double ReferenceTwist(Vector3D director, Vector3D tangent, Vector3D nextDirector, Vector3D nextTangent, double near)
    {
        double angle = Angle(Along(director, tangent, nextTangent), nextDirector, nextTangent);
        return angle + (2 * Math.PI * Math.Round((near - angle) / (2 * Math.PI)));
    }
}
