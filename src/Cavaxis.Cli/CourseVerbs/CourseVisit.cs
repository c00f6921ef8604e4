using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Patients;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>One patient's course as one person works on it for one verb.</summary>
/// <param name="desk">The record with who acts.</param>
/// <param name="patient">The patient's identifier as it was given.</param>
/// <param name="output">Takes what could not be read or kept.</param>
internal sealed class CourseVisit(RecordDesk desk, string patient, CommandOutput output)
{
    private readonly TimeProvider clock = TimeProvider.System;

    /// <summary>The courses.</summary>
    public CourseRecords Courses { get; } = new(desk.Patients, TimeProvider.System);

    /// <summary>Who acts.</summary>
    public Person Person => desk.Person;

    /// <summary>Whose course.</summary>
    public string Patient => patient;

    /// <summary>The moment.</summary>
    public DateTimeOffset Now => clock.GetUtcNow();

    /// <summary>Version that was read last; null where nothing was.</summary>
    public long? Read { get; private set; }

    /// <summary>Refuses whoever may not do it.</summary>
    /// <param name="verb">What is to be done.</param>
    /// <returns>When it is decided.</returns>
    public async Task RequireAsync(Verb verb) => Refusal.Unless(await Courses.MayAsync(Person, patient, verb), "patient", patient);

    /// <summary>Reads the course.</summary>
    /// <returns>The course.</returns>
    public async Task<CourseReading> ReadAsync()
    {
        PatientAnswer<CourseReading> answer = await Courses.ReadAsync(Person, patient);
        CourseReading reading = Refusal.Granted(answer, patient);
        if (answer.AuditFault is not null)
        {
            output.Progress($"This look could not be kept in the audit: {answer.AuditFault}");
        }

        if (reading.Unread.Count + reading.Spoiled.Count > 0)
        {
            output.Progress(string.Create(
                CultureInfo.InvariantCulture,
                $"NOT SHOWN: {reading.Unread.Count} entries that this program cannot read ({string.Join(", ", reading.Unread.Select(static u => u.Sequence))}) and {reading.Spoiled.Count} that do not hold. Run `record verify`."));
        }

        Read = reading.Version;
        return reading;
    }

    /// <summary>A cannula that lies.</summary>
    /// <param name="course">The course.</param>
    /// <param name="name">Its name.</param>
    /// <returns>The cannula.</returns>
    /// <exception cref="InputFaultException">None of that name lies.</exception>
    public static LyingCannula Lying(PatientCourse course, string name) => course.CannulaeIn.LastOrDefault(c => c.Name == name) ?? throw OptionText.Wrong(
        "CANNULA", name, course.CannulaeIn.Count == 0 ? "a cannula that lies; none does" : $"one that lies: {string.Join(", ", course.CannulaeIn.Select(static c => c.Name))}",
        "Check the name, or write down first that it was placed (`course place`).", FaultCode.NotFound);
}
