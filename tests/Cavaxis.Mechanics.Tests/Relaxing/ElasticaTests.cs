using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Xunit.Abstractions;

namespace Cavaxis.Mechanics.Tests.Relaxing;

public class ElasticaTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(0.25)]
    [InlineData(1)]
    [InlineData(10)]
    public void X(double p)
    {
        RodChain chain = RodChain.Uniform(100, 1, new RodEdge(0, 1e6, 1, 1), 0).WithClampBefore();
        RodState start = RodState.Along([.. Enumerable.Range(-1, 102).Select(i => new Vector3D(i * 0.01, 0, 0))]);
        RelaxationTask task = new(chain, start, RodSupports.None(102).WithClampedEdge(0)) { LoadsN = [.. new Vector3D[101], new Vector3D(0, p, 0)] };
        System.Diagnostics.Stopwatch w = System.Diagnostics.Stopwatch.StartNew();
        RelaxationResult r = Relaxation.Relax(task);
        output.WriteLine(FormattableString.Invariant($"{w.ElapsedMilliseconds} {r.Fault} {r.Steps} {r.ResidualN} {r.State.NodesMm[^1]}"));
        Assert.Fail();
    }
}
