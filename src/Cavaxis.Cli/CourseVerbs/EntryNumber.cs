using Cavaxis.Course.Patients;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Finds entries by the numbers that people give.</summary>
internal static class EntryNumber
{
    /// <summary>The entry that stands.</summary>
    /// <param name="course">The course.</param>
    /// <param name="text">Its number, or that of one of its corrections.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="InputFaultException">There is none, or it was withdrawn.</exception>
    public static StandingEntry Find(PatientCourse course, string text)
    {
        int number = OptionText.Whole(text, "ENTRY", 1, int.MaxValue);
        return course.Entries.FirstOrDefault(e => !e.IsWithdrawn && course.Refers(number, e.Sequence))
            ?? throw OptionText.Wrong("ENTRY", text, "the number of an entry of the course that stands", "`course show` lists them.", FaultCode.NotFound);
    }
}
