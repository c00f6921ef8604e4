using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Events;
using Cavaxis.Course.Imports;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Course.RunSheets;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests;

namespace Cavaxis.Bedside.Tests.Courses;

/// <summary>Courses over the record, on either database. All people and patients are invented.</summary>
public abstract class CourseRecordsTests : IAsyncLifetime, IDisposable
{
    private const string CaseText = """{"cavaxisCase":1,"title":"Invented 1","invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80}}""";
    private static readonly DateTimeOffset Start = new(2031, 2, 1, 4, 0, 0, TimeSpan.Zero);
    private static readonly Identifier North = Identifier.Of("north");
    private static readonly Person Cleo = Someone("cleo", North, Role.Clinician);
    private static readonly Person Carl = Someone("carl", North, Role.Clinician);
    private static readonly Person Rita = Someone("rita", North, Role.Reader);
    private static readonly Person Sven = Someone("sven", Identifier.Of("south"), Role.Lead);
    private static readonly SecondPerson Second = new() { Name = "Carl", Person = "carl" };

    private static readonly PlanChosen Plan = new()
    {
        Name = "invented",
        Configuration = ConfigurationKind.VvFemoralJugular,
        Steps =
        [
            new PlannedStep { Number = 1, Action = "Wire.", HardStop = "Wire seen.", ShowsIt = [new StepView { Words = "ultrasound" }] },
            new PlannedStep { Number = 2, Action = "Dilate." },
        ],
    };

    private EventStore store = null!;
    private PatientRecords records = null!;
    private CourseRecords courses = null!;
    private string patient = null!;

    public async Task InitializeAsync()
    {
        TickingClock clock = new();
        store = await EventStore.OpenAsync(NewAddress(), clock);
        records = new PatientRecords(store);
        courses = new CourseRecords(records, clock);
        patient = Assert.IsType<CourseWritten>((await courses.AdmitAsync(Cleo, North, CaseText)).Value).Patient;
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing) => store.Dispose();

    /// <summary>A new and empty store.</summary>
    protected abstract StoreAddress NewAddress();

    [Fact]
    public async Task A_patient_is_admitted_with_the_case_which_reads_back_letter_for_letter()
    {
        CourseReading reading = await Read();
        Assert.Equal((CaseText, 2L, "north"), (reading.Course.Case!.Event.CaseText, reading.Version, reading.Programme));
        Assert.Equal(CourseEventTable.WithdrawnText, EventKind.Withdrawn.Text);
    }

    [Fact]
    public async Task A_case_too_long_admits_no_one()
    {
        Assert.IsType<CourseRefused>((await courses.AdmitAsync(Cleo, North, new string('x', EventLimits.CaseText + 1))).Value);
        Assert.Single(await courses.ListAsync(Cleo));
    }

    [Fact]
    public async Task Every_answer_keeps_the_decision_and_who_may_not_write_learns_of_no_fault()
    {
        Observed wrong = new() { Readings = [Reading.Of(ObservedQuantity.PumpFlowLPerMin, 42)] };
        Assert.Equal(AccessDecision.NotThere, (await courses.ReadAsync(Sven, patient)).Decision);
        Assert.Equal(AccessDecision.NotThere, (await courses.ReadAsync(Cleo, "nothing")).Decision);
        Assert.Equal(new PatientAnswer<CourseOutcome>(AccessDecision.NotAllowed), await courses.RecordAsync(Rita, patient, null, new CourseWriting(wrong)));
        Assert.Equal(new PatientAnswer<CourseOutcome>(AccessDecision.NotThere), await courses.RecordAsync(Sven, patient, null, new CourseWriting(wrong)));
        Assert.Equal(AccessDecision.NotAllowed, (await courses.AdmitAsync(Rita, North, " ")).Decision);
        Assert.Equal(AccessDecision.NotAllowed, (await courses.WithdrawAsync(Rita, patient, null, 2, "x")).Decision);
        Assert.Equal(2, (await Read(Rita)).Version);
        Assert.IsType<CourseRefused>((await courses.RecordAsync(Cleo, patient, null, new CourseWriting(wrong))).Value);
    }

    [Fact]
    public async Task Of_two_people_at_once_the_second_is_told_what_the_first_wrote_and_nothing_is_lost()
    {
        CourseReading both = await Read();
        Assert.IsType<CourseWritten>((await courses.RecordAsync(Cleo, patient, both.Version, Flow(4))).Value);
        CourseConflict conflict = Assert.IsType<CourseConflict>((await courses.RecordAsync(Carl, patient, both.Version, Flow(5))).Value);
        Assert.Equal(("cleo", "Pump flow 4 L/min"), (Assert.Single(conflict.Lines).Who, conflict.Lines[0].Text));
        Assert.IsType<CourseWritten>((await courses.RecordAsync(Carl, patient, conflict.Version, Flow(5))).Value);
        Assert.Equal([4, 5], (await Read()).Course.Series[ObservedQuantity.PumpFlowLPerMin].Points.Select(static p => p.Value));
    }

    [Fact]
    public async Task Twenty_writers_who_do_not_mind_the_others_lose_nothing()
    {
        await Task.WhenAll(Enumerable.Range(0, 20).Select(i => courses.RecordAsync(i % 2 == 0 ? Cleo : Carl, patient, null, Flow(i / 4.0, minute: i))));
        Assert.Equal(Enumerable.Range(0, 20).Select(static i => i / 4.0), (await Read()).Course.Series[ObservedQuantity.PumpFlowLPerMin].Points.Select(static p => p.Value));
    }

    [Fact]
    public async Task What_was_put_right_or_withdrawn_no_longer_counts_and_stays_visible()
    {
        long entry = await Write(Flow(4.2));
        long version = await Write(Flow(3, minute: 5));
        Assert.IsType<CourseWritten>((await courses.CorrectAsync(Carl, patient, version, entry, Flow(2.4).Event, Start)).Value);
        Assert.IsType<CourseWritten>((await courses.WithdrawAsync(Carl, patient, version + 1, version, "other bed")).Value);
        PatientCourse course = (await Read()).Course;
        Assert.Equal(2.4, Assert.Single(course.Series[ObservedQuantity.PumpFlowLPerMin].Points).Value);
        Assert.Contains(course.Timeline, static l => l.Text == "Pump flow 2.4 L/min" && l.Earlier.Single() == "Pump flow 4.2 L/min");
        Assert.Contains(course.Timeline, static l => l.IsWithdrawn && l.Text == "Pump flow 3 L/min (withdrawn: other bed)");
    }

    [Fact]
    public async Task What_cannot_be_put_right_is_named()
    {
        Assert.Equal("corrects", await FaultOf(new CourseWriting(Flow(1).Event, Start, 1)));
        await FaultOf(new CourseWriting(Flow(1).Event, Start, 99));
        Assert.Equal("corrects", await FaultOf(new CourseWriting(new EntryWithdrawn { Reason = "x" }, Start)));
        Assert.Equal("occurredAt", await FaultOf(new CourseWriting(Flow(1).Event, new DateTimeOffset(2031, 2, 3, 5, 0, 0, TimeSpan.Zero))));
        Assert.Equal("events[1].readings[0].value", Assert.Single(Assert.IsType<CourseRefused>((await courses.RecordAsync(Cleo, patient, null, Flow(1), Flow(11))).Value).Faults).Field);
        Assert.Equal(2, (await Read()).Version);
    }

    [Fact]
    public async Task A_step_behind_a_hard_stop_is_refused_on_every_way_into_the_record()
    {
        int plan = (int)await Write(new CourseWriting(Plan, Start));
        StepDone wire = new() { PlanEntry = plan, Step = 1, Action = "Wire.", View = "ultrasound", Seen = "wire", ConfirmedBy = Second };
        StepDone dilate = new() { PlanEntry = plan, Step = 2, Action = "Dilate." };
        Assert.Equal("steps[1]", await FaultOf(new CourseWriting(dilate, Start.AddMinutes(2))));
        Assert.Equal("confirmedBy", await FaultOf(new CourseWriting(wire with { ConfirmedBy = null }, Start.AddMinutes(1))));
        Assert.Equal("confirmedBy", await FaultOf(new CourseWriting(wire, Start.AddMinutes(1)), Carl));
        Assert.IsType<CourseWritten>((await courses.RecordAsync(Cleo, patient, plan, new CourseWriting(wire, Start.AddMinutes(1)), new CourseWriting(dilate, Start.AddMinutes(2)))).Value);
        Assert.True((await Read()).Course.RunSheet!.IsThrough);

        // Putting the evidence right does not take it away.
        Assert.Equal("view", await FaultOf(new CourseWriting(wire with { View = null }, Start.AddMinutes(1), plan + 1)));
        Assert.IsType<CourseWritten>((await courses.CorrectAsync(Cleo, patient, null, plan + 1, wire with { Seen = "wire, long" }, Start.AddMinutes(1))).Value);
    }

    [Fact]
    public async Task Two_people_who_confirm_the_same_step_at_once_write_it_once()
    {
        int plan = (int)await Write(new CourseWriting(Plan, Start));
        CourseWriting wire = new(new StepDone { PlanEntry = plan, Step = 1, Action = "Wire.", View = "ultrasound", Seen = "wire", ConfirmedBy = new SecondPerson { Name = "Ben" } }, Start.AddMinutes(1));
        PatientAnswer<CourseOutcome>[] answers = await Task.WhenAll(courses.RecordAsync(Cleo, patient, plan, wire), courses.RecordAsync(Carl, patient, plan, wire));
        Assert.Equal(1, answers.Count(static a => a.Value is CourseWritten));
        Assert.Equal(1, answers.Count(static a => a.Value is CourseConflict));
        Assert.Single((await Read()).Course.All<StepDone>());
    }

    [Fact]
    public async Task A_programme_that_decided_so_does_with_one_person()
    {
        CourseRecords alone = new(records, new TickingClock(), new Dictionary<string, ProgrammeRules> { ["north"] = ProgrammeRules.OnePerson("one doctor at night") });
        int plan = (int)await Write(new CourseWriting(Plan, Start));
        CourseWriting wire = new(new StepDone { PlanEntry = plan, Step = 1, Action = "Wire.", View = "ultrasound", Seen = "wire" }, Start.AddMinutes(1));
        Assert.IsType<CourseRefused>((await courses.RecordAsync(Cleo, patient, null, wire)).Value);
        Assert.IsType<CourseWritten>((await alone.RecordAsync(Cleo, patient, null, wire)).Value);
    }

    [Fact]
    public async Task An_entry_that_this_program_cannot_read_is_told_and_the_rest_is_read()
    {
        EventDraft later = new(EventKind.Of("course.of-a-later-version"), CanonicalJson.Of("{}"));
        EventDraft odd = new(EventKind.Of("course.observed"), CanonicalJson.Of("""{"readings":[{"quantity":"pumpFlowLPerMin","value":99}]}"""), Start, 2);
        await records.WriteAsync(Cleo, patient, null, later, odd);
        CourseReading reading = await Read();
        Assert.Equal([(3L, "course.of-a-later-version", null), (4L, "course.observed", 2L)], reading.Unread.Select(static u => (u.Sequence, u.Kind, u.Corrects)));
        Assert.Equal(FaultCode.OutOfRange, Assert.Single(reading.Unread[1].Faults).Code);
        Assert.NotNull(reading.Course.Case);
        Assert.EndsWith("not everything in this record could be read", Assert.Single(await courses.ListAsync(Cleo)).Line, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_tells_each_patient_in_one_line_those_on_support_first()
    {
        await Write(new CourseWriting(new SupportStarted { Configuration = RunningConfiguration.VvTwoSite }, Start));
        await Write(new CourseWriting(new ComplicationSeen { Complication = ComplicationKind.Haemolysis, Gravity = ComplicationGravity.Watched }, Start.AddHours(1)));
        string other = Assert.IsType<CourseWritten>((await courses.AdmitAsync(Cleo, North, "not a case yet")).Value).Patient;
        IReadOnlyList<PatientSummary> list = await courses.ListAsync(Rita);
        Assert.Equal([patient, other], list.Select(static s => s.Patient));
        Assert.Equal(["Invented 1 · 40 years, male · on support, day 3 · 1 open complication", "(no title) · not on support"], list.Select(static s => s.Line));
        Assert.Contains(list[0].Last!.Text, new[] { "Complication: haemolysis, watched", "Case saved" });
        Assert.Empty(await courses.ListAsync(Sven));
    }

    [Fact]
    public async Task The_good_rows_of_a_file_are_taken_in_once_and_a_second_time_is_told()
    {
        string rows = string.Concat(Enumerable.Range(0, 2500).Select(static i => string.Create(CultureInfo.InvariantCulture, $"{Start.AddSeconds(i * 20):yyyy-MM-ddTHH:mm:ssZ},4.{i % 10}\n")));
        ObservationImport import = ObservationCsv.Read(Encoding.UTF8.GetBytes($"time,pumpFlowLPerMin\nno time,4\n{rows}"), "monitor.csv");
        FileImports files = new(courses);
        Assert.Equal((1, 2500), (import.FaultCount, import.Good.Count));
        Assert.Equal(new PatientAnswer<CourseOutcome>(AccessDecision.NotAllowed), await files.TakeInAsync(Rita, patient, import));
        Assert.Equal(new PatientAnswer<CourseOutcome>(AccessDecision.NotThere), await files.TakeInAsync(Sven, patient, import));

        // The first part of it, as if the machine had gone down in between.
        await courses.RecordAsync(Cleo, patient, null, [.. import.Good.Take(100).Select(r => new CourseWriting(import.EventOf(r), r.At))]);
        Assert.IsType<CourseWritten>((await files.TakeInAsync(Cleo, patient, import)).Value);
        PatientCourse course = (await Read()).Course;
        Assert.Equal(2500, course.Series[ObservedQuantity.PumpFlowLPerMin].Points.Count);
        Assert.Equal((2500, 2500, "monitor.csv"), course.FindImport(import.FileSha256) is { } file ? (file.RowsStanding, file.RowsDeclared, file.FileName) : default);

        Assert.Equal(FaultCode.Contradiction, Assert.Single(Assert.IsType<CourseRefused>((await files.TakeInAsync(Carl, patient, import)).Value).Faults).Code);
        Assert.Equal(new PatientAnswer<CourseOutcome>(AccessDecision.NotAllowed), await files.TakeInAsync(Rita, patient, import));
        Assert.Equal(FaultCode.MissingField, Assert.Single(Assert.IsType<CourseRefused>((await files.TakeInAsync(Carl, patient, ObservationCsv.Read("time"u8, "a.csv"))).Value).Faults).Code);
        Assert.Equal(2502, (await Read()).Version);
    }

    [Fact]
    public async Task A_series_read_by_itself_is_that_of_the_whole_course_whatever_was_put_right()
    {
        await courses.RecordAsync(Cleo, patient, null, [.. Enumerable.Range(0, 120).Select(static i => Flow(3 + (i * 0.01), i))]);
        await courses.RecordAsync(Cleo, patient, null, new CourseWriting(new Observed { Readings = [Reading.Of(ObservedQuantity.LactateMmolPerL, 2)] }, Start.AddMinutes(50)));
        await courses.RecordAsync(Cleo, patient, null, new CourseWriting(new NoteWritten { Text = "pumpFlowLPerMin" }, Start.AddMinutes(51)));
        await courses.WithdrawAsync(Cleo, patient, null, 45, "wrong patient");
        await courses.CorrectAsync(Cleo, patient, null, 46, new Observed { Readings = [Reading.Of(ObservedQuantity.LactateMmolPerL, 3)] }, Start.AddMinutes(43));
        await courses.CorrectAsync(Cleo, patient, null, 10, Flow(9, 60).Event, Start.AddMinutes(60));
        await courses.CorrectAsync(Cleo, patient, null, 47, Flow(8, 110).Event, Start.AddMinutes(110));
        await courses.CorrectAsync(Cleo, patient, null, 123, Flow(7, 55).Event, Start.AddMinutes(55));
        await courses.CorrectAsync(Cleo, patient, null, 48, new NoteWritten { Text = "no reading at all" }, Start.AddMinutes(45));
        (DateTimeOffset from, DateTimeOffset before) = (Start.AddMinutes(40), Start.AddMinutes(80));
        static IEnumerable<(DateTimeOffset, double)> Of(IEnumerable<SeriesPoint> points) => points.Select(static p => (p.At, p.Value)).Order();
        SeriesReading series = (await courses.SeriesAsync(Rita, patient, ObservedQuantity.PumpFlowLPerMin, from, before)).Value!;
        Assert.Equal(Of((await Read()).Course.Series[ObservedQuantity.PumpFlowLPerMin].Between(from, before)), Of(series.Points));
        Assert.Equal(38, series.Points.Count);
        Assert.Contains(series.Points, static p => p.Value == 9);
        Assert.Contains(series.Points, static p => p.Value == 7);
        Assert.Empty((await courses.SeriesAsync(Rita, patient, ObservedQuantity.UrineMlPerH, from, before)).Value!.Points);
        Assert.Equal(AccessDecision.NotThere, (await courses.SeriesAsync(Sven, patient, ObservedQuantity.PumpFlowLPerMin, from, before)).Decision);
    }

    [Fact]
    public async Task A_line_of_the_list_tells_the_last_reading_although_it_reads_only_a_few()
    {
        await courses.RecordAsync(Cleo, patient, null, [.. Enumerable.Range(0, 60).Select(static i => Flow(3 + (i * 0.01)) with { OccurredAt = Start.AddDays(2).AddMinutes(6).AddSeconds(i) })]);
        Assert.Equal(("Pump flow 3.59 L/min", 62L), (await courses.ListAsync(Rita)).Select(static s => (s.Last!.Text, s.Version)).Single());

        // Every one of the last readings is taken back: the one that stands is further back than the few.
        await courses.RecordAsync(Cleo, patient, null, [.. Enumerable.Range(23, 40).Select(static entry => new CourseWriting(new EntryWithdrawn { Reason = "wrong patient" }, null, entry))]);
        PatientSummary told = Assert.Single(await courses.ListAsync(Rita));
        Assert.Equal(((await Read()).Course.Timeline.Last(static l => !l.IsWithdrawn).Text, 102L), (told.Last!.Text, told.Version));
    }

    private static CourseWriting Flow(double litres, int minute = 0) => new(new Observed { Readings = [Reading.Of(ObservedQuantity.PumpFlowLPerMin, litres)] }, Start.AddMinutes(minute));

    private static Person Someone(string id, Identifier programme, Role role) => new(
        Identifier.Of(id), id, ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal).Add(programme.Text, role), true, null, 1);

    private async Task<CourseReading> Read(Person? person = null) => (await courses.ReadAsync(person ?? Cleo, patient)).Value!;

    private async Task<long> Write(CourseWriting writing) => Assert.IsType<CourseWritten>((await courses.RecordAsync(Cleo, patient, null, writing)).Value).Version;

    private async Task<string> FaultOf(CourseWriting writing, Person? person = null) =>
        Assert.Single(Assert.IsType<CourseRefused>((await courses.RecordAsync(person ?? Cleo, patient, null, writing)).Value).Faults).Field;
}
