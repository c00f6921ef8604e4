using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Course.Tests.Events;

/// <summary>One invented event of each kind with every field filled.</summary>
internal static class Samples
{
    public const string Hash = "0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f";

    private static readonly ImageReference Image = new() { Name = "loop 3", FileSha256 = Hash };

    private static readonly SecondPerson Second = new() { Name = "B", Person = "b" };

    private static readonly PortPlace Place = new() { Landmark = CavalLandmark.Icaj, OffsetCm = -1.5, SdCm = 0.5, IsInferred = true };

    private static readonly IReadOnlyList<Reading> Readings =
    [
        Reading.Of(ObservedQuantity.PumpFlowLPerMin, 4.2, 0.1) with { Method = "display", Remark = "steady" },
        Reading.Of(ObservedQuantity.InletPressureMmHg, -80),
    ];

    public static IReadOnlyList<CourseEvent> All { get; } =
    [
        new CaseSaved { CaseText = "{\n  \"cavaxisCase\": 1\n}\n", BasedOn = 2, Change = "weight" },
        new PlanChosen
        {
            Name = "groin and neck", Configuration = ConfigurationKind.VvFemoralJugular, CaseEntry = 2, Rank = 1, FlowLPerMin = 4.5, Reason = "shortest",
            Cannulae = [new PlannedCannula { Role = CannulaRole.Drainage, Device = "d-1", Route = AccessRoute.FemoralVein, Side = BodySide.Right, DepthCm = 42, DepthLowCm = 40, DepthHighCm = 44 }],
            Steps =
            [
                new PlannedStep
                {
                    Number = 1, Action = "Puncture.", ShowsIt = [new StepView { Words = "ultrasound" }], CannotShowIt = [new StepView { Words = "film" }], HardStop = "Wire seen.",
                    EvidenceAvailable = true, Pitfall = "artery", PredictedPitfall = "loop", Cannula = CannulaRole.Drainage, Phase = Planning.Steps.InsertionPhase.WireFeed,
                },
            ],
        },
        new StepDone { PlanEntry = 3, Step = 1, Action = "Puncture.", View = "ultrasound", Seen = "wire", Image = Image, ConfirmedBy = Second, Deviation = new StepDeviation { What = "left", Reason = "clot" }, Remark = "calm" },
        new StepSkipped { PlanEntry = 3, Step = 1, Action = "Puncture.", Reason = "in already", ConfirmedBy = Second },
        new CannulaPlaced { Cannula = "drainage", Role = CannulaRole.Drainage, Device = "d-1", OuterDiameterFrench = 25, Route = AccessRoute.FemoralVein, Side = BodySide.Left, DepthCm = 41.5, TurnDeg = -10, Remark = "smooth" },
        new PositionRead { Cannula = "drainage", DepthCm = 41, TurnDeg = 5, Tip = Place, ReturnPort = Place, FirstHole = Place, SeenBy = PositionSight.TransoesophagealUltrasound, View = "bicaval", Image = Image, Remark = "clear" },
        new CannulaMoved { Cannula = "drainage", FromDepthCm = 41, DepthCm = 40, TurnDeg = 0, Reason = "chatter", SeenBy = PositionSight.SkinMark, Remark = "sewn" },
        new CannulaRemoved { Cannula = "drainage", Method = RemovalMethod.SkinSuture, ClotOnCannula = true, Remark = "dry" },
        new SupportStarted { Configuration = RunningConfiguration.VvTwoSite, Pump = "p", MembraneLung = "m", Readings = Readings, Remark = "no air" },
        new SupportChanged { Configuration = RunningConfiguration.VavFemoral, Pump = "p", MembraneLung = "m", Reason = "heart" },
        new SupportEnded { Reason = SupportEndReason.Recovered, Remark = "awake" },
        new Observed { Readings = Readings, Import = new ImportOrigin { FileSha256 = Hash, Rows = 10, Line = 2, FileName = "a.csv" }, Remark = "calm" },
        new AnticoagulationSet { Agent = AnticoagulationAgent.Heparin, Dose = 900, DoseUnit = "U/h", Targets = [new TargetRange { Quantity = ObservedQuantity.AntiXaIuPerMl, Low = 0.3, High = 0.5 }], Reason = "day 1" },
        new AnticoagulationChecked { Readings = [Reading.Of(ObservedQuantity.AntiXaIuPerMl, 0.4)], Action = "none" },
        new ImagingDone { Modality = ImagingModality.ComputedTomography, Question = "bleeding?", Finding = "none", Image = Image, IsTakenIn = true, IntoCase = [new CaseFieldFilled { Field = "heart.lvotDiameterMm", Value = 21, Sd = 0.5 }] },
        new ComplicationSeen { Complication = ComplicationKind.LimbIschaemia, Gravity = ComplicationGravity.Treated, Cannula = "return", Side = BodySide.Right, Description = "pale", Action = "perfused" },
        new ComplicationEnded { ComplicationEntry = 4, Gravity = ComplicationGravity.Procedure, Result = "warm" },
        new WeaningStarted { Method = WeaningMethod.FlowSteps, Configuration = RunningConfiguration.VaFemoral, Readings = Readings, Remark = "calm" },
        new WeaningStepped { TrialEntry = 5, FlowLPerMin = 1.5, SweepLPerMin = 1, SweepOxygenFraction = 0.5, MinutesHeld = 15, Readings = [Reading.Of(ObservedQuantity.OutflowVtiCm, 11)], Remark = "calm" },
        new WeaningEnded { TrialEntry = 5, End = WeaningEnd.Completed, Reason = "all steps", FlowLPerMin = 3, SweepLPerMin = 2 },
        new FollowUpPlanned { Item = "duplex", What = "duplex of neck and groin", DueFrom = "2031-02-03T04:05+01:00", DueBy = "2031-02-05T04:05:06.5Z", Reason = "schedule" },
        new FollowUpFound { Item = "duplex", Veins = [new VeinFinding { Vein = FollowUpVein.CommonFemoral, Side = BodySide.Right, Clot = ClotFinding.Partial, Remark = "wall" }], Finding = "leg slim", Treatment = "anticoagulation", Image = Image },
        new OpinionAsked { Pack = "p-1", PackSha256 = Hash, Question = "Which next?", AskedOf = "another centre" },
        new OpinionAnswered { Pack = "p-1", Answer = "Look at the tip.", AnsweredBy = "a colleague", AnswerSha256 = Hash },
        new OutcomeNoted { Outcome = OutcomeKind.SurvivedToDischarge, Remark = "walks" },
        new NoteWritten { Text = "Quiet night." },
        new EntryWithdrawn { Reason = "wrong patient" },
    ];
}
