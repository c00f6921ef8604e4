using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Events;
using Cavaxis.Course.RunSheets;

namespace Cavaxis.Web.Pages.Place;

/// <summary>What is being written down about the step that comes next.</summary>
public sealed class StepDraft
{
    internal string View { get; set; } = string.Empty;

    internal string Seen { get; set; } = string.Empty;

    internal string Second { get; set; } = string.Empty;

    internal string Otherwise { get; set; } = string.Empty;

    internal string Reason { get; set; } = string.Empty;

    internal void Clear() => (View, Seen, Second, Otherwise, Reason) = (string.Empty, string.Empty, string.Empty, string.Empty, string.Empty);

    /// <summary>The step as done.</summary>
    internal CourseWriting Done(RunSheet sheet, PlannedStep step, DateTimeOffset at) => new(
        new StepDone
        {
            PlanEntry = checked((int)sheet.PlanEntry),
            Step = step.Number,
            Action = step.Action,
            View = Given(View),
            Seen = Given(Seen),
            ConfirmedBy = SecondPerson,
            Deviation = Given(Otherwise) is string what ? new StepDeviation { What = what, Reason = Given(Reason) ?? string.Empty } : null,
        },
        at);

    /// <summary>The step as passed over.</summary>
    internal CourseWriting Skipped(RunSheet sheet, PlannedStep step, DateTimeOffset at) => new(
        new StepSkipped { PlanEntry = checked((int)sheet.PlanEntry), Step = step.Number, Action = step.Action, Reason = Given(Reason) ?? string.Empty, ConfirmedBy = SecondPerson }, at);

    private SecondPerson? SecondPerson => Given(Second) is string name ? new SecondPerson { Name = name } : null;

    private static string? Given(string text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
