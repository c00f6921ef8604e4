using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.FollowUp;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>Complications, anticoagulation, imaging, follow-up, opinions and outcome.</summary>
internal static class LogBlocks
{
    /// <summary>Complications.</summary>
    public static IEnumerable<ReportBlock> Complications(PatientCourse course) => Titled("Complications", course.Complications.Count, () => new Table(
        "Complications", [new("seen (UTC)"), new("what"), new("gravity"), new("description and action"), new("end"), new("by")],
        [.. course.Complications.Select(static c => (IReadOnlyList<string>)[
            SheetWords.Time(c.Seen.OccurredAt), $"{SheetWords.Name(c.Seen.Event.Complication)}{(c.Seen.Event.Side is { } side ? $", {PlainWords.Side(side)}" : string.Empty)}{(c.Seen.Event.Cannula is null ? string.Empty : $", {c.Seen.Event.Cannula}")}", SheetWords.Name(c.Gravity),
            $"{c.Seen.Event.Description}{(c.Seen.Event.Action is null ? string.Empty : $" Done: {c.Seen.Event.Action}")}", c.Ended is null ? "OPEN" : $"{SheetWords.Time(c.Ended.OccurredAt)}: {c.Ended.Event.Result}", c.Seen.Who])]));

    /// <summary>Anticoagulation.</summary>
    public static IEnumerable<ReportBlock> Anticoagulation(PatientCourse course)
    {
        (DateTimeOffset At, IReadOnlyList<string> Cells)[] log =
        [
            .. course.All<AnticoagulationSet>().Select(static s => (s.OccurredAt, (IReadOnlyList<string>)[SheetWords.Time(s.OccurredAt), "set", Set(s.Event), s.Who])),
            .. course.All<AnticoagulationChecked>().Select(static c => (c.OccurredAt, (IReadOnlyList<string>)[SheetWords.Time(c.OccurredAt), "checked", $"{string.Join(", ", c.Event.Readings.Select(TimelineWords.Of))}{SheetWords.After(c.Event.Action)}", c.Who])),
        ];
        return Titled("Anticoagulation", log.Length, () => new Table("Set and checked", [new("time (UTC)"), new("what"), new("particulars"), new("by")], [.. log.OrderBy(static l => l.At).Select(static l => l.Cells)]));
    }

    /// <summary>Imaging.</summary>
    public static IEnumerable<ReportBlock> Imaging(PatientCourse course) => Titled("Imaging", course.All<ImagingDone>().Count, () => new Table(
        "Examinations", [new("time (UTC)"), new("kind"), new("asked"), new("found"), new("image"), new("by")],
        [.. course.All<ImagingDone>().Select(static i => (IReadOnlyList<string>)[SheetWords.Time(i.OccurredAt), SheetWords.Name(i.Event.Modality), i.Event.Question ?? string.Empty, i.Event.Finding, i.Event.Image?.Name ?? string.Empty, i.Who])]));

    /// <summary>Follow-up: what is due, and what was found.</summary>
    public static IEnumerable<ReportBlock> FollowUp(PatientCourse course, DateTimeOffset now)
    {
        IReadOnlyList<DueItem> due = FollowUpPlan.Of(course);
        yield return new Heading(2, "Follow-up");
        yield return due.Count == 0
            ? new Paragraph("Nothing is due by this record; the schedule begins when a cannula is taken out.")
            : new Table(
                "Schedule", [new("what"), new("from (UTC)"), new("by (UTC)"), new("state"), new("why")],
                [.. due.Select(d => (IReadOnlyList<string>)[d.What, SheetWords.Time(d.From), SheetWords.Time(d.By), SheetWords.Name(d.At(now)), d.Item is { } item ? $"{item.Rationale} Timing: {item.TimingSource}" : "planned by the team"])]);
        IReadOnlyList<Logged<FollowUpFound>> found = course.All<FollowUpFound>();
        if (found.Count > 0)
        {
            yield return new Table(
                "Found", [new("time (UTC)"), new("veins"), new("finding"), new("treatment"), new("by")],
                [.. found.Select(static f => (IReadOnlyList<string>)[
                    SheetWords.Time(f.OccurredAt), string.Join("; ", f.Event.Veins.Select(static v => $"{(v.Side is { } side ? PlainWords.Side(side) + " " : string.Empty)}{SheetWords.Name(v.Vein)}: {SheetWords.Name(v.Clot)}")), f.Event.Finding ?? string.Empty, f.Event.Treatment ?? string.Empty, f.Who])]);
        }
    }

    /// <summary>Second opinions.</summary>
    public static IEnumerable<ReportBlock> Opinions(PatientCourse course)
    {
        string[] lines =
        [
            .. course.All<OpinionAsked>().Select(static o => $"Asked {SheetWords.Time(o.OccurredAt)} by {o.Who}{(o.Event.AskedOf is null ? string.Empty : $" of {o.Event.AskedOf}")}: {o.Event.Question}"),
            .. course.All<OpinionAnswered>().Select(static o => $"Answered {SheetWords.Time(o.OccurredAt)}{(o.Event.AnsweredBy is null ? string.Empty : $" by {o.Event.AnsweredBy}")}: {o.Event.Answer}"),
        ];
        return Titled("Second opinions", lines.Length, () => new BulletList(lines));
    }

    /// <summary>Outcome.</summary>
    public static IEnumerable<ReportBlock> Outcome(PatientCourse course) => Titled("Outcome", course.All<OutcomeNoted>().Count, () => new BulletList(
        [.. course.All<OutcomeNoted>().Select(static o => $"{SheetWords.Time(o.OccurredAt)} {SheetWords.Name(o.Event.Outcome)}{SheetWords.After(o.Event.Remark)} (written down by {o.Who})")]));

    private static IEnumerable<ReportBlock> Titled(string title, int count, Func<ReportBlock> block)
    {
        yield return new Heading(2, title);
        yield return count == 0 ? new Paragraph("None was written down.") : block();
    }

    private static string Set(AnticoagulationSet set)
    {
        string targets = string.Concat(set.Targets.Select(static t => $", {QuantityTable.Of(t.Quantity).Words} {SheetWords.Number(t.Low)} to {SheetWords.Number(t.High)} {SheetWords.Unit(t.Quantity)}"));
        return $"{SheetWords.Name(set.Agent)}{(set.Dose is double dose ? $" {SheetWords.Number(dose)} {set.DoseUnit}" : string.Empty)}{targets}{SheetWords.After(set.Reason)}";
    }
}
