using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Tests.Events;
using CsCheck;

namespace Cavaxis.Course.Tests.Patients;

public class PatientCourseTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);

    /// <summary>Entries numbered in order; events, times, corrections and withdrawals by chance. Times collide often.</summary>
    private static readonly Gen<CourseEntry[]> Histories =
        Gen.Select(Gen.Int[0, Samples.All.Count - 1], Gen.Int[0, 20], Gen.Int[0, 9], Gen.Int[0, 1000], Gen.Double[1, 5]).Array[0, 60]
            .Select(static rows => rows.Select(static (row, i) =>
            {
                (int kind, int minute, int chance, int which, double flow) = row;
                bool corrects = i > 0 && chance < 3;
                CourseEvent happened = Samples.All[kind] switch
                {
                    EntryWithdrawn when !corrects => new NoteWritten { Text = "calm" },
                    Observed => Flow(flow),
                    CourseEvent other => other,
                };
                return new CourseEntry(i + 1, Start.AddMinutes(minute), Start.AddHours(1).AddMinutes(i), "a", happened, corrects ? (which % i) + 1 : null);
            }).ToArray());

    [Fact]
    public void The_course_is_the_same_however_its_entries_come_in_parts_and_in_any_order() =>
        Gen.Select(Histories, Gen.Int[0, 60], Gen.Int[0, int.MaxValue]).Sample(static (entries, cut, seed) =>
        {
            PatientCourse whole = PatientCourse.Of(entries);
            int at = Math.Min(cut, entries.Length);
            AssertSame(whole, PatientCourse.Empty.With(entries[..at]).With(entries[at..]));
            AssertSame(whole, PatientCourse.Of(entries[at..]).With(entries));
            CourseEntry[] shuffled = [.. entries];
            new Random(seed).Shuffle(shuffled);
            AssertSame(whole, shuffled.Aggregate(PatientCourse.Empty, static (course, entry) => course.With([entry])));
        }, iter: 200);

    [Fact]
    public void A_series_holds_what_stands_by_when_it_was_read_however_late_it_was_written_down() =>
        Histories.Sample(static entries =>
        {
            PatientCourse course = PatientCourse.Of(entries);
            double[] expected = [.. course.Entries.Where(static e => !e.IsWithdrawn && e.Now.Event is Observed)
                .OrderBy(static e => e.Now.OccurredAt).ThenBy(static e => e.Sequence)
                .Select(static e => ((Observed)e.Now.Event).Readings[0].Value)];
            double[] found = course.Series.TryGetValue(ObservedQuantity.CardiacOutputLPerMin, out QuantitySeries? series) ? [.. series.Points.Select(static p => p.Value)] : [];
            Assert.Equal(expected, found);
        }, iter: 300);

    [Fact]
    public void Every_entry_is_seen_once_whether_it_stands_was_put_right_or_withdrawn() =>
        Histories.Sample(static entries =>
        {
            PatientCourse course = PatientCourse.Of(entries);
            Assert.Equal(entries.Length, course.Entries.Sum(static e => 1 + e.Corrections.Count));
            Assert.Equal(course.Entries.Count, course.Timeline.Count);
            Assert.Equal(course.Entries.Count(static e => e.IsWithdrawn), course.Timeline.Count(static l => l.IsWithdrawn));
            Assert.All(course.Timeline, static l => Assert.DoesNotContain('\n', l.Text));
            Assert.Equal(entries.Length, course.Version);
        }, iter: 300);

    [Fact]
    public void Order_of_writing_down_does_not_matter_to_a_series_only_when_it_was_read() =>
        Gen.Select(Gen.Double[1, 5].Array[2, 30], Gen.Int[0, int.MaxValue]).Sample(static (flows, seed) =>
        {
            int[] order = [.. Enumerable.Range(0, flows.Length)];
            new Random(seed).Shuffle(order);
            PatientCourse course = PatientCourse.Of(order.Select((which, i) => new CourseEntry(i + 1, Start.AddMinutes(which), Start.AddHours(2), "a", Flow(flows[which]))));
            Assert.Equal(flows, course.Series[ObservedQuantity.CardiacOutputLPerMin].Points.Select(static p => p.Value));
        }, iter: 200);

    [Fact]
    public void A_correction_takes_the_place_of_what_it_corrects_and_the_earlier_one_stays_visible()
    {
        PatientCourse course = PatientCourse.Of([Entry(1, 0, Flow(40)), Entry(2, 1, Flow(4), corrects: 1)]);
        Assert.Equal(4, Assert.Single(course.Series[ObservedQuantity.CardiacOutputLPerMin].Points).Value);
        TimelineLine line = Assert.Single(course.Timeline);
        Assert.Equal(("Output of the heart 4 L/min", "Output of the heart 40 L/min"), (line.Text, Assert.Single(line.Earlier)));
        Assert.Equal((1, Start.AddMinutes(1)), (line.Sequence, line.OccurredAt));
    }

    [Fact]
    public void What_was_withdrawn_does_not_count_and_says_why()
    {
        PatientCourse course = PatientCourse.Of([Entry(1, 0, Flow(4)), Entry(2, 9, new EntryWithdrawn { Reason = "other patient" }, corrects: 1)]);
        Assert.Empty(course.Series);
        TimelineLine line = Assert.Single(course.Timeline);
        Assert.True(line.IsWithdrawn);
        Assert.Equal("Output of the heart 4 L/min (withdrawn: other patient)", line.Text);
        Assert.Equal(Start, line.OccurredAt);
    }

    [Fact]
    public void The_case_in_force_is_the_one_saved_last_even_where_an_older_one_was_corrected_later()
    {
        PatientCourse course = PatientCourse.Of(
        [
            Entry(1, 0, new CaseSaved { CaseText = "first" }), Entry(2, 1, new CaseSaved { CaseText = "second", BasedOn = 1 }), Entry(3, 2, new CaseSaved { CaseText = "first, mended" }, corrects: 1),
        ]);
        Assert.Equal("second", course.Case!.Event.CaseText);
        Assert.Equal("first, mended", course.Cases[0].Event.CaseText);
    }

    [Fact]
    public void A_cannula_lies_where_it_was_last_written_down_to_lie()
    {
        PatientCourse course = PatientCourse.Of(
        [
            Entry(1, 0, Placed("drainage", 40)),
            Entry(2, 5, new CannulaMoved { Cannula = "drainage", FromDepthCm = 41, DepthCm = 39, Reason = "chatter" }),
            Entry(3, 3, new PositionRead { Cannula = "drainage", DepthCm = 41, SeenBy = PositionSight.PlainFilm }),
            Entry(4, 4, new PositionRead { Cannula = "nothing", DepthCm = 11, SeenBy = PositionSight.PlainFilm }),
        ]);
        LyingCannula drainage = Assert.Single(course.CannulaeIn);
        Assert.Equal((39, Start.AddMinutes(5)), (drainage.DepthCm, drainage.DepthAt));
        Assert.Equal(3, drainage.LastImaged!.Sequence);

        PatientCourse later = course.With([Entry(5, 9, new CannulaRemoved { Cannula = "drainage", Method = RemovalMethod.SkinSuture }), Entry(6, 10, Placed("drainage", 30))]);
        Assert.Equal(2, later.Cannulae.Count);
        Assert.Equal(30, Assert.Single(later.CannulaeIn).DepthCm);
    }

    [Fact]
    public void A_trial_of_weaning_gathers_its_steps_by_when_they_happened_and_its_flow_counts_in_the_series()
    {
        PatientCourse course = PatientCourse.Of(
        [
            Entry(1, 0, new WeaningStarted { Method = WeaningMethod.FlowSteps }), Entry(2, 1, new WeaningStarted { Method = WeaningMethod.FlowSteps, Remark = "again" }, corrects: 1),
            Entry(3, 20, new WeaningStepped { TrialEntry = 1, FlowLPerMin = 1.5 }), Entry(4, 10, new WeaningStepped { TrialEntry = 2, FlowLPerMin = 2.5 }),
            Entry(5, 30, new WeaningEnded { TrialEntry = 1, End = WeaningEnd.Completed }), Entry(6, 31, new WeaningStepped { TrialEntry = 99, FlowLPerMin = -0.5 }),
        ]);
        WeaningTrialLog trial = Assert.Single(course.WeaningTrials);
        Assert.Equal([2.5, 1.5], trial.Steps.Select(static s => s.Event.FlowLPerMin!.Value));
        Assert.NotNull(trial.Ended);
        Assert.Equal([2.5, 1.5], course.Series[ObservedQuantity.PumpFlowLPerMin].Points.Select(static p => p.Value));
    }

    [Fact]
    public void Support_runs_from_its_start_to_its_end()
    {
        PatientCourse course = PatientCourse.Of([Entry(1, 60, new SupportEnded { Reason = SupportEndReason.Recovered }), Entry(2, 0, (CourseEvent)Samples.All.OfType<SupportStarted>().Single())]);
        Assert.Null(course.Running);
        Assert.Equal(TimeSpan.FromHours(1), Assert.Single(course.Runs).Lasted(Start.AddDays(3)));
    }

    [Fact]
    public void A_file_that_was_taken_in_is_known_by_its_hash_until_its_rows_are_withdrawn()
    {
        PatientCourse course = PatientCourse.Of([Entry(1, 0, Samples.All.OfType<Observed>().Single())]);
        Assert.Equal((1, 10), (course.FindImport(Samples.Hash)!.RowsStanding, course.FindImport(Samples.Hash)!.RowsDeclared));
        Assert.Null(course.FindImport("other"));
        Assert.Null(course.With([Entry(2, 1, new EntryWithdrawn { Reason = "wrong bed" }, corrects: 1)]).FindImport(Samples.Hash));
    }

    [Fact]
    public void Each_kind_of_event_has_a_line_of_words() => Assert.All(Samples.All, static e => Assert.InRange(TimelineWords.Of(e).Length, 5, 600));

    [Theory]
    [InlineData("course.position-read", "Position of \"drainage\" by transoesophageal ultrasound, 41 cm at the skin, turned 5°, tip 1.5 cm above ICAJ (inferred), return port 1.5 cm above ICAJ (inferred), first hole 1.5 cm above ICAJ (inferred): clear")]
    [InlineData("course.follow-up-found", "Follow-up: right common femoral vein: partial thrombus; leg slim; treatment: anticoagulation")]
    [InlineData("course.support-started", "Support started, veno-venous through two sites: pump flow 4.2 ± 0.1 L/min, pressure before the pump −80 mmHg: no air")]
    public void Words_name_value_unit_and_place(string kind, string words) =>
        Assert.Equal(words, TimelineWords.Of(Samples.All.Single(s => CourseEventTable.Of(s).Text == kind)));

    private static CannulaPlaced Placed(string name, double depthCm) => new() { Cannula = name, Role = Planning.Configurations.CannulaRole.Drainage, DepthCm = depthCm };

    private static Observed Flow(double litres) => new() { Readings = [Reading.Of(ObservedQuantity.CardiacOutputLPerMin, litres)] };

    private static CourseEntry Entry(long sequence, int minute, CourseEvent happened, long? corrects = null) =>
        new(sequence, Start.AddMinutes(minute), Start.AddHours(sequence), "a", happened, corrects);

    private static void AssertSame(PatientCourse one, PatientCourse other)
    {
        Assert.Equal(one.Version, other.Version);
        Assert.Equal(one.Timeline.Select(Shown), other.Timeline.Select(Shown));
        Assert.Equal(one.Series.Keys.Order(), other.Series.Keys.Order());
        Assert.All(one.Series, s => Assert.Equal(s.Value.Points, other.Series[s.Key].Points));
        Assert.Equal((one.Case, one.Plan, one.Outcome, one.Running?.Started), (other.Case, other.Plan, other.Outcome, other.Running?.Started));
        Assert.Equal(one.Cannulae.Select(static c => (c.Placed, c.DepthCm, c.Removed, c.Positions.Count)), other.Cannulae.Select(static c => (c.Placed, c.DepthCm, c.Removed, c.Positions.Count)));
        Assert.Equal(one.WeaningTrials.Select(static t => (t.Started, t.Steps.Count, t.Ended)), other.WeaningTrials.Select(static t => (t.Started, t.Steps.Count, t.Ended)));
        Assert.Equal(one.Complications, other.Complications);
        Assert.Equal(one.Imports, other.Imports);
    }

    private static (long, DateTimeOffset, string, string, bool) Shown(TimelineLine line) => (line.Sequence, line.OccurredAt, line.Text, string.Join('|', line.Earlier), line.IsWithdrawn);
}
