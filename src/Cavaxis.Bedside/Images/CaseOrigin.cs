using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.Images;

/// <summary>Where a number of the case comes from, where it was measured on an image.</summary>
/// <param name="Filled">The field, the value and its error as they were written.</param>
/// <param name="Entry">The entry of the record that says how, on which image, and by whom.</param>
public sealed record CaseOrigin(CaseFieldFilled Filled, Logged<ImagingDone> Entry)
{
    /// <summary>The last filling of each field.</summary>
    /// <param name="course">The course.</param>
    /// <returns>By path. Whether the case still says so is for the reader to compare: a person may have typed over it.</returns>
    public static IReadOnlyDictionary<string, CaseOrigin> Of(PatientCourse course)
    {
        ArgumentNullException.ThrowIfNull(course);
        Dictionary<string, CaseOrigin> last = [];
        foreach (Logged<ImagingDone> entry in course.All<ImagingDone>())
        {
            foreach (CaseFieldFilled filled in entry.Event.IntoCase)
            {
                last[filled.Field] = new CaseOrigin(filled, entry);
            }
        }

        return last;
    }
}
