using System.Globalization;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Course.RunSheets;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;

namespace Cavaxis.Bedside.Courses;

/// <summary>Holds the steps that are to be written against the run sheet as it stands, one after the other.</summary>
internal static class StepCheck
{
    /// <summary>True for a step of a run sheet.</summary>
    public static bool IsStep(CourseWriting writing) => writing.Event is StepDone or StepSkipped;

    /// <summary>Everything that is missing.</summary>
    /// <param name="course">The course as it stands.</param>
    /// <param name="writings">What is to be written.</param>
    /// <param name="person">Who writes.</param>
    /// <param name="rules">Rules of the programme.</param>
    /// <param name="now">Time of writings that give none.</param>
    public static IReadOnlyList<InputFault> Faults(PatientCourse course, IReadOnlyList<CourseWriting> writings, Person person, ProgrammeRules rules, DateTimeOffset now)
    {
        List<InputFault> faults = [];
        long next = course.Version + 1;
        for (int i = 0; i < writings.Count; i++)
        {
            CourseWriting one = writings[i];
            DateTimeOffset at = one.OccurredAt ?? now;
            if (IsStep(one))
            {
                // A correction is judged as if what it corrects had never been written.
                PatientCourse before = one.Corrects is long corrected
                    ? course.With([new CourseEntry(next++, at, now, person.Id.Text, new EntryWithdrawn { Reason = "put right" }, corrected)])
                    : course;
                string path = writings.Count == 1 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"events[{i}].");
                faults.AddRange(before.RunSheet is RunSheet sheet
                    ? RunSheetRule.Decide(sheet, new StepAttempt(one.Event, person.Id.Text, person.Name, at), rules).Faults.Select(f => f with { Field = path + f.Field })
                    : [new InputFault(FaultCode.NotFound, $"{path}planEntry", "no plan", "a plan that was chosen", "Choose a plan first.")]);
            }

            course = course.With([new CourseEntry(next++, at, now, person.Id.Text, one.Event, one.Corrects)]);
        }

        return faults;
    }
}
