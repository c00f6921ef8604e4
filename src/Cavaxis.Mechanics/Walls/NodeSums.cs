using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Matrices;

namespace Cavaxis.Mechanics.Walls;

/// <summary>Adds derivatives by the three coordinates of one node.</summary>
internal static class NodeSums
{
    /// <summary>Adds a vector to the gradient.</summary>
    public static void AddForce(double[] gradient, int i, double factor, Vector3D v)
    {
        gradient[4 * i] += factor * v.X;
        gradient[(4 * i) + 1] += factor * v.Y;
        gradient[(4 * i) + 2] += factor * v.Z;
    }

    /// <summary>Adds a multiple of the unit matrix.</summary>
    public static void AddUnit(BandMatrix hessian, int i, double factor)
    {
        for (int r = 0; r < 3; r++)
        {
            hessian.Add((4 * i) + r, (4 * i) + r, factor);
        }
    }

    /// <summary>Adds a multiple of v ⊗ v.</summary>
    public static void AddOuter(BandMatrix hessian, int i, double factor, Vector3D v)
    {
        int at = 4 * i;
        hessian.Add(at, at, factor * v.X * v.X);
        hessian.Add(at + 1, at, factor * v.Y * v.X);
        hessian.Add(at + 1, at + 1, factor * v.Y * v.Y);
        hessian.Add(at + 2, at, factor * v.Z * v.X);
        hessian.Add(at + 2, at + 1, factor * v.Z * v.Y);
        hessian.Add(at + 2, at + 2, factor * v.Z * v.Z);
    }
}
