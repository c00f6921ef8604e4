using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Insertion;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Tests.Walls;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Tests.Insertion;

public class InserterTests
{
    private static readonly Sleeve Skin = new(default, new Vector3D(1, 0, 0));

    private static readonly ImmutableArray<InsertionStep> Whole =
        [InsertionStep.FeedWire(500), InsertionStep.AdvanceCannula(300), InsertionStep.WithdrawIntroducer(1000), InsertionStep.WithdrawWire(1000)];

    private static readonly ImmutableArray<InsertionReport> Usual = Inserter.Run(new InsertionScript(Kits.Cannulation(), Skin, Whole), Vein());

    [Fact]
    public void A_whole_insertion_is_done_with_every_state_at_rest_and_in_balance()
    {
        Assert.Equal(4, Usual.Length);
        Assert.All(Usual, static report =>
        {
            Assert.True(report.IsDone, report.Fault?.Words);
            Assert.InRange(report.PenetrationMm, 0, 0.1);
            Vector3D sum = report.Contacts.Select(static c => c.OnRodN).Aggregate(report.ForceAtSkinN, static (a, b) => a + b);
            Assert.InRange(sum.Length, 0, 5e-3);
            Assert.Equal(report.ForceAtSkinN.Dot(Skin.Direction), report.PushN);
            Assert.True(report.CurvaturesPerMm.All(double.IsFinite) && report.CurvaturesPerMm.Max() > 0.001);
        });
        Assert.Equal(new InsertedDepths(500, 0, 0), Usual[0].Assembly.Depths);
        Assert.Equal(new InsertedDepths(500, 340, 300), Usual[1].Assembly.Depths);
        Assert.Equal(new InsertedDepths(500, 0, 300), Usual[2].Assembly.Depths);
        Assert.Equal(new InsertedDepths(0, 0, 300), Usual[3].Assembly.Depths);
        Assert.Null(Usual[3].TipMm(Device.Wire));
        Assert.NotNull(Usual[3].TipMm(Device.Cannula));
    }

    [Fact]
    public void The_rod_has_the_length_that_was_fed() => Assert.All(Usual, static report =>
    {
        ImmutableArray<Vector3D> nodes = report.Assembly.Rod!.NodesMm;
        double length = Enumerable.Range(1, nodes.Length - 2).Sum(i => (nodes[i + 1] - nodes[i]).Length);
        Assert.Equal(report.Assembly.Depths.DeepestMm, length, 0.1);
    });

    [Fact]
    public void Pushing_costs_more_with_more_friction_and_pulling_needs_a_pull()
    {
        double[] pushes = [.. new[] { 0.0, 0.1, 0.3 }.Select(static f => Fed(Kits.Wire(900, f), 400).PushN)];
        Assert.True(pushes[0] < pushes[1] && pushes[1] < pushes[2]);
        InsertionReport back = Inserter.Run(new InsertionScript(new InsertionKit(Kits.Wire()), Skin, [InsertionStep.FeedWire(400), InsertionStep.WithdrawWire(50)]), Vein())[1];
        Assert.True(back.IsDone && back.PushN < 0);
        Assert.Equal(-0.0, back.Done - 50, 1e-9);
    }

    [Fact]
    public void Without_friction_the_work_of_the_hand_is_the_energy_stored()
    {
        // The hand also works against the force M²/2EI that a guide puts on a bent rod at its mouth (Bigoni et al. 2015, from memory).
        const double Bending = 900;
        Inserter inserter = new(
            new InsertionKit(new RodProfile([new RodSection(1000, Bending, Bending, 0.4, 0.4)], 0)), Skin,
            new PathTube().Then(60, 0, 7).Then(60, 0.7, 7).Then(300, 0, 7), new InsertionSettings { SpacingMm = 2, IncrementMm = 2 });
        InsertionReport before = inserter.Do(InsertionStep.FeedWire(100), InsertedAssembly.Empty);
        double first = Stored(before);
        double work = 0;
        for (int k = 0; k < 60; k++)
        {
            InsertionReport after = inserter.Do(InsertionStep.FeedWire(2), before.Assembly);
            Assert.True(after.IsDone, after.Fault?.Words);
            work += Effective(before) + Effective(after);
            before = after;
        }

        double stored = Stored(before) - first;
        Assert.True(Math.Abs(stored - work) < 0.05 * stored && stored > 1, $"stored {stored} work {work}");

        static double Effective(InsertionReport r) => r.PushN - (0.5 * Bending * r.CurvaturesPerMm[1] * r.CurvaturesPerMm[1]);
        static double Stored(InsertionReport r) => r.Elastic.TotalNMm + r.WallEnergyNMm;
    }

    [Fact]
    public void A_stiffer_assembly_lies_straighter()
    {
        Assert.True(Usual[1].CurvaturesPerMm.Max() < Usual[0].CurvaturesPerMm.Take(65).Max() + 0.01);
        Assert.True(Usual[1].PushN > Usual[0].PushN);
        Assert.True(Usual[2].Elastic.TotalNMm < Usual[1].Elastic.TotalNMm);
    }

    [Fact]
    public void A_bent_tip_goes_round_with_the_hand()
    {
        RodProfile hook = new([new RodSection(15, 20, 20, 0.4, 0.4) { NaturalCurvaturePerMm = 0.05 }, new RodSection(500, 500, 500, 0.4, 0.4)], 0.05);
        PathTube straight = new PathTube().Then(400, 0, 15);
        ImmutableArray<InsertionReport> reports = Inserter.Run(
            new InsertionScript(new InsertionKit(hook), Skin, [InsertionStep.FeedWire(150), InsertionStep.Rotate(Math.PI / 2)]), straight);
        Assert.True(reports[1].IsDone, reports[1].Fault?.Words);
        Vector3D before = reports[0].TipMm(Device.Wire)!.Value;
        Vector3D after = reports[1].TipMm(Device.Wire)!.Value;
        double turned = Math.Atan2((before with { X = 0 }).Cross(after with { X = 0 }).X, (before with { X = 0 }).Dot(after with { X = 0 }));
        Assert.True((before with { X = 0 }).Length > 3);
        Assert.Equal(Math.PI / 2, turned, 0.02);
    }

    [Fact]
    public void Two_runs_give_the_same_bits()
    {
        InsertionReport again = Inserter.Run(new InsertionScript(Kits.Cannulation(), Skin, Whole[..2]), Vein())[1];
        Assert.Equal(Usual[1].Moments.Select(Numbers), again.Moments.Select(Numbers));
        Assert.Equal(Usual[1].Moments.SelectMany(static m => m.Assembly.Rod!.NodesMm), again.Moments.SelectMany(static m => m.Assembly.Rod!.NodesMm));
        Assert.Equal(Usual[1].Assembly.Rod!.NodesMm.ToArray(), again.Assembly.Rod!.NodesMm.ToArray());
    }

    /// <summary>A moment without what it holds by reference.</summary>
    private static (InsertedDepths, Vector3D, double, double, double, double, double) Numbers(InsertionMoment moment) =>
        (moment.Depths, moment.TipMm, moment.PushN, moment.TipForceN, moment.LargestContactN, moment.EnergyNMm, moment.PenetrationMm);

    [Fact]
    public void What_goes_out_wholly_leaves_nothing_and_can_come_back()
    {
        ImmutableArray<InsertionReport> reports = Inserter.Run(
            new InsertionScript(new InsertionKit(Kits.Wire()), Skin, [InsertionStep.FeedWire(120), InsertionStep.WithdrawWire(500), InsertionStep.FeedWire(100)]), Vein());
        Assert.All(reports, static r => Assert.True(r.IsDone, r.Fault?.Words));
        Assert.Null(reports[1].Assembly.Rod);
        Assert.Equal(120, reports[1].Done, 1e-9);
        Assert.Equal(100, reports[2].Assembly.Depths.WireMm, 1e-9);
    }

    [Fact]
    public void A_blocked_vein_ends_the_step_with_its_reason_and_what_was_reached()
    {
        // A cannula of 8 mm in a vein of 6 mm.
        PathTube narrow = new PathTube().Then(60, 0, 6).Then(300, 0, 3);
        InsertionReport last = Inserter.Run(
            new InsertionScript(Kits.Cannulation(), Skin, [InsertionStep.FeedWire(200), InsertionStep.AdvanceCannula(150)]), narrow)[^1];
        Assert.Equal(RodFaultCause.WallNotHeld, last.Fault?.Cause);
        Assert.InRange(last.Done, 10, 140);
        Assert.Equal(last.Done, last.Assembly.Depths.CannulaMm, 1e-9);
    }

    [Fact]
    public void Steps_that_cannot_begin_are_named()
    {
        InsertionKit kit = new(Kits.Wire());
        Assert.Equal(RodFaultCause.DeviceTooShort, Inserter.Run(new InsertionScript(kit, Skin, [InsertionStep.FeedWire(4000)]), Vein())[0].Fault?.Cause);
        Assert.Equal(RodFaultCause.NothingToMove, Inserter.Run(new InsertionScript(kit, Skin, [InsertionStep.WithdrawWire(10)]), Vein())[0].Fault?.Cause);
        Assert.Equal(RodFaultCause.NothingToMove, Inserter.Run(new InsertionScript(kit, Skin, [InsertionStep.Rotate(1)]), Vein())[0].Fault?.Cause);
        Assert.Throws<InputFaultException>(() => Inserter.Run(new InsertionScript(kit, Skin, [InsertionStep.AdvanceCannula(10)]), Vein()));
        Assert.Throws<InputFaultException>(static () => InsertionStep.FeedWire(double.NaN));
        Assert.Throws<InputFaultException>(static () => new InsertionSettings { SpacingMm = 0 });
        Assert.Throws<InputFaultException>(static () => new Sleeve(default, default));
        Assert.Throws<InputFaultException>(static () => new RodProfile([], 0.1));
    }

    private static PathTube Vein() => new PathTube().Then(60, 0, 5).Then(40, 0.7, 9).Then(100, 0, 9).Then(60, -0.6, 12).Then(80, 0.6, 12).Then(300, 0, 11);

    private static InsertionReport Fed(RodProfile wire, double length) => Inserter.Run(
        new InsertionScript(new InsertionKit(wire), Skin, [InsertionStep.FeedWire(length)]), Vein())[0];
}
