using System.Globalization;
using Cavaxis.Course.Patients;
using Cavaxis.Course.RunSheets;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>The run sheet and how far it is.</summary>
internal static class SheetOfSteps
{
    /// <summary>Of a course.</summary>
    /// <param name="course">The course.</param>
    /// <returns>What is shown; null where no plan was chosen.</returns>
    public static Shown? Of(PatientCourse course)
    {
        if (course.RunSheet is not RunSheet sheet)
        {
            return null;
        }

        List<string> lines = [string.Create(CultureInfo.InvariantCulture, $"Run sheet of entry {sheet.PlanEntry}: {sheet.Steps.Count(static s => s.State != StepState.Open)} of {sheet.Steps.Count} steps closed.")];
        lines.AddRange(Next(sheet));
        lines.AddRange(sheet.Overridden.Select(static s => string.Create(
            CultureInfo.InvariantCulture, $"  ! hard stop of step {s.Planned.Number} {PlainWords.FromName(s.State.ToString())}: {s.Skipped?.Event.Reason ?? s.Done?.Event.Deviation?.Reason}")));
        return new Shown(sheet, lines);
    }

    private static IEnumerable<string> Next(RunSheet sheet)
    {
        if (sheet.Next is not SheetStep next)
        {
            yield return "  No step is open.";
            yield break;
        }

        yield return string.Create(CultureInfo.InvariantCulture, $"  next, step {next.Planned.Number}: {next.Planned.Action}");
        if (next.Planned.HardStop is string stop)
        {
            yield return $"     HARD STOP: {stop}";
        }

        for (int i = 0; i < next.Planned.ShowsIt.Count; i++)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"     view {i + 1}: {next.Planned.ShowsIt[i].Words}");
        }

        foreach (string pitfall in new[] { next.Planned.Pitfall, next.Planned.PredictedPitfall }.OfType<string>())
        {
            yield return $"     pitfall: {pitfall}";
        }
    }
}
