using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.FollowUp;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.OnePage;

namespace Cavaxis.Bedside.Sheets;

/// <summary>Complications, anticoagulation, imaging and follow-up: the last entries of each log.</summary>
internal static class LogSections
{
    /// <summary>Complications; open ones first, later ones first.</summary>
    public static PageSection Complications(PatientCourse course)
    {
        PageRow[] rows = [.. course.Complications.Reverse().OrderBy(static c => c.Ended is null ? 0 : 1).Select(static c => PageRow.Of(Words(c), c.Ended is null))];
        return new PageSection("Complications", rows.Length == 0 ? [PageRow.Of("None was written down.")] : rows) { Elsewhere = "the full report, complications" };
    }

    /// <summary>Anticoagulation: what is set, the last checks.</summary>
    public static PageSection Anticoagulation(PatientCourse course)
    {
        IReadOnlyList<Logged<AnticoagulationSet>> set = course.All<AnticoagulationSet>();
        IReadOnlyList<Logged<AnticoagulationChecked>> checks = course.All<AnticoagulationChecked>();
        List<PageRow> rows = [PageRow.Of(set.Count == 0 ? "Nothing is written down about what is given." : Words(set[^1]))];
        rows.AddRange(checks.Reverse().Take(3).Select(static c => PageRow.Of($"{SheetWords.Short(c.OccurredAt)} {string.Join(", ", c.Event.Readings.Select(TimelineWords.Of))}{SheetWords.After(c.Event.Action)}")));
        int besides = Math.Max(0, checks.Count - 3) + Math.Max(0, set.Count - 1);
        return new PageSection("Anticoagulation", rows) { Besides = besides, Elsewhere = "the full report, anticoagulation", Least = 2 };
    }

    /// <summary>The last examinations.</summary>
    public static PageSection Imaging(PatientCourse course)
    {
        IReadOnlyList<Logged<ImagingDone>> done = course.All<ImagingDone>();
        PageRow[] rows = [.. done.Reverse().Take(4).Select(static i => PageRow.Of($"{SheetWords.Short(i.OccurredAt)} {SheetWords.Name(i.Event.Modality)}: {i.Event.Finding}"))];
        return new PageSection("Imaging", rows.Length == 0 ? [PageRow.Of("None was written down.")] : rows) { Besides = Math.Max(0, done.Count - 4), Elsewhere = "the full report, imaging" };
    }

    /// <summary>What is due after support.</summary>
    public static PageSection FollowUp(PatientCourse course, DateTimeOffset now)
    {
        PageRow[] rows = [.. FollowUpPlan.Of(course)
            .Select(d => (Item: d, State: d.At(now))).Where(static d => d.State is DueState.Due or DueState.Overdue or DueState.Ahead)
            .Select(static d => PageRow.Of($"{SheetWords.Name(d.State)}: {d.Item.What}, {SheetWords.Short(d.Item.From)} to {SheetWords.Short(d.Item.By)}", d.State == DueState.Overdue))];
        return new PageSection("Follow-up due", rows.Length == 0 ? [PageRow.Of("Nothing by this record; the schedule begins when a cannula is taken out.")] : rows) { Elsewhere = "the full report, follow-up" };
    }

    /// <summary>A complication in one line.</summary>
    public static string Words(ComplicationLog one)
    {
        ComplicationSeen seen = one.Seen.Event;
        string side = seen.Side is { } at ? $", {PlainWords.Side(at)}" : string.Empty;
        string end = one.Ended is null ? "OPEN" : $"over {SheetWords.Short(one.Ended.OccurredAt)}: {one.Ended.Event.Result}";
        return $"{SheetWords.Short(one.Seen.OccurredAt)} {SheetWords.Name(seen.Complication)}{side}, {SheetWords.Name(one.Gravity)}, {end}{SheetWords.After(seen.Description)}";
    }

    /// <summary>What is set in one line.</summary>
    public static string Words(Logged<AnticoagulationSet> set)
    {
        string dose = set.Event.Dose is double amount ? $" {SheetWords.Number(amount)} {set.Event.DoseUnit}" : string.Empty;
        string targets = string.Concat(set.Event.Targets.Select(static t => string.Create(
            CultureInfo.InvariantCulture, $", {QuantityTable.Of(t.Quantity).Words} {SheetWords.Number(t.Low)} to {SheetWords.Number(t.High)} {SheetWords.Unit(t.Quantity)}")));
        return $"{SheetWords.Short(set.OccurredAt)} {SheetWords.Name(set.Event.Agent)}{dose}{targets}{SheetWords.After(set.Event.Reason)}";
    }
}
