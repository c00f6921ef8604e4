using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Weaning;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Readouts;

/// <summary>A trial of weaning as it was written down, judged against the published criteria.</summary>
/// <param name="Trial">The trial as it was written down.</param>
/// <param name="Judgement">What it showed; null where it cannot be judged.</param>
/// <param name="Trouble">Why it cannot be judged; null where it can.</param>
public sealed record TrialJudgement(WeaningTrialLog Trial, WeaningJudgement? Judgement, string? Trouble)
{
    /// <summary>Judges a trial. The time of a written step is that of its readings, at its end; what was read before the trial is its first step.</summary>
    /// <param name="course">The course.</param>
    /// <param name="trial">The trial.</param>
    /// <returns>What it showed, or why that cannot be told.</returns>
    public static TrialJudgement Of(PatientCourse course, WeaningTrialLog trial)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(trial);
        if (trial.Started.Event.Method is WeaningMethod.Other)
        {
            return new TrialJudgement(trial, null, "it followed no method for which criteria are published");
        }

        WeaningKind kind = trial.Started.Event.Method == WeaningMethod.SweepSteps ? WeaningKind.VenoVenousSweep : WeaningKind.VenoArterialFlow;
        try
        {
            return new TrialJudgement(trial, WeaningJudge.Judge(new WeaningTrial(kind, Steps(course, trial))), null);
        }
        catch (InputFaultException refused)
        {
            return new TrialJudgement(trial, null, refused.Faults[0].ToString());
        }
    }

    private static List<WeaningStep> Steps(PatientCourse course, WeaningTrialLog trial)
    {
        DateTimeOffset start = trial.Started.OccurredAt;
        double? flow = At(course, ObservedQuantity.PumpFlowLPerMin, start);
        double? sweep = At(course, ObservedQuantity.SweepLPerMin, start);
        double? weight = Weight(course);
        List<WeaningStep> steps = [new WeaningStep(0, 0, flow, sweep, WeaningReadings.From(trial.Started.Event.Readings, weight))];
        double ended = 0;
        foreach (Logged<WeaningStepped> step in trial.Steps)
        {
            double end = Math.Max(ended, (step.OccurredAt - start).TotalMinutes);
            double begin = step.Event.MinutesHeld is double held ? Math.Max(ended, end - held) : ended;
            (flow, sweep) = (step.Event.FlowLPerMin ?? flow, step.Event.SweepLPerMin ?? sweep);
            steps.Add(new WeaningStep(begin, end - begin, flow, sweep, WeaningReadings.From(step.Event.Readings, weight)));
            ended = end;
        }

        return steps;
    }

    private static double? At(PatientCourse course, ObservedQuantity quantity, DateTimeOffset at) => course.Series.GetValueOrDefault(quantity)?.AsOf(at, CourseGases.Stale)?.Value;

    // Devine 1974 with the inch of the ventilation trials (ARDS Network 2000, N Engl J Med 342:1301): 50 or 45.5 kg + 0.91 kg for each cm above 152.4; from memory. It is for adults.
    private static double? Weight(PatientCourse course) => CourseCase.In(course) is CaseFile { Patient: { AgeYears: >= 18, HeightCm: >= 130 } patient }
        ? (patient.Sex == Anatomy.Body.Sex.Male ? 50 : 45.5) + (0.91 * (patient.HeightCm - 152.4))
        : null;
}
