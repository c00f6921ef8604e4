using System.Text;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Readouts;

/// <summary>The case in force as a sheet tells it.</summary>
internal static class CourseCase
{
    /// <summary>The case of a course.</summary>
    /// <returns>The case; null where none was saved or it cannot be read.</returns>
    public static CaseFile? In(PatientCourse course) => course.Case is { } saved ? Read(saved) : null;

    /// <summary>The newest case that can be read: one that is being written may stand in the record with faults.</summary>
    /// <returns>The case; null where there is none.</returns>
    public static CaseFile? NewestIn(PatientCourse course) => course.Cases.Reverse().Select(Read).FirstOrDefault(static file => file is not null);

    /// <summary>Age, sex and size.</summary>
    public static string Words(PatientCourse course) => In(course) is CaseFile file
        ? $"{SheetWords.Number(file.Patient.AgeYears)} years, {PlainWords.FromName(file.Patient.Sex.ToString())}, {SheetWords.Number(file.Patient.HeightCm)} cm, {SheetWords.Number(file.Patient.WeightKg)} kg{(file.Invented ? " · INVENTED case" : string.Empty)}"
        : course.Case is null ? "no case in this record" : "the case in this record cannot be read";

    private static CaseFile? Read(Logged<CaseSaved> saved)
    {
        try
        {
            return CaseFileReader.Read(Encoding.UTF8.GetBytes(saved.Event.CaseText));
        }
        catch (InputFaultException)
        {
            // A case may be saved with faults while it is being written; whoever shows it then says that it cannot be read.
            return null;
        }
    }
}
