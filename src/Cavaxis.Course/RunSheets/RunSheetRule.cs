using System.Globalization;
using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.RunSheets;

/// <summary>
/// Decides whether a step may be written down. It holds back what was not seen; it does not hold a hand: a step can always be passed over, but then
/// with a reason that stands in the record. Steps without a hard stop may be written down in any order, since some are entered after the fact.
/// </summary>
public static class RunSheetRule
{
    /// <summary>Decides.</summary>
    /// <param name="sheet">The run sheet as it stands.</param>
    /// <param name="attempt">What someone wants to write down.</param>
    /// <param name="rules">Rules of the programme.</param>
    /// <returns>The event, or everything that is missing.</returns>
    /// <exception cref="ArgumentException">The attempt is about no step.</exception>
    public static StepDecision Decide(RunSheet sheet, StepAttempt attempt, ProgrammeRules rules)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(attempt);
        ArgumentNullException.ThrowIfNull(rules);
        (int plan, int number, string action, SecondPerson? second) = attempt.Event switch
        {
            StepDone done => (done.PlanEntry, done.Step, done.Action, done.ConfirmedBy),
            StepSkipped skipped => (skipped.PlanEntry, skipped.Step, skipped.Action, skipped.ConfirmedBy),
            _ => throw new ArgumentException("An attempt is about a step.", nameof(attempt)),
        };
        List<InputFault> faults = [.. Form(attempt.Event)];
        if (plan != sheet.PlanEntry)
        {
            faults.Add(new InputFault(
                FaultCode.Contradiction, "planEntry", Number(plan), $"{Number(sheet.PlanEntry)}, the entry of the plan in force", "Another plan was chosen meanwhile; read its run sheet."));
            return new StepDecision(null, faults);
        }

        if (sheet.Find(number) is not SheetStep step)
        {
            faults.Add(new InputFault(FaultCode.NotFound, "step", Number(number), $"a step from 1 to {Number(sheet.Steps.Count)}", "Read the run sheet again."));
            return new StepDecision(null, faults);
        }

        faults.AddRange(Place(sheet, step, action, attempt.OccurredAt));
        if (step.IsHardStop)
        {
            faults.AddRange(attempt.Event is StepDone done ? Evidence(step.Planned, done) : []);
            faults.AddRange(rules.TwoPersonHardStops ? Second(second, attempt, rules) : []);
        }

        return faults.Count == 0 ? new StepDecision(attempt.Event, []) : new StepDecision(null, faults);
    }

    private static IReadOnlyList<InputFault> Form(CourseEvent happened)
    {
        try
        {
            _ = CourseEventJson.Write(happened);
            return [];
        }
        catch (InputFaultException refused)
        {
            return refused.Faults;
        }
    }

    private static IEnumerable<InputFault> Place(RunSheet sheet, SheetStep step, string action, DateTimeOffset at)
    {
        if (step.State != StepState.Open)
        {
            yield return new InputFault(FaultCode.Contradiction, "step", Number(step.Planned.Number), "a step that is open", "Correct the entry that closed it, where it was wrong.");
        }

        if (action != step.Planned.Action)
        {
            yield return new InputFault(FaultCode.Contradiction, "action", InputFault.Shown(action), $"the words of the step, \"{InputFault.Shown(step.Planned.Action)}\"", "Read the run sheet again.");
        }

        if (at < sheet.ChosenAt)
        {
            yield return new InputFault(FaultCode.Contradiction, "occurredAt", Time(at), $"not before the plan was chosen, {Time(sheet.ChosenAt)}", "Check the time.");
        }

        foreach (SheetStep before in sheet.Steps.Take(step.Planned.Number - 1).Where(static s => s.IsHardStop))
        {
            string path = string.Create(CultureInfo.InvariantCulture, $"steps[{before.Planned.Number}]");
            if (before.Holds)
            {
                yield return new InputFault(
                    FaultCode.MissingField, path, "open", $"the evidence of its hard stop: {before.Planned.HardStop}",
                    $"Write down step {Number(before.Planned.Number)} with the view and what was seen, or pass it over with a reason.");
            }
            else if (before.ClosedAt > at)
            {
                yield return new InputFault(
                    FaultCode.Contradiction, "occurredAt", Time(at), $"not before the hard stop of step {Number(before.Planned.Number)} was passed, {Time(before.ClosedAt.Value)}", "Check the times of both.");
            }
        }
    }

    private static IEnumerable<InputFault> Evidence(PlannedStep step, StepDone done)
    {
        string views = string.Join("; ", step.ShowsIt.Select(static v => v.Words));
        if (done.Seen is null)
        {
            yield return new InputFault(FaultCode.MissingField, "seen", "(nothing)", $"what was seen of: {step.HardStop}", "Write down what was seen.");
        }

        if (done.View is null)
        {
            // What is in the hand needs no view.
            if (step.ShowsIt.Count == 0)
            {
                yield break;
            }

            yield return new InputFault(FaultCode.MissingField, "view", "(nothing)", $"a view that can show it: {views}", "Choose the view in which it was seen.");
        }
        else if (step.CannotShowIt.Any(v => v.Words == done.View))
        {
            yield return new InputFault(FaultCode.NotAChoice, "view", InputFault.Shown(done.View), $"a view that can show it: {views}", "This view cannot show it. Look in another, or pass the step over with a reason.");
        }
        else if (step.ShowsIt.Count > 0 && done.Deviation is null && step.ShowsIt.All(v => v.Words != done.View))
        {
            yield return new InputFault(FaultCode.NotAChoice, "view", InputFault.Shown(done.View), $"a view that can show it: {views}", "Choose one of these, or write down as a deviation why another view served.");
        }
    }

    private static IEnumerable<InputFault> Second(SecondPerson? second, StepAttempt attempt, ProgrammeRules rules)
    {
        if (second is null)
        {
            yield return new InputFault(FaultCode.MissingField, "confirmedBy", "(nothing)", "a second person who saw it", $"Name the second person. {rules.Rationale}");
        }
        else if (new[] { second.Name, second.Person }.OfType<string>().Any(name => Same(name, attempt.Who) || Same(name, attempt.WhoName)))
        {
            yield return new InputFault(FaultCode.Contradiction, "confirmedBy", InputFault.Shown(second.Name), "another person than the one who writes", "Name the person who looked with you.");
        }
    }

    private static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    private static string Number(long value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Time(DateTimeOffset at) => at.ToString("yyyy-MM-dd HH:mm:ss zzz", CultureInfo.InvariantCulture);
}
