using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;

namespace Cavaxis.Validation;

/// <summary>Straight and curved rods of 100 mm and 1000 N mm² that the mechanics rows bend, twist and press.</summary>
internal static class ReferenceRod
{
    /// <summary>Length, mm.</summary>
    public const double LengthMm = 100;

    /// <summary>EI and GJ, N mm².</summary>
    public const double StiffnessNMm2 = 1000;

    /// <summary>Stiffness of the material; so stiff along its length that it keeps it to a hundred-thousandth.</summary>
    public static RodEdge Edge { get; } = new(0, 1e5, StiffnessNMm2, StiffnessNMm2);

    /// <summary>Force of which a load is told as a multiple, EI/L², N.</summary>
    public static double UnitN => StiffnessNMm2 / (LengthMm * LengthMm);

    /// <summary>A rod clamped at the origin along x, with a force on its end.</summary>
    /// <param name="pieces">Pieces.</param>
    /// <param name="force">Force on the last node, N.</param>
    /// <returns>At rest.</returns>
    public static RelaxationResult Cantilever(int pieces, Vector3D force) => Relaxation.Relax(new RelaxationTask(
        RodChain.Uniform(pieces, LengthMm, Edge, 0).WithClampBefore(), RodState.Along(Straight(pieces, 1, 0)), RodSupports.None(pieces + 2).WithClampedEdge(0))
    {
        LoadsN = [.. new Vector3D[pieces + 1], force],
    });

    /// <summary>Last node of a rod at rest.</summary>
    /// <param name="result">Result.</param>
    /// <returns>mm; not a number where the rod is not at rest.</returns>
    public static Vector3D End(RelaxationResult result) =>
        result.IsAtRest ? result.State.NodesMm[^1] : new Vector3D(double.NaN, double.NaN, double.NaN);

    /// <summary>Nodes along x.</summary>
    /// <param name="pieces">Pieces of the rod.</param>
    /// <param name="before">Pieces before the origin.</param>
    /// <param name="after">Pieces behind the end.</param>
    public static Vector3D[] Straight(int pieces, int before, int after) =>
        [.. Enumerable.Range(-before, before + pieces + after + 1).Select(i => new Vector3D(i * LengthMm / pieces, 0, 0))];

    /// <summary>Smallest load at which a straight rod has a way to give.</summary>
    /// <param name="unstable">Whether it has at a load.</param>
    /// <param name="low">A load at which it has not.</param>
    /// <param name="high">A load at which it has.</param>
    /// <returns>The load, to a hundred-thousandth of the interval; not a number where an end of the interval is on the wrong side.</returns>
    public static double Critical(Func<double, bool> unstable, double low, double high)
    {
        if (unstable(low) || !unstable(high))
        {
            return double.NaN;
        }

        double width = 1e-5 * (high - low);
        while (high - low > width)
        {
            double middle = 0.5 * (low + high);
            (low, high) = unstable(middle) ? (low, middle) : (middle, high);
        }

        return 0.5 * (low + high);
    }
}
