using Cavaxis.Course.Events;
using Cavaxis.Course.Imports;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Patients;

namespace Cavaxis.Bedside.Courses;

/// <summary>Takes the good rows of a file into a patient's record, once a person has seen its faults and accepted them.</summary>
/// <param name="courses">The courses of patients.</param>
public sealed class FileImports(CourseRecords courses)
{
    /// <summary>Rows written in one request. A large file takes several; if one fails, those before it stand, and taking the same file in again writes the rest.</summary>
    public const int RowsPerRequest = 2_000;

    /// <summary>Writes the good rows that do not stand in the record yet.</summary>
    /// <param name="person">Who accepts the rows.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="import">The file as read.</param>
    /// <returns>Where it was granted: written with the last rows, or refused where there is no good row, one lies in the future, or all of them stand in the record already.</returns>
    /// <exception cref="Records.Faults.StoreFaultException">The store cannot be written; rows of earlier requests stand.</exception>
    public async Task<PatientAnswer<CourseOutcome>> TakeInAsync(Person person, string patient, ObservationImport import)
    {
        ArgumentNullException.ThrowIfNull(import);
        PatientAnswer<CourseReading> read = await courses.ReadAsync(person, patient);
        if (read.Value is not CourseReading reading)
        {
            return new PatientAnswer<CourseOutcome>(read.Decision);
        }

        HashSet<int> standing = [.. reading.Course.All<Observed>()
            .Where(o => o.Event.Import?.FileSha256 == import.FileSha256).Select(static o => o.Event.Import!.Line)];
        ImportRow[] rows = [.. import.Good.Where(r => !standing.Contains(r.Line))];
        if (rows.Length == 0 && standing.Count > 0)
        {
            // Whether the person may write at all is asked first, so that a reader is not told of a fault.
            return await Refused(person, patient, new InputFault(
                FaultCode.Contradiction, import.FileName, "a file whose rows stand in the record already", "a file that is new to this record",
                "Nothing is to be done. Withdraw its rows first where they are to be taken in again."));
        }

        if (rows.Length == 0)
        {
            return await Refused(person, patient, new InputFault(FaultCode.MissingField, import.FileName, "no good row", "at least one row without a fault", "Mend the file and read it again."));
        }

        PatientAnswer<CourseOutcome>? last = null;
        foreach (ImportRow[] part in rows.Chunk(RowsPerRequest))
        {
            last = await courses.RecordAsync(person, patient, null, [.. part.Select(r => new CourseWriting(import.EventOf(r), r.At))]);
            if (last.Value is not CourseWritten)
            {
                break;
            }
        }

        return last!;
    }

    private async Task<PatientAnswer<CourseOutcome>> Refused(Person person, string patient, InputFault fault)
    {
        AccessDecision may = await courses.MayAsync(person, patient, Verb.Record);
        return new PatientAnswer<CourseOutcome>(may, may == AccessDecision.Granted ? new CourseRefused([fault]) : null);
    }
}
