using System.Text;
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
    public static CaseFile? In(PatientCourse course)
    {
        try
        {
            return course.Case is { } saved ? CaseFileReader.Read(Encoding.UTF8.GetBytes(saved.Event.CaseText)) : null;
        }
        catch (InputFaultException)
        {
            // A case may be saved with faults while it is being written; the sheet then says that it cannot be read.
            return null;
        }
    }

    /// <summary>Age, sex and size.</summary>
    public static string Words(PatientCourse course) => In(course) is CaseFile file
        ? $"{SheetWords.Number(file.Patient.AgeYears)} years, {PlainWords.FromName(file.Patient.Sex.ToString())}, {SheetWords.Number(file.Patient.HeightCm)} cm, {SheetWords.Number(file.Patient.WeightKg)} kg{(file.Invented ? " · INVENTED case" : string.Empty)}"
        : course.Case is null ? "no case in this record" : "the case in this record cannot be read";
}
