using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Insertion;
using Cavaxis.Mechanics.Tests.Walls;
using Xunit.Abstractions;

namespace Cavaxis.Mechanics.Tests.Insertion;

public class InserterTests(ITestOutputHelper output)
{
    [Fact]
    public void X()
    {
        PathTube tube = new PathTube().Then(60, 0, 5).Then(40, 0.7, 9).Then(100, 0, 9).Then(60, -0.6, 12).Then(80, 0.6, 12).Then(300, 0, 11);
        InsertionScript script = new(Kits.Cannulation(), new Sleeve(new Vector3D(0, 0, 0), new Vector3D(1, 0, 0)),
            [InsertionStep.FeedWire(500), InsertionStep.AdvanceCannula(300), InsertionStep.WithdrawIntroducer(1000), InsertionStep.WithdrawWire(1000)]);
        for (int k = 0; k < 8; k++)
        {
            System.Diagnostics.Stopwatch w = System.Diagnostics.Stopwatch.StartNew();
            ImmutableArray<InsertionReport> all = Inserter.Run(script, tube);
            output.WriteLine($"{w.ElapsedMilliseconds} ms");
            foreach (InsertionReport r in all)
            {
                output.WriteLine(FormattableString.Invariant($"{r.Step.Action} {r.Done:F1} {r.Assembly.Depths} newton {r.NewtonSteps} of {r.Moments.Length} pen {r.PenetrationMm:F3} push {r.PushN:F3} max {r.Moments.Max(m => m.PushN):F2} tip {r.Moments[^1].TipForceN:F3} {r.Moments[^1].TipMm} contacts {r.Contacts.Length} E {r.Elastic.TotalNMm:F3} {r.Fault}"));
            }
        }
        Assert.Fail();
    }
}
