using System.Collections.Immutable;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Course.Events;
using Cavaxis.Course.Outcomes;
using Cavaxis.Planning.Case;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests;

namespace Cavaxis.Bedside.Tests.Programmes;

/// <summary>A programme read for whoever may. Everyone is invented.</summary>
public sealed class ProgrammeCoursesTests : IAsyncLifetime, IDisposable
{
    private static readonly DateTimeOffset Start = new(2031, 1, 3, 4, 0, 0, TimeSpan.Zero);
    private static readonly Person Lena = Someone("lena", ("north", Role.Lead), ("south", Role.Clinician));
    private static readonly Person Sven = Someone("sven", ("south", Role.Lead));

    private readonly TemporaryFolder folder = new();
    private EventStore store = null!;
    private PatientRecords records = null!;
    private CourseRecords courses = null!;
    private ProgrammeCourses programmes = null!;

    public async Task InitializeAsync()
    {
        TickingClock clock = new();
        store = await EventStore.OpenAsync(StoreAddress.Of(folder.File("store.db")), clock);
        records = new PatientRecords(store);
        courses = new CourseRecords(records, clock);
        programmes = new ProgrammeCourses(records, courses, clock);
        await AdmitAsync(Lena, "north", "null", new SupportStarted { Configuration = RunningConfiguration.VvTwoSite });
        await AdmitAsync(Lena, "north", "null");
        await AdmitAsync(
            Lena, "north", "\"arrest\"", new SupportStarted { Configuration = RunningConfiguration.VaFemoral }, new ComplicationSeen { Complication = ComplicationKind.LimbIschaemia, Gravity = ComplicationGravity.Procedure },
            new SupportEnded { Reason = SupportEndReason.Recovered }, new OutcomeNoted { Outcome = OutcomeKind.SurvivedToDischarge });
        await AdmitAsync(Sven, "south", "null", new SupportStarted { Configuration = RunningConfiguration.VvTwoSite }, new SupportEnded { Reason = SupportEndReason.Died });
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        store.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task Finished_courses_are_counted_and_the_others_named_with_their_reason()
    {
        List<ProgrammeProgress> told = [];
        ProgrammeReading north = (await programmes.ReadAsync(Lena, "north", new Told(told.Add))).Value!;
        ProgrammeCase one = Assert.Single(north.Cases);
        Assert.Equal((SupportKind.Resuscitation, 40.0, new DateOnly(2031, 1, 3)), (one.Support, one.AgeYears, one.BeganOn));
        Assert.Equal((true, true, null), (one.Of(CountedOutcome.SurvivedToDischarge), one.Of(CountedOutcome.LimbIschaemia), one.Of(CountedOutcome.VenousThrombosis)));
        Assert.Equal((1, 1, 0, 0), (north.LeftOut(LeftOutReason.OnSupport), north.LeftOut(LeftOutReason.NotBegun), north.LeftOut(LeftOutReason.NoAge), north.Incomplete));
        Assert.Equal([new(1, 3), new(2, 3), new ProgrammeProgress(3, 3)], told);
        Assert.Equal(["limb ischaemia (procedure)"], Assert.Single(north.Courses, static c => c.Case is not null).Row.Complications);
    }

    [Fact]
    public async Task A_role_that_may_not_is_refused_and_a_programme_of_others_is_none()
    {
        Assert.Equal(["north"], ProgrammeCourses.Of(Lena));
        Assert.Equal(AccessDecision.NotAllowed, (await programmes.ReadAsync(Lena, "south")).Decision);
        foreach (Role role in new[] { Role.Reader, Role.Clinician, Role.Administrator })
        {
            PatientAnswer<ProgrammeReading> answer = await programmes.ReadAsync(Someone("rita", ("north", role)), "north");
            Assert.Equal((AccessDecision.NotAllowed, null), (answer.Decision, answer.Value));
        }

        foreach (string programme in new[] { "north", "nowhere", "", "../north", "NORTH" })
        {
            Assert.Equal(AccessDecision.NotThere, (await programmes.ReadAsync(Sven, programme)).Decision);
        }
    }

    [Fact]
    public async Task Each_reading_stands_in_the_audit_of_the_programme_and_no_other_programme_is_opened()
    {
        await programmes.ReadAsync(Lena, "north");
        Assert.Equal(3, (await records.AuditOfAsync(Lena, Identifier.Of("north"))).Value!.Count);
        Assert.Empty((await records.AuditOfAsync(Sven, Identifier.Of("south"))).Value!);
    }

    [Fact]
    public async Task A_course_whose_case_has_faults_is_left_out_by_name_and_one_with_an_earlier_sound_case_is_not()
    {
        string patient = Assert.IsType<CourseWritten>((await courses.AdmitAsync(Lena, Identifier.Of("north"), "{}")).Value).Patient;
        await WriteAsync(Lena, patient, new SupportStarted { Configuration = RunningConfiguration.VavFemoral }, new SupportEnded { Reason = SupportEndReason.Other });
        Assert.Equal(1, (await programmes.ReadAsync(Lena, "north")).Value!.LeftOut(LeftOutReason.NoAge));
        await WriteAsync(Lena, patient, new CaseSaved { CaseText = Case("null") }, new CaseSaved { CaseText = "{}" });
        ProgrammeReading after = (await programmes.ReadAsync(Lena, "north")).Value!;
        Assert.Equal((0, 2), (after.LeftOut(LeftOutReason.NoAge), after.Cases.Count));
        Assert.Contains(after.Cases, static c => c.Support == SupportKind.VenoArterialVenous);
    }

    private static string Case(string goal) =>
        $$"""{"cavaxisCase":1,"title":"Invented","invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80},"support":{{(goal == "null" ? "{}" : $$"""{"goal":{{goal}}}""")}}}""";

    private static Person Someone(string id, params (string Programme, Role Role)[] roles) =>
        new(Identifier.Of(id), id, roles.ToImmutableSortedDictionary(static r => r.Programme, static r => r.Role, StringComparer.Ordinal), true, null, 1);

    private async Task AdmitAsync(Person person, string programme, string goal, params CourseEvent[] events) =>
        await WriteAsync(person, Assert.IsType<CourseWritten>((await courses.AdmitAsync(person, Identifier.Of(programme), Case(goal))).Value).Patient, events);

    private async Task WriteAsync(Person person, string patient, params CourseEvent[] events)
    {
        for (int i = 0; i < events.Length; i++)
        {
            Assert.IsType<CourseWritten>((await courses.RecordAsync(person, patient, null, new CourseWriting(events[i], Start.AddHours(i)))).Value);
        }
    }

    private sealed class Told(Action<ProgrammeProgress> tell) : IProgress<ProgrammeProgress>
    {
        public void Report(ProgrammeProgress value) => tell(value);
    }
}
