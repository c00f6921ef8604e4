using Cavaxis.Bedside.Courses;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Patients;

namespace Cavaxis.Bedside.Programmes;

/// <summary>Reads every course of a programme for whoever may read its outcomes. Each reading of a patient is kept in the audit, as any other.</summary>
/// <param name="records">The records of patients.</param>
/// <param name="courses">Their courses.</param>
/// <param name="clock">Tells the present.</param>
public sealed class ProgrammeCourses(PatientRecords records, CourseRecords courses, TimeProvider clock)
{
    /// <summary>The programmes whose outcomes a person may read.</summary>
    /// <param name="person">Who asks.</param>
    /// <returns>Their names, in order.</returns>
    public static IReadOnlyList<string> Of(Person person)
    {
        ArgumentNullException.ThrowIfNull(person);
        return [.. person.Roles.Keys.Where(programme => AccessRule.Decide(person, Verb.ReadOutcomes, Identifier.Of(programme)) == AccessDecision.Granted)];
    }

    /// <summary>Reads a programme.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="programme">The programme as it was given, whatever it is.</param>
    /// <param name="progress">Told after each course; null for no one.</param>
    /// <param name="cancel">Ends it between two courses.</param>
    /// <returns>The courses where it was granted. A programme in which the person has no role is none.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<PatientAnswer<ProgrammeReading>> ReadAsync(Person person, string programme, IProgress<ProgrammeProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(person);
        AccessDecision decision = AccessRule.Decide(person, Verb.ReadOutcomes, Identifier.IsOne(programme) ? Identifier.Of(programme) : null);
        if (decision != AccessDecision.Granted)
        {
            return new PatientAnswer<ProgrammeReading>(decision);
        }

        // With this programme's role alone, so that no record of another programme is opened, and kept in its audit, for nothing.
        Person here = person with { Roles = person.Roles.RemoveRange(person.Roles.Keys.Where(p => p != programme)) };
        IReadOnlyList<Identifier> patients = await records.ListAsync(here);
        List<CourseCount> counts = [];
        StoreFault? unkept = null;
        int incomplete = 0;
        foreach (Identifier patient in patients)
        {
            cancel.ThrowIfCancellationRequested();
            PatientAnswer<CourseReading> answer = await courses.ReadAsync(here, patient.Text);
            unkept ??= answer.AuditFault;
            if (answer.Value is CourseReading reading)
            {
                counts.Add(CourseCount.Of(reading, clock.GetUtcNow()));
                incomplete += reading.Unread.Count + reading.Spoiled.Count > 0 ? 1 : 0;
            }

            progress?.Report(new ProgrammeProgress(counts.Count, patients.Count));
        }

        return new PatientAnswer<ProgrammeReading>(decision, new ProgrammeReading(programme, counts, incomplete), unkept);
    }
}
