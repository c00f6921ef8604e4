using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Tests.Lumens;

/// <summary>Numbers of one tube, from which the same tube can be made where it is and after a motion.</summary>
internal sealed record TubeSketch(Vector3D From, Vector3D Heading, (double LengthMm, Vector3D Towards)[] Bends, double[] RadiiMm)
{
    public SweptTube Made()
    {
        (IReadOnlyList<CurveKnot> knots, double length) = Knots();
        return new SweptTube(knots, Profile(length));
    }

    /// <summary>The tube made of moved knots: nothing of it knows the old place.</summary>
    public SweptTube Moved(RigidMotion motion)
    {
        (IReadOnlyList<CurveKnot> knots, double length) = Knots();
        return new SweptTube([.. knots.Select(k => new CurveKnot(k.ArcMm, motion.Place(k.Point), motion.Turn(k.Tangent)))], Profile(length));
    }

    private (IReadOnlyList<CurveKnot> Knots, double LengthMm) Knots()
    {
        CurveBuilder way = new(From, Heading, 5);
        foreach ((double length, Vector3D towards) in Bends)
        {
            way.Bend(length, towards);
        }

        return (way.Knots, way.LengthMm);
    }

    private Func<double, double> Profile(double length) =>
        new RadiusProfile([.. RadiiMm.Select((r, i) => (length * i / (RadiiMm.Length - 1), r))]).At;
}
