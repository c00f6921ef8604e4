using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;

namespace Cavaxis.Mechanics.Tests.Relaxing;

/// <summary>A straight rod bent to a ring, twisted and welded (Michell 1889): flat up to a twist of 2π√3 EI/GJ, whichever way it is twisted.</summary>
public class RingTests
{
    private const int Pieces = 60;
    private const double RadiusMm = 20;

    private static readonly RelaxationSettings Patient = new() { MostSteps = 5000 };

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.6)]
    [InlineData(2.5)]
    public void A_ring_stays_flat_below_Michells_twist_and_leaves_its_plane_above(double torsion)
    {
        double critical = 2 * Math.PI * Math.Sqrt(3) / torsion;
        foreach (double sign in new[] { -1.0, 1.0 })
        {
            (RelaxationTask below, RelaxationTask above) = (Ring(0.97 * sign * critical, torsion), Ring(1.03 * sign * critical, torsion));
            Assert.Equal(0, Relaxation.UnstableModes(below));
            Assert.True(Relaxation.UnstableModes(above) > 0);
            RelaxationResult flat = Relaxation.Relax(below, Patient);
            RelaxationResult left = Relaxation.Relax(above, Patient);
            Assert.True(flat.IsAtRest && left.IsAtRest, left.Fault?.Words);
            Assert.All(flat.State.NodesMm, static node => Assert.InRange(Math.Abs(node.Z), 0, 1e-3));
            Assert.True(left.State.NodesMm.Max(static node => Math.Abs(node.Z)) > 0.05 * RadiusMm);
            Assert.True(left.Elastic.TotalNMm < Relaxation.Relax(above, Patient with { LeavesSaddles = false }).Elastic.TotalNMm);
            Assert.Equal(0, Relaxation.UnstableModes(above with { Start = left.State }));
        }
    }

    /// <summary>The first piece stands again at the end of the chain and is held there with its angle.</summary>
    private static RelaxationTask Ring(double twist, double torsion)
    {
        double corner = 2 * Math.PI / Pieces;
        double piece = 2 * RadiusMm * Math.Sin(corner / 2);
        RodState flat = RodState.Along([.. Enumerable.Range(0, Pieces + 2).Select(i => RadiusMm * new Vector3D(Math.Cos(i * corner), Math.Sin(i * corner), 0))]);
        return new RelaxationTask(
            RodChain.Uniform(Pieces + 1, (Pieces + 1) * piece, new RodEdge(0, 5000, 1000, 1000 * torsion), 0),
            flat with { AnglesRad = [.. Enumerable.Range(0, Pieces + 1).Select(j => twist * j / Pieces)] },
            RodSupports.None(Pieces + 2).WithClampedEdge(0).WithClampedEdge(Pieces));
    }
}
