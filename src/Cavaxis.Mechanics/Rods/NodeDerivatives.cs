using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Matrices;

namespace Cavaxis.Mechanics.Rods;

/// <summary>
/// First and second derivatives of the energy of one inner node by its two edges e and f and their two angles:
/// places 0-2 e, 3 the angle of e, 4-6 f, 7 the angle of f. Written over for every node.
/// </summary>
internal sealed class NodeDerivatives
{
    /// <summary>Place of the edge before the node.</summary>
    public const int Before = 0;

    /// <summary>Place of the angle of the edge before the node.</summary>
    public const int AngleBefore = 3;

    /// <summary>Place of the edge after the node.</summary>
    public const int After = 4;

    /// <summary>Place of the angle of the edge after the node.</summary>
    public const int AngleAfter = 7;

    private readonly double[] first = new double[8];
    private readonly double[] second = new double[64];

    /// <summary>First derivatives.</summary>
    public ReadOnlySpan<double> First => first;

    /// <summary>Sets all to zero.</summary>
    public void Clear()
    {
        Array.Clear(first);
        Array.Clear(second);
    }

    /// <summary>Adds to first derivatives by an edge.</summary>
    public void Add(int place, double factor, Vector3D v)
    {
        first[place] += factor * v.X;
        first[place + 1] += factor * v.Y;
        first[place + 2] += factor * v.Z;
    }

    /// <summary>Adds to the first derivative by an angle.</summary>
    public void Add(int place, double value) => first[place] += value;

    /// <summary>Adds a ⊗ b to the block of two edges.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void AddOuter(int row, int column, double factor, Vector3D a, Vector3D b)
    {
        int at = (8 * row) + column;
        Vector256<double> lanes = Lanes(b);
        AddRow(at, factor * a.X * lanes);
        AddRow(at + 8, factor * a.Y * lanes);
        AddRow(at + 16, factor * a.Z * lanes);
    }

    /// <summary>Adds a ⊗ b + b ⊗ a to the block of one edge.</summary>
    public void AddTwice(int place, double factor, Vector3D a, Vector3D b)
    {
        AddOuter(place, place, factor, a, b);
        AddOuter(place, place, factor, b, a);
    }

    /// <summary>Adds a multiple of the unit matrix to the block of two edges.</summary>
    public void AddUnit(int row, int column, double factor)
    {
        int at = (8 * row) + column;
        second[at] += factor;
        second[at + 9] += factor;
        second[at + 18] += factor;
    }

    /// <summary>Adds the matrix of the vector product with a, [a]ₓ b = a × b, to the block of two edges.</summary>
    public void AddCross(int row, int column, double factor, Vector3D a)
    {
        int at = (8 * row) + column;
        second[at + 1] -= factor * a.Z;
        second[at + 2] += factor * a.Y;
        second[at + 8] += factor * a.Z;
        second[at + 10] -= factor * a.X;
        second[at + 16] -= factor * a.Y;
        second[at + 17] += factor * a.X;
    }

    /// <summary>Adds to the block of an angle (row) and an edge (column).</summary>
    public void AddMixed(int angle, int edge, double factor, Vector3D v) => AddRow((8 * angle) + edge, factor * Lanes(v));

    /// <summary>Adds to the entry of two angles.</summary>
    public void AddAngles(int row, int column, double value) => second[(8 * row) + column] += value;

    /// <summary>
    /// Adds all to the derivatives of the rod by the coordinates of three nodes and two angles: e is the node less the one
    /// before it, f the one after it less the node.
    /// </summary>
    /// <param name="start">First variable of the node before.</param>
    /// <param name="gradient">Gradient of the rod.</param>
    /// <param name="hessian">Second derivatives of the rod.</param>
    public void Spread(int start, double[] gradient, BandMatrix hessian)
    {
        for (int r = 0; r < 3; r++)
        {
            double e = first[Before + r];
            double f = first[After + r];
            gradient[start + r] -= e;
            gradient[start + 4 + r] += e - f;
            gradient[start + 8 + r] += f;

            // The fourth lane is zero where a row has no angle, and what lies right of the diagonal is lost.
            Vector256<double> ee = Row(8 * r);
            Vector256<double> ef = Row((8 * r) + After);
            Vector256<double> fe = Vector256.Create(second[After + r], second[8 + After + r], second[16 + After + r], 0);
            Vector256<double> ff = Row((8 * (After + r)) + After);
            hessian.Add(start + r, start, ee);
            hessian.Add(start + 4 + r, start, fe - ee);
            hessian.Add(start + 4 + r, start + 4, ee - ef - fe + ff);
            hessian.Add(start + 8 + r, start, -fe);
            hessian.Add(start + 8 + r, start + 4, fe - ff);
            hessian.Add(start + 8 + r, start + 8, ff);
        }

        gradient[start + 3] += first[AngleBefore];
        gradient[start + 7] += first[AngleAfter];
        Vector256<double> signs = Vector256.Create(-1.0, -1, -1, 1);
        Vector256<double> before = Row(8 * AngleAfter);
        hessian.Add(start + 3, start, signs * Row(8 * AngleBefore));
        hessian.Add(start + 7, start, signs * before);
        hessian.Add(start + 7, start + 4, (Vector256.Create(1.0, 1, 1, 0) * before) + (signs * Row((8 * AngleAfter) + After)));
        for (int c = 0; c < 3; c++)
        {
            double bf = second[(8 * AngleBefore) + After + c];
            hessian.Add(start + 4 + c, start + 3, second[(8 * AngleBefore) + Before + c] - bf);
            hessian.Add(start + 8 + c, start + 3, bf);
            hessian.Add(start + 8 + c, start + 7, second[(8 * AngleAfter) + After + c]);
        }
    }

    private static Vector256<double> Lanes(Vector3D v) => Vector256.Create(v.X, v.Y, v.Z, 0);

    private Vector256<double> Row(int at) => Vector256.Create<double>(second.AsSpan(at, 4));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void AddRow(int at, Vector256<double> values)
    {
        Span<double> row = second.AsSpan(at, 4);
        (Vector256.Create<double>(row) + values).CopyTo(row);
    }
}
