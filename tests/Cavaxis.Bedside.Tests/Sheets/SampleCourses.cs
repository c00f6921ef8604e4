using Cavaxis.Bedside.Courses;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Tests.Sheets;

/// <summary>Invented courses: nothing in it, an ordinary one, and one with more of everything than any page holds.</summary>
internal static class SampleCourses
{
    public const string PatientId = "0123456789abcdef0123456789abcdef";

    public static readonly DateTimeOffset Start = new(2031, 2, 1, 4, 0, 0, TimeSpan.Zero);

    public static readonly DateTimeOffset Now = Start.AddHours(74.5);

    private const string CaseText = """{"cavaxisCase":1,"title":"Invented course","invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80}}""";

    public static CourseReading Empty => new(PatientId, "north", 1, PatientCourse.Empty, [], []);

    public static CourseReading Typical => Read(TypicalEvents());

    public static CourseReading Overfull => Read([.. TypicalEvents(), .. Many()]) with
    {
        Unread = [new UnreadEntry(9_000, "course.of-tomorrow", null, [new InputFault(FaultCode.NotAChoice, "kind", "x", "y", "z")])],
        Spoiled = [77],
    };

    public static CourseReading Read(IEnumerable<(DateTimeOffset At, CourseEvent Event)> events)
    {
        CourseEntry[] entries = [.. events.Select((e, i) => new CourseEntry(i + 2, e.At, e.At.AddMinutes(1), i % 2 == 0 ? "cleo" : "carl", e.Event))];
        return new CourseReading(PatientId, "north", entries.Length + 1, PatientCourse.Of(entries), [], []);
    }

    private static IEnumerable<(DateTimeOffset At, CourseEvent Event)> TypicalEvents()
    {
        yield return (Start.AddHours(-2), new CaseSaved { CaseText = CaseText });
        yield return (Start.AddHours(-1.5), new PlanChosen
        {
            Name = "Femoro-jugular, 25 and 19 Fr",
            Configuration = ConfigurationKind.VvFemoralJugular,
            Rank = 1,
            FlowLPerMin = 4.5,
            Cannulae = [new PlannedCannula { Role = CannulaRole.Drainage, Device = "generic-25", Route = AccessRoute.FemoralVein, Side = BodySide.Right, DepthCm = 41, DepthLowCm = 39, DepthHighCm = 43 }],
            Steps =
            [
                new PlannedStep { Number = 1, Action = "Wire up the right femoral vein.", HardStop = "Wire seen in the right atrium.", ShowsIt = [new StepView { Words = "subcostal long axis" }] },
                new PlannedStep { Number = 2, Action = "Dilate over the wire." },
                new PlannedStep { Number = 3, Action = "Advance the drainage cannula.", HardStop = "Tip seen below the right atrium." },
                new PlannedStep { Number = 4, Action = "Fix the cannula at the skin." },
            ],
        });
        yield return (Start.AddHours(-1), new StepDone { PlanEntry = 3, Step = 1, Action = "Wire up the right femoral vein.", Seen = "wire in the atrium", View = "subcostal long axis", ConfirmedBy = new SecondPerson { Name = "Carl", Person = "carl" } });
        yield return (Start.AddMinutes(-50), new StepDone { PlanEntry = 3, Step = 2, Action = "Dilate over the wire.", Deviation = new StepDeviation { What = "one dilator more", Reason = "scarred skin" } });
        yield return (Start.AddMinutes(-40), new CannulaPlaced { Cannula = "drainage", Role = CannulaRole.Drainage, Device = "generic-25", OuterDiameterFrench = 25, Route = AccessRoute.FemoralVein, Side = BodySide.Right, DepthCm = 41 });
        yield return (Start.AddMinutes(-20), new CannulaPlaced { Cannula = "return", Role = CannulaRole.VenousReturn, OuterDiameterFrench = 19, Route = AccessRoute.Jugular, Side = BodySide.Right, DepthCm = 15 });
        yield return (Start.AddMinutes(-10), new PositionRead { Cannula = "drainage", DepthCm = 41, SeenBy = PositionSight.TransthoracicUltrasound, Tip = new PortPlace { Landmark = CavalLandmark.Icaj, OffsetCm = 0.8, SdCm = 0.4 } });
        yield return (Start, new SupportStarted { Configuration = RunningConfiguration.VvTwoSite, Pump = "generic-pump", MembraneLung = "generic-lung", Readings = [Reading.Of(PumpFlowLPerMin, 4.2), Reading.Of(PumpSpeedPerMin, 3300)] });
        yield return (Start.AddHours(1), new AnticoagulationSet { Agent = AnticoagulationAgent.Heparin, Dose = 900, DoseUnit = "U/h", Targets = [new TargetRange { Quantity = PartialThromboplastinTimeS, Low = 45, High = 60 }] });
        yield return (Start.AddHours(6), new ImagingDone { Modality = ImagingModality.PlainFilm, Finding = "Return cannula as planned; both lungs white." });
        for (int hour = 2; hour <= 74; hour += 2)
        {
            // Flow falls and the inlet becomes more negative from hour 66 on at the same speed.
            double worse = Math.Max(0, hour - 66);
            yield return (Start.AddHours(hour), new Observed
            {
                Readings =
                [
                    Reading.Of(PumpFlowLPerMin, 4.2 - (0.12 * worse)), Reading.Of(PumpSpeedPerMin, 3300), Reading.Of(SweepLPerMin, 5), Reading.Of(SweepOxygenFraction, 1), Reading.Of(InspiredOxygenFraction, 0.5),
                    Reading.Of(InletPressureMmHg, -70 - (8 * worse)), Reading.Of(PreMembranePressureMmHg, 210 - (4 * worse)), Reading.Of(PostMembranePressureMmHg, 180 - (4 * worse)),
                    Reading.Of(RightArmSaturationPercent, 90 - worse), Reading.Of(RightArmPco2MmHg, 42), Reading.Of(RightArmPh, 7.38), Reading.Of(MeanArterialPressureMmHg, 74 - worse),
                    Reading.Of(CentralVenousPressureMmHg, 9 - (0.6 * worse)), Reading.Of(HeartRatePerMin, 95 + (3 * worse)), Reading.Of(LactateMmolPerL, 1.4 + (0.2 * worse)),
                ],
            });
        }

        yield return (Start.AddMinutes((73 * 60) + 36), new Observed
        {
            Readings =
            [
                Reading.Of(PreMembraneSaturationPercent, 74), Reading.Of(PostMembraneSaturationPercent, 100), Reading.Of(PostMembranePo2MmHg, 390), Reading.Of(CentralVenousSaturationPercent, 66),
                Reading.Of(HaemoglobinGPerDl, 9.1), Reading.Of(CardiacOutputLPerMin, 6.5), Reading.Of(PumpFlowLPerMin, 3.4),
            ],
        });
        yield return (Start.AddHours(40), new ComplicationSeen { Complication = ComplicationKind.CannulationSiteBleeding, Gravity = ComplicationGravity.Watched, Side = BodySide.Right, Description = "Oozing at the groin." });
        yield return (Start.AddHours(50), new AnticoagulationChecked { Readings = [Reading.Of(PartialThromboplastinTimeS, 52), Reading.Of(PlateletsGPerL, 110)], Action = "No change." });
    }

    private static IEnumerable<(DateTimeOffset At, CourseEvent Event)> Many()
    {
        string words = string.Join(' ', Enumerable.Repeat("a long finding that goes on and on", 12));
        yield return (Start.AddHours(-1.4), new PlanChosen
        {
            Name = "Second plan",
            Configuration = ConfigurationKind.VvFemoralJugular,
            Steps = [.. Enumerable.Range(1, 40).Select(n => new PlannedStep { Number = n, Action = $"Step with many words, {words}", HardStop = n % 3 == 0 ? $"Evidence {n}: {words}" : null })],
        });
        for (int i = 0; i < 9; i++)
        {
            yield return (Start.AddMinutes(i), new CannulaPlaced { Cannula = $"further cannula with a long name, number {i} {new string('w', 40)}", Role = CannulaRole.DistalPerfusion, Route = AccessRoute.SuperficialFemoralArtery, Side = BodySide.Left, DepthCm = 7 });
            yield return (Start.AddHours(1).AddMinutes(i), new ComplicationSeen { Complication = (ComplicationKind)i, Gravity = ComplicationGravity.LifeThreatening, Description = words });
            yield return (Start.AddHours(2).AddMinutes(i), new ImagingDone { Modality = (ImagingModality)(i % 9), Finding = words });
            yield return (Start.AddHours(3).AddMinutes(i), new AnticoagulationChecked { Readings = [Reading.Of(PartialThromboplastinTimeS, 50 + i), Reading.Of(ActivatedClottingTimeS, 190)], Action = words });
            yield return (Start.AddHours(4).AddMinutes(i), new FollowUpPlanned { Item = $"own-{i}", What = $"Look again at place {i}, {words}", DueFrom = "2031-02-05T00:00:00Z", DueBy = "2031-02-06T00:00:00Z" });
            yield return (Start.AddHours(5).AddMinutes(i), new NoteWritten { Text = $"<script>alert({i})</script> {words}" });
        }

        yield return (Start.AddHours(60), new WeaningStarted { Method = WeaningMethod.SweepSteps, Readings = [Reading.Of(RightArmPo2MmHg, 75), Reading.Of(RightArmPco2MmHg, 41)] });
        foreach (QuantityDefinition quantity in QuantityTable.All)
        {
            for (int minute = 0; minute < 24 * 60; minute += 7)
            {
                double share = 0.5 + (0.3 * Math.Sin(minute / 90.0));
                yield return (Now.AddMinutes(-minute - 1), new Observed { Readings = [Reading.Of(quantity.Quantity, quantity.Low + ((quantity.High - quantity.Low) * share))], Remark = null });
            }
        }
    }
}
