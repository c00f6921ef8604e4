using Cavaxis.Mechanics.Matrices;
using Cavaxis.Mechanics.Rods;
using CsCheck;

namespace Cavaxis.Mechanics.Tests.Rods;

/// <summary>Derivatives against differences of the energy. Directors are carried over from the pose in question, which is how the solver takes its steps.</summary>
public class DerivativeTests
{
    private const int Variables = 27;

    [Fact]
    public void The_gradient_is_that_of_the_energy() => Gen.Select(RodGen.Bent, Gen.Double[-1, 1].Array[28]).Sample(
        static (rod, way) =>
        {
            Probe probe = new(rod.Chain, rod.State);
            double slope = Enumerable.Range(0, Variables).Sum(k => probe.Gradient[k] * way[k]);
            double differences = ((8 * (probe.Energy(way, 1e-4) - probe.Energy(way, -1e-4))) - probe.Energy(way, 2e-4) + probe.Energy(way, -2e-4)) / 12e-4;
            Assert.Equal(differences, slope, 1e-5 * (1 + Math.Abs(slope)));
        },
        iter: 300);

    [Fact]
    public void The_second_derivatives_are_those_of_the_energy() => Gen.Select(RodGen.Bent, Gen.Double[-1, 1].Array[28]).Sample(
        static (rod, way) =>
        {
            const double Step = 1e-3;
            Probe probe = new(rod.Chain, rod.State);
            double bow = 0;
            for (int r = 0; r < Variables; r++)
            {
                for (int c = 0; c < Variables; c++)
                {
                    bow += way[r] * probe.Hessian[r, c] * way[c];
                }
            }

            double differences = ((16 * (probe.Energy(way, Step) + probe.Energy(way, -Step))) - probe.Energy(way, 2 * Step) - probe.Energy(way, -2 * Step)
                - (30 * probe.Energy(way, 0))) / (12 * Step * Step);
            Assert.Equal(differences, bow, 2e-5 * (1 + Math.Abs(bow)) + 1e-3);
        },
        iter: 300);

    [Fact]
    public void The_forces_within_a_rod_sum_to_nothing() => RodGen.Bent.Sample(
        static rod =>
        {
            Probe probe = new(rod.Chain, rod.State);
            double scale = probe.Gradient.Max(Math.Abs);
            for (int axis = 0; axis < 3; axis++)
            {
                Assert.Equal(0, Enumerable.Range(0, 7).Sum(i => probe.Gradient[(4 * i) + axis]), 1e-12 * scale);
            }
        },
        iter: 100);

    private sealed class Probe
    {
        private readonly RodElasticity elasticity = new();
        private readonly RodPose pose = new();
        private readonly RodPose moved = new();

        public Probe(RodChain chain, RodState state)
        {
            elasticity.Load(chain);
            pose.Load(state);
            Hessian.Reset(28);
            elasticity.AddDerivatives(pose, Gradient, Hessian);
        }

        public double[] Gradient { get; } = new double[28];

        public BandMatrix Hessian { get; } = new();

        public double Energy(double[] way, double share)
        {
            moved.Follow(pose, way, share, false);
            return elasticity.Energy(moved).TotalNMm;
        }
    }
}
