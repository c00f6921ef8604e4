using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Matrices;
using Cavaxis.Mechanics.Rods;
using static Cavaxis.Mechanics.Walls.NodeSums;

namespace Cavaxis.Mechanics.Walls;

/// <summary>
/// Asks the lumen about nodes, and only where the answer can matter: a node that was far inside and has moved little is
/// still inside.
/// </summary>
internal sealed class WallTouch
{
    /// <summary>Step of the difference that gives the wall's curvature, mm.</summary>
    private const double CurvatureStepMm = 1e-3;

    /// <summary>Sharpest ridge whose curvature is used, 1/mm; a sharper one is an edge that the difference has crossed.</summary>
    private const double SharpestRidgePerMm = 1;

    /// <summary>The same for a hollow. It is that of the space left to the middle of the rod: sharp where a device nearly fills the lumen.</summary>
    private const double SharpestGroovePerMm = 200;

    /// <summary>The distance of a blend may change a little faster than the place.</summary>
    private const double LargestSlope = 1.25;

    /// <summary>Play that a rod which fits has at least, mm.</summary>
    private const double PinchMm = 0.05;

    private ILumen lumen = null!;
    private double stiffness;
    private double[] radius = [];
    private double[] multiplier = [];
    private Vector3D[] seenAt = [];
    private LumenPoint[] seen = [];

    /// <summary>Takes a lumen and a penalty.</summary>
    public void Load(ILumen wall, double stiffnessNPerMm, int count)
    {
        (lumen, stiffness) = (wall, stiffnessNPerMm);
        if (radius.Length < count)
        {
            int room = count + 32;
            (radius, multiplier, seenAt, seen) = (new double[room], new double[room], new Vector3D[room], new LumenPoint[room]);
        }
    }

    /// <summary>Takes a node.</summary>
    /// <returns>What the lumen says of it.</returns>
    public LumenPoint Begin(int i, Vector3D x, double radiusMm)
    {
        (radius[i], multiplier[i], seenAt[i], seen[i]) = (radiusMm, 0, x, lumen.At(x));
        return seen[i];
    }

    /// <summary>Force that a multiplier holds at a node.</summary>
    public double Multiplier(int i) => multiplier[i];

    /// <summary>Lets a multiplier hold a force at a node.</summary>
    public void Hold(int i, double force) => multiplier[i] = force;

    /// <summary>Whether a node that is brought out of the wall lands in it again: the rod is wider than the lumen.</summary>
    public bool IsPinched(int i, Vector3D x)
    {
        LumenPoint at = lumen.At(x);
        double depth = Depth(i, at);
        return depth > 0 && Depth(i, lumen.At(x - ((depth + PinchMm) * at.Outward))) > 0;
    }

    /// <summary>Depth of a node's outer surface in the wall.</summary>
    public double Depth(int i, LumenPoint at) => at.DistanceMm + radius[i];

    /// <summary>The plane of the wall at a node that touches it.</summary>
    public Foreseen Now(int i, Vector3D x) =>
        TryTouch(i, x, out LumenPoint at, out double force) ? new Foreseen(true, true, force / stiffness, at.Outward) : default;

    /// <summary>The plane of the wall at a node that a step would bring into it.</summary>
    public bool TryForesee(int i, Vector3D x, Vector3D step, out Foreseen f)
    {
        f = default;
        double reach = radius[i] + (multiplier[i] / stiffness);
        double room = -(seen[i].DistanceMm + reach);
        Vector3D ahead = x + step;
        if (room > 0 && LargestSlope * LargestSlope * (ahead - seenAt[i]).SquaredLength < room * room)
        {
            return false;
        }

        LumenPoint at = lumen.At(ahead);
        double depth = at.DistanceMm + reach;
        f = depth > 0 ? new Foreseen(true, false, depth - at.Outward.Dot(step), at.Outward) : default;
        return depth > 0;
    }

    /// <summary>Whether a node touches the wall, and with which force.</summary>
    public bool TryTouch(int i, Vector3D x, out LumenPoint at, out double force)
    {
        at = seen[i];
        force = 0;
        double reach = radius[i] + (multiplier[i] / stiffness);
        Vector3D moved = x - seenAt[i];
        double square = moved.SquaredLength;
        if (square > 0)
        {
            double room = -(at.DistanceMm + reach);
            if (room > 0 && LargestSlope * LargestSlope * square < room * room)
            {
                return false;
            }

            seenAt[i] = x;
            at = lumen.At(x);
            seen[i] = at;
        }

        force = stiffness * (at.DistanceMm + reach);
        if (force <= 0)
        {
            force = 0;
            return false;
        }

        return true;
    }

    /// <summary>Adds what the curvature of the wall does to a force, by differences of its gradient along it.</summary>
    public void AddCurvature(BandMatrix hessian, int i, double force, Vector3D x, Vector3D outward)
    {
        Vector3D normal = outward.Unit;
        Vector3D a = FrameTransport.AnySquareTo(normal);
        Vector3D b = normal.Cross(a);
        Vector3D alongA = (lumen.At(x + (CurvatureStepMm * a)).Outward - outward) / CurvatureStepMm;
        Vector3D alongB = (lumen.At(x + (CurvatureStepMm * b)).Outward - outward) / CurvatureStepMm;
        double aa = alongA.Dot(a);
        double bb = alongB.Dot(b);
        double ab = 0.5 * (alongA.Dot(b) + alongB.Dot(a));
        double angle = 0.5 * Math.Atan2(2 * ab, aa - bb);
        double middle = 0.5 * (aa + bb);
        double half = Math.Sqrt((0.25 * (aa - bb) * (aa - bb)) + (ab * ab));
        Vector3D first = (Math.Cos(angle) * a) + (Math.Sin(angle) * b);
        AddOuter(hessian, i, force * Math.Clamp(middle + half, -SharpestRidgePerMm, SharpestGroovePerMm), first);
        AddOuter(hessian, i, force * Math.Clamp(middle - half, -SharpestRidgePerMm, SharpestGroovePerMm), normal.Cross(first));
    }
}
