using Cavaxis.Bedside.CourseReports;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Fhir;
using Cavaxis.Bedside.Sheets;
using Cavaxis.Records.Access;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Patients;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseFiles;

/// <summary>
/// Sheets, reports and exports of courses as a person may have them: whoever may read a patient may have their sheet, report and bundle. Every reading stands in
/// the audit.
/// </summary>
/// <param name="records">The records of patients.</param>
/// <param name="clock">Tells the moment for which they are made.</param>
public sealed class CourseSheets(PatientRecords records, TimeProvider clock)
{
    private readonly CourseRecords courses = new(records, clock);

    /// <summary>The handover sheet of a patient, on one page.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <returns>The sheet, where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public Task<PatientAnswer<CourseFile>> HandoverAsync(Person person, string patient) => FileAsync(person, patient, HandoverSheet.Of);

    /// <summary>The full report of a patient.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <returns>The report, where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public Task<PatientAnswer<CourseFile>> ReportAsync(Person person, string patient) => FileAsync(person, patient, CourseReport.Of);

    /// <summary>A FHIR R4 bundle of a patient, with the patient's identifier in the record.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <returns>JSON, where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<PatientAnswer<CourseText>> FhirAsync(Person person, string patient)
    {
        PatientAnswer<CourseReading> read = await courses.ReadAsync(person, patient);
        if (read.Value is not CourseReading reading)
        {
            return new PatientAnswer<CourseText>(read.Decision, null, read.AuditFault);
        }

        Hl7.Fhir.Model.Bundle bundle = FhirBundle.Of(CourseBundle.Of(reading, Guid.NewGuid(), clock.GetUtcNow()));
        return new PatientAnswer<CourseText>(read.Decision, new CourseText(FhirJson.Write(bundle), bundle.Entry.Count, Unread(reading)), read.AuditFault);
    }

    private async Task<PatientAnswer<CourseFile>> FileAsync(Person person, string patient, Func<CourseReading, DateTimeOffset, ReportDocument> made)
    {
        PatientAnswer<CourseReading> read = await courses.ReadAsync(person, patient);
        DateTimeOffset now = clock.GetUtcNow();
        return new PatientAnswer<CourseFile>(
            read.Decision, read.Value is CourseReading reading ? new CourseFile(made(reading, now), now, reading.Version, Unread(reading)) : null, read.AuditFault);
    }

    private static int Unread(CourseReading reading) => reading.Unread.Count + reading.Spoiled.Count;
}
