using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Course.RunSheets;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>The chosen plan and the run sheet with its evidence.</summary>
internal static class PlanBlocks
{
    /// <summary>The plans.</summary>
    public static IEnumerable<ReportBlock> Plan(PatientCourse course)
    {
        yield return new Heading(2, "Plan");
        IReadOnlyList<Logged<PlanChosen>> plans = course.All<PlanChosen>();
        if (plans.Count == 0)
        {
            yield return new Paragraph("No plan was chosen in this record.");
            yield break;
        }

        PlanChosen plan = plans[^1].Event;
        string rank = plan.Rank is int place ? string.Create(CultureInfo.InvariantCulture, $", rank {place}") : string.Empty;
        string flow = plan.FlowLPerMin is double litres ? $", sized for {SheetWords.Number(litres)} L/min" : string.Empty;
        yield return new Paragraph($"{plan.Name}: {SheetWords.Name(plan.Configuration)}{rank}{flow}. Chosen {SheetWords.Time(plans[^1].OccurredAt)} by {plans[^1].Who}{SheetWords.After(plan.Reason)}");
        if (plan.Cannulae.Count > 0)
        {
            yield return new Table(
                "Planned cannulae (depths are calculated)", [new("role"), new("device"), new("vessel"), new("depth (cm)", ColumnAlign.Right), new("nine tenths of anatomies (cm)", ColumnAlign.Right)],
                [.. plan.Cannulae.Select(static c => (IReadOnlyList<string>)[PlainWords.Role(c.Role), c.Device, PlainWords.Vessel(c.Route, c.Side), c.DepthCm is double cm ? SheetWords.Number(cm) : "to its hub", c is { DepthLowCm: double low, DepthHighCm: double high } ? $"{SheetWords.Number(low)} to {SheetWords.Number(high)}" : "not told"])]);
        }

        if (plans.Count > 1)
        {
            yield return new BulletList([.. plans.SkipLast(1).Select(static p => $"Chosen before: {p.Event.Name}, {SheetWords.Time(p.OccurredAt)} by {p.Who}{SheetWords.After(p.Event.Reason)}")]);
        }
    }

    /// <summary>The run sheet.</summary>
    public static IEnumerable<ReportBlock> RunSheet(PatientCourse course)
    {
        yield return new Heading(2, "Run sheet");
        if (course.RunSheet is not RunSheet sheet || sheet.Steps.Count == 0)
        {
            yield return new Paragraph("There is none: no plan with steps was chosen.");
            yield break;
        }

        if (sheet.HoldingAt is SheetStep held)
        {
            yield return new Callout(CalloutKind.Stop, string.Create(CultureInfo.InvariantCulture, $"Step {held.Planned.Number} is held"), $"Its evidence was not written down: {held.Planned.HardStop}");
        }

        foreach (SheetStep overridden in sheet.Overridden)
        {
            yield return new Callout(CalloutKind.Warning, string.Create(CultureInfo.InvariantCulture, $"Hard stop of step {overridden.Planned.Number}: {SheetWords.Name(overridden.State)}"), Reason(overridden));
        }

        yield return new Table(
            "Steps with their evidence", [new("no.", ColumnAlign.Right, 0.5), new("what is to be done, and what must be seen", Weight: 3), new("state", Weight: 1.9), new("seen, in which view, by whom", Weight: 2.6), new("otherwise or passed over, why", Weight: 2)],
            [.. sheet.Steps.Select(static s => (IReadOnlyList<string>)[SheetWords.Number(s.Planned.Number), Wanted(s), State(s), Evidence(s), Reason(s)])]);
    }

    private static string Wanted(SheetStep step) => string.Join('\n', new[]
    {
        step.Planned.Action,
        step.Planned.HardStop is null ? null : $"HARD STOP: {step.Planned.HardStop}",
        step.Planned.ShowsIt.Count == 0 ? null : $"Shown by: {string.Join("; ", step.Planned.ShowsIt.Select(static v => v.Words))}",
        step.Planned.CannotShowIt.Count == 0 ? null : $"Not shown by: {string.Join("; ", step.Planned.CannotShowIt.Select(static v => v.Words))}",
    }.OfType<string>());

    private static string State(SheetStep step)
    {
        string since = step.SincePrevious is TimeSpan span ? string.Create(CultureInfo.InvariantCulture, $"\n{span.TotalMinutes:0} min after the one before") : string.Empty;
        return step.State == StepState.Open ? step.IsHardStop ? "OPEN HARD STOP" : "open" : $"{SheetWords.Name(step.State)}\n{SheetWords.Time(step.ClosedAt!.Value)}\nby {step.Done?.Who ?? step.Skipped?.Who}{since}";
    }

    private static string Evidence(SheetStep step)
    {
        SecondPerson? second = step.Done?.Event.ConfirmedBy ?? step.Skipped?.Event.ConfirmedBy;
        return string.Join('\n', new[]
        {
            step.Done?.Event.Seen,
            step.Done?.Event.View is string view ? $"view: {view}" : null,
            step.Done?.Event.Image is { } image ? $"image: {image.Name}" : null,
            second is null ? null : $"confirmed by {second.Name}{(second.Person is null ? string.Empty : $" ({second.Person})")}",
            step.Done?.Event.Remark,
        }.OfType<string>());
    }

    private static string Reason(SheetStep step) =>
        step.Skipped is { } skipped && step.Done is null ? skipped.Event.Reason
        : step.Done?.Event.Deviation is StepDeviation otherwise ? $"{otherwise.What}, because {otherwise.Reason}" : string.Empty;
}
