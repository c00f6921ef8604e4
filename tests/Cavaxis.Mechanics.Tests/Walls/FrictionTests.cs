using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;
using Xunit.Abstractions;

namespace Cavaxis.Mechanics.Tests.Walls;

public class FrictionTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(0.1, 3.141592653589793)]
    [InlineData(0.2, 6.283185307179586)]
    public void X(double mu, double angle)
    {
        const double R = 20;
        double h = R * angle / 120;
        List<Vector3D> nodes = [];
        for (int i = -20; i <= 140; i++)
        {
            double a = Math.Clamp(i * h / R, 0, angle);
            Vector3D on = R * new Vector3D(Math.Cos(a), Math.Sin(a), 0.02 * a);
            Vector3D t = new(-Math.Sin(a), Math.Cos(a), 0.02);
            nodes.Add(on + ((i * h) - (a * R)) * t);
        }

        RodChain chain = RodChain.Uniform(160, 160 * h, new RodEdge(0, 5000, 0.05, 0.05), 0);
        RodState state = RodState.Along(nodes);
        ImmutableArray<NodeGrip> grips = [];
        Vector3D t0 = (nodes[0] - nodes[1]).Unit;
        Vector3D t1 = (nodes[^1] - nodes[^2]).Unit;
        for (int k = 0; k < 6; k++)
        {
            RelaxationTask task = new(chain, state with { NodesMm = state.NodesMm.SetItem(0, state.NodesMm[0] + 0.3 * t0) }, RodSupports.None(161).WithNode(0).WithAngle(0))
            { Wall = new Wall(new Capstan(R), mu), Grips = grips, LoadsN = [.. new Vector3D[160], t1] };
            RelaxationResult r = Relaxation.Relax(task);
            state = r.State; grips = r.Grips;
            output.WriteLine(FormattableString.Invariant($"{r.Fault} steps {r.Steps} rounds {r.Rounds} T2 {r.HeldForcesN[0].Length} exact {Math.Exp(mu * angle)} {r.PenetrationMm} {r.Contacts.Length}"));
        }
        Assert.Fail();
    }
}
