using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Fhir;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Bedside.CourseFiles;

/// <summary>A patient's course as what a FHIR bundle is made of. What was taken back is not in it; what was put right is in it as put right.</summary>
public static class CourseBundle
{
    /// <summary>Gathers it.</summary>
    /// <param name="reading">The course as it was read.</param>
    /// <param name="bundleId">Chance, new for each bundle.</param>
    /// <param name="now">When it is made.</param>
    /// <returns>The record, with the patient's identifier.</returns>
    public static FhirRecord Of(CourseReading reading, Guid bundleId, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(reading);
        PatientCourse course = reading.Course;
        DateTimeOffset start = course.Runs.Count > 0 ? course.Runs[0].Started.OccurredAt : now;
        return new FhirRecord(
            bundleId, now, reading.Patient, start, CourseCase.In(course)?.Patient.Sex, Cannulae(course),
            [.. course.Series.Values.OrderBy(static s => s.Quantity).SelectMany(static s => s.Points.Select(p => new FhirReading(s.Quantity, p.Value, p.At, p.SdGiven ? p.Sd : null)))]);
    }

    private static FhirCannula[] Cannulae(PatientCourse course)
    {
        HashSet<string> names = new(StringComparer.Ordinal);
        return [.. course.Cannulae.Select(c => new FhirCannula(
            Unique(c.Name, names), c.Placed.Event.Role, c.Placed.Event.OuterDiameterFrench,
            c.Placed.Event is { Route: { } route, Side: { } side } ? PlainWords.Vessel(route, side) : null, c.DepthCm, c.Placed.OccurredAt, c.Removed?.OccurredAt))];
    }

    // A name may come again once the cannula that had it was taken out.
    private static string Unique(string name, HashSet<string> names)
    {
        string one = name;
        for (int number = 2; !names.Add(one); number++)
        {
            one = FormattableString.Invariant($"{name} ({number})");
        }

        return one;
    }
}
