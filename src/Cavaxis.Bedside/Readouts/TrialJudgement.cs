using Cavaxis.Course.Patients;
using Cavaxis.Course.Weaning;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Readouts;

/// <summary>A trial of weaning as it was written down, judged against the published criteria.</summary>
/// <param name="Trial">The trial as it was written down.</param>
/// <param name="Judgement">What it showed; null where it cannot be judged.</param>
/// <param name="PredictedWeightKg">Predicted body weight over which tidal volumes were read, kg; null where none follows from the case.</param>
/// <param name="Trouble">Why it cannot be judged; null where it can.</param>
public sealed record TrialJudgement(WeaningTrialLog Trial, WeaningJudgement? Judgement, double? PredictedWeightKg, string? Trouble)
{
    /// <summary>Judges a trial.</summary>
    /// <param name="course">The course.</param>
    /// <param name="trial">The trial.</param>
    /// <returns>What it showed, or why that cannot be told.</returns>
    public static TrialJudgement Of(PatientCourse course, WeaningTrialLog trial)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(trial);
        double? weight = CourseCase.In(course) is CaseFile file ? PredictedBodyWeight.KgOf(file.Patient) : null;
        try
        {
            return RecordedTrial.Of(trial, weight) is WeaningTrial recorded
                ? new TrialJudgement(trial, WeaningJudge.Judge(recorded), weight, null)
                : new TrialJudgement(trial, null, weight, RecordedTrial.KindOf(trial.Started.Event.Method) is null ? "no criteria are published for this method" : "nothing was read yet");
        }
        catch (InputFaultException refused)
        {
            return new TrialJudgement(trial, null, weight, refused.Faults[0].ToString());
        }
    }
}
