using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Weaning;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Trials of weaning, each judged against the published criteria.</summary>
internal static class WeaningSheet
{
    /// <summary>Of the last trial of a course.</summary>
    /// <param name="course">The course.</param>
    /// <returns>What is shown.</returns>
    public static Shown Of(PatientCourse course)
    {
        if (course.WeaningTrials is not [.., WeaningTrialLog log])
        {
            return new Shown(new { caution = CourseWords.Caution, trial = (object?)null, judgement = (object?)null }, ["No trial of weaning is in this record."]);
        }

        (_, WeaningJudgement? judgement, double? weight, _) = TrialJudgement.Of(course, log);
        List<string> lines =
        [
            string.Create(CultureInfo.InvariantCulture, $"Trial of entry {log.Started.Sequence}, {PlainWords.FromName(log.Started.Event.Method.ToString())}, begun {CourseWords.Time(log.Started.OccurredAt)}, {log.Steps.Count} steps, {(log.Ended is null ? "running" : PlainWords.FromName(log.Ended.Event.End.ToString()))}."),
        ];
        if (judgement is null)
        {
            lines.Add("It cannot be judged: its method has no published criteria here, or nothing was read yet.");
        }
        else
        {
            lines.Add(judgement.Words);
            AddAll(lines, "at its begin", judgement.Entry);
            AddAll(lines, "at the lowest support", judgement.Success);
            AddAll(lines, "STOP", judgement.Stops);
            lines.AddRange(judgement.Deviations.Select(static d => $"  otherwise than published: {d}"));
            if (weight is null)
            {
                lines.Add("  Tidal volume was left out: no predicted body weight follows from the case.");
            }
        }

        lines.Add(CourseWords.Caution);
        return new Shown(new { caution = CourseWords.Caution, trial = log, predictedWeightKg = weight, judgement }, lines);
    }

    /// <summary>Number of the entry that began the running trial.</summary>
    /// <param name="course">The course.</param>
    /// <returns>The number.</returns>
    /// <exception cref="InputFaultException">None runs.</exception>
    public static int OpenTrial(PatientCourse course) => course.WeaningTrials.LastOrDefault(static t => t.Ended is null) is WeaningTrialLog open
        ? checked((int)open.Started.Sequence)
        : throw OptionText.Wrong("PATIENT", "no running trial", "a trial of weaning that was begun", "Begin one: `course wean start`.", FaultCode.NotFound);

    private static void AddAll(List<string> lines, string when, IReadOnlyList<WeaningFinding> findings) =>
        lines.AddRange(findings.Select(f => $"  {when}: {CourseWords.Of(f.Judgement)}"));
}
