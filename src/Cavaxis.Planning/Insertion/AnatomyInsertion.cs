using System.Collections.Immutable;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Insertion;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Planning.Insertion;

/// <summary>Brings one cannula over its wire into one anatomy and says what happened.</summary>
internal sealed class AnatomyInsertion
{
    /// <summary>A vein gives this much more room than the device needs, mm.</summary>
    private const double RoomMm = 0.5;

    /// <summary>Length behind the skin on which the tract guides like a sleeve, mm.</summary>
    private const double GuidedMm = 12;

    private const double WholeMm = 3000;

    /// <summary>A wire that is this much longer than its way lies in a loop, mm.</summary>
    private const double LoopMm = 30;

    /// <summary>Coarse enough for two hundred anatomies in a minute.</summary>
    private static readonly InsertionSettings Settings = new()
    {
        SpacingMm = 7,
        IncrementMm = 7,
        AdvanceMm = 14,
        WithdrawalMm = 21,
        Relaxation = new RelaxationSettings { ToleranceN = 1e-3, FrictionToleranceN = 5e-3, WallStiffnessNPerMm = 50, MostSteps = 250, MostRounds = 40 },
    };

    /// <summary>Does it.</summary>
    /// <param name="task">What is inserted.</param>
    /// <param name="shape">The anatomy.</param>
    /// <param name="unknowns">Stiffness and friction.</param>
    public AnatomyInsertion(InsertionTask task, LumenShape shape, InsertionUnknowns unknowns)
    {
        double radius = task.Cannula.OuterDiameterMm / 2;
        Lumen = new CavalLumen(shape, radius + RoomMm);
        SkinTract tract = Lumen.EntryAt(task.Site);
        InsertionScript script = new(
            Kit(unknowns, radius, WholeMm),
            new Sleeve(tract.PointMm, tract.Inward, GuidedMm),
            [
                InsertionStep.FeedWire(task.WireMm(Lumen.Axis)),
                InsertionStep.AdvanceCannula(task.DepthMm),
                InsertionStep.WithdrawIntroducer(WholeMm),
                InsertionStep.WithdrawWire(WholeMm),
            ]);
        Reports = Inserter.Run(script, Lumen, Settings);
        Outcome = Told(task, Lumen, Reports);
    }

    /// <summary>The anatomy, with the tract widened for the cannula.</summary>
    public CavalLumen Lumen { get; }

    /// <summary>Wire, cannula, introducer out, wire out; fewer where it could not be followed to the end.</summary>
    public ImmutableArray<InsertionReport> Reports { get; }

    /// <summary>What happened, in few numbers.</summary>
    public AnatomyOutcome Outcome { get; }

    private static InsertionKit Kit(InsertionUnknowns unknowns, double cannulaRadiusMm, double lengthMm)
    {
        const double WireRadius = WireStiffness.DiameterMm / 2;

        // Torsion of round polymer and steel rods is a little below their bending, GJ = EI/(1 + ν); neither has a curve of its own, so it decides nothing.
        RodSection Piece(double length, double stiffness, double tip, double far) => new(length, stiffness, stiffness / 1.3, tip, far);
        double introducerRadius = Math.Max(WireRadius + 0.3, cannulaRadiusMm - 0.6);
        return new InsertionKit(
            new RodProfile([Piece(WireStiffness.SoftTipMm, unknowns.WireTipNMm2, WireRadius + 0.3, WireRadius), Piece(lengthMm, unknowns.WireNMm2, WireRadius, WireRadius)], unknowns.WireFriction),
            new RodProfile([Piece(lengthMm, unknowns.CannulaNMm2, cannulaRadiusMm, cannulaRadiusMm)], unknowns.CannulaFriction),
            new RodProfile([Piece(InsertionTask.IntroducerLeadMm, unknowns.IntroducerNMm2 / 2, WireRadius + 0.2, introducerRadius), Piece(lengthMm, unknowns.IntroducerNMm2, introducerRadius, introducerRadius)], unknowns.CannulaFriction),
            InsertionTask.IntroducerLeadMm);
    }

    private static AnatomyOutcome Told(InsertionTask task, CavalLumen lumen, ImmutableArray<InsertionReport> reports)
    {
        InsertionReport feed = reports[0];
        InsertionReport? advance = reports.Length > 1 ? reports[1] : null;
        InsertionReport last = reports[^1];
        WireEnd afterFeed = End(task, lumen, feed);
        WireEnd afterAdvance = advance is null ? WireEnd.NotComputed : End(task, lumen, advance);
        LumenSite tip = last.TipMm(Device.Cannula) is Vector3D at ? lumen.SiteOf(at) : LumenSite.Outside;
        InsertionMoment worst = feed.Moments.IsEmpty ? default : feed.Moments.MaxBy(static m => m.TipForceN);
        RodFault? fault = reports.Select(static r => r.Fault).FirstOrDefault(static f => f is not null);
        return new AnatomyOutcome
        {
            AfterFeed = afterFeed,
            AfterAdvance = afterAdvance,
            CannulaTip = tip,
            WrongAt = !IsThere(task, afterFeed) ? InsertionPhase.WireFeed
                : !IsThere(task, afterAdvance) ? InsertionPhase.CannulaAdvance
                : reports.Length == 4 && IsStray(tip) ? InsertionPhase.Removal
                : InsertionPhase.None,
            WireLostMm = advance is null ? 0 : Math.Max(0, Lost(task, lumen, feed, advance)),
            TipForceN = worst.TipForceN,
            TipForceAt = feed.Moments.IsEmpty ? LumenSite.Outside : Inner(lumen, worst.TipMm),
            CannulaForceN = advance is null || advance.Moments.IsEmpty ? 0 : advance.Moments.Max(static m => m.LargestContactN),
            Fault = fault is null ? string.Empty : $"{last.Step.Action}: {fault.Cause}",
            PenetrationMm = reports.Max(static r => r.Moments.IsEmpty ? 0 : r.Moments.Max(static m => m.PenetrationMm)),
            WirePath = feed.Assembly.Rod?.NodesMm ?? [],
            FinalPath = last.Assembly.Rod?.NodesMm ?? [],
        };
    }

    /// <summary>True for an end from which the cannula may go on.</summary>
    internal static bool IsThere(InsertionTask task, WireEnd end) => end == Wanted(task.FromNeck);

    /// <summary>Where the wire ought to end.</summary>
    internal static WireEnd Wanted(bool fromNeck) => fromNeck ? WireEnd.DeepIvc : WireEnd.UpperSvc;

    private static bool IsStray(LumenSite site) => site is LumenSite.RightVentricle or LumenSite.HepaticVein or LumenSite.Appendage
        or LumenSite.Azygos or LumenSite.RenalVein or LumenSite.Outside;

    private static WireEnd End(InsertionTask task, CavalLumen lumen, InsertionReport report)
    {
        if (!report.IsDone || report.TipMm(Device.Wire) is not Vector3D tip)
        {
            return WireEnd.NotComputed;
        }

        return (Inner(lumen, tip), task.FromNeck) switch
        {
            (LumenSite.UpperSvc or LumenSite.NeckVein, false) => WireEnd.UpperSvc,
            (LumenSite.InfrahepaticIvc or LumenSite.InfrarenalIvc or LumenSite.IliofemoralVein, true) => WireEnd.DeepIvc,
            (LumenSite.HepaticVein, _) => WireEnd.HepaticVein,
            (LumenSite.RightVentricle, _) => WireEnd.RightVentricle,
            (LumenSite.Appendage, _) => WireEnd.Appendage,
            (LumenSite.Azygos, _) => WireEnd.Azygos,
            (LumenSite.RenalVein or LumenSite.NeckVein or LumenSite.IliofemoralVein, _) => WireEnd.OtherVein,
            _ => SlackMm(task, lumen, tip, report.Assembly.Depths.WireMm) > LoopMm ? WireEnd.AtrialLoop : WireEnd.Short,
        };
    }

    /// <summary>How much longer the wire is than the way from the skin to the place beside its tip.</summary>
    private static double SlackMm(InsertionTask task, CavalLumen lumen, Vector3D tip, double wireMm)
    {
        double arc = lumen.Trunk.Nearest(tip).ArcMm;
        return wireMm - (task.FromNeck ? arc - lumen.Axis.FromNeck(task.Side, 0) : lumen.Axis.FromGroin(task.Side, 0) - arc);
    }

    /// <summary>A tip that rests on a wall may lie in it by some hundredths of a millimetre: it is looked up a little further in.</summary>
    internal static LumenSite Inner(CavalLumen lumen, Vector3D tip) => lumen.SiteOf(tip - (0.5 * lumen.At(tip).Outward));

    private static double Lost(InsertionTask task, CavalLumen lumen, InsertionReport feed, InsertionReport advance)
    {
        if (feed.TipMm(Device.Wire) is not Vector3D before || advance.TipMm(Device.Wire) is not Vector3D after)
        {
            return 0;
        }

        double drawn = lumen.Trunk.Nearest(before).ArcMm - lumen.Trunk.Nearest(after).ArcMm;
        return task.FromNeck ? drawn : -drawn;
    }
}
