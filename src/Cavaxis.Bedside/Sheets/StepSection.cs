using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Patients;
using Cavaxis.Course.RunSheets;
using Cavaxis.Reports.OnePage;

namespace Cavaxis.Bedside.Sheets;

/// <summary>Open hard stops and steps, and where the procedure was done otherwise.</summary>
internal static class StepSection
{
    private const string Title = "Procedure: open stops, steps, deviations";

    /// <summary>The section; those that hold come first.</summary>
    public static PageSection Of(PatientCourse course)
    {
        if (course.RunSheet is not RunSheet sheet)
        {
            return new PageSection(Title, [PageRow.Of("No plan was chosen in this record, so there is no run sheet.")]);
        }

        List<PageRow> rows = [];
        rows.AddRange(sheet.Steps.Where(static s => s.Holds).Select(static s => PageRow.Of(Text(s, $"HARD STOP open, needs: {s.Planned.HardStop?.TrimEnd('.', ' ')}"), true)));
        rows.AddRange(sheet.Overridden.Select(static s => PageRow.Of(Text(s, $"hard stop {(s.State == StepState.Skipped ? "passed over" : "done otherwise")}: {s.Skipped?.Event.Reason ?? Deviation(s)}"), true)));
        rows.AddRange(sheet.Steps.Where(static s => s is { IsHardStop: false, State: StepState.Skipped or StepState.DoneOtherwise })
            .Select(static s => PageRow.Of(Text(s, s.State == StepState.Skipped ? $"passed over: {s.Skipped!.Event.Reason}" : $"done otherwise: {Deviation(s)}"))));
        rows.AddRange(sheet.Steps.Where(static s => s is { IsHardStop: false, State: StepState.Open }).Select(static s => PageRow.Of(Text(s, "open"))));
        int closed = sheet.Steps.Count(static s => s.State != StepState.Open);
        if (rows.Count == 0)
        {
            rows.Add(PageRow.Of("None is open and none was done otherwise."));
        }

        return new PageSection(string.Create(CultureInfo.InvariantCulture, $"{Title} ({closed} of {sheet.Steps.Count} closed)"), rows) { Elsewhere = "the full report, run sheet", Least = 2 };
    }

    private static string Deviation(SheetStep step) => $"{step.Done!.Event.Deviation?.What}, because {step.Done.Event.Deviation?.Reason}";

    private static string Text(SheetStep step, string state) => string.Create(CultureInfo.InvariantCulture, $"Step {step.Planned.Number} {state.TrimEnd('.', ' ')}. {step.Planned.Action}");
}
