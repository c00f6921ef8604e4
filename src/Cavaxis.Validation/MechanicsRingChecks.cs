using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>
/// Michell's instability: a straight rod bent to a ring, its ends turned against each other and welded, leaves its plane. One piece of the
/// ring is held, with nodes and angle, at both ends of the chain: that takes away the motions of the whole ring and no other.
/// </summary>
public sealed class MechanicsRingChecks : IReferenceChecks
{
    private const int Pieces = 100;

    private static readonly Source Michell = new("Michell 1889: total twist 2 pi sqrt(3) EI/GJ", Certainty.FromMemory);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        foreach (double torsion in new[] { 1, 0.77, 2 })
        {
            yield return MechanicsRodChecks.Row(
                string.Create(CultureInfo.InvariantCulture, $"Twist at which a welded ring leaves its plane, GJ/EI {torsion}"),
                Michell, 2 * Math.PI * Math.Sqrt(3) / torsion, CriticalTwist(Pieces, torsion), "rad", Tolerance.Relative, 0.02);
        }

        double exact = 2 * Math.PI * Math.Sqrt(3);
        yield return MechanicsRodChecks.Row(
            "Order of the error of that twist, from 24 to 48 pieces", new Source("Second order of the discretisation", Certainty.ClosedForm), 2,
            Math.Log2((CriticalTwist(24, 1) - exact) / (CriticalTwist(48, 1) - exact)), "1", Tolerance.Absolute, 0.2);
    }

    private static double CriticalTwist(int pieces, double torsion)
    {
        // The first piece stands again at the end of the chain.
        double corner = 2 * Math.PI / pieces;
        double piece = ReferenceRod.LengthMm / pieces;
        double radius = piece / (2 * Math.Sin(corner / 2));
        RodChain chain = RodChain.Uniform(
            pieces + 1, (pieces + 1) * piece, ReferenceRod.Edge with { TorsionalStiffnessNMm2 = torsion * ReferenceRod.StiffnessNMm2 }, 0);
        RodState ring = RodState.Along(
            [.. Enumerable.Range(0, pieces + 2).Select(i => radius * new Vector3D(Math.Cos(i * corner), Math.Sin(i * corner), 0))], new Vector3D(0, 0, 1));
        RodSupports welded = RodSupports.None(pieces + 2).WithClampedEdge(0).WithClampedEdge(pieces);
        return ReferenceRod.Critical(
            twist =>
            {
                RodState twisted = ring with { AnglesRad = [.. Enumerable.Range(0, pieces + 1).Select(j => twist * j / pieces)] };
                return Relaxation.UnstableModes(new RelaxationTask(chain, twisted, welded)) > 0;
            },
            1,
            20);
    }
}
