using Cavaxis.Bedside.CourseFiles;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Exports;
using Cavaxis.Bedside.Fhir;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Bedside.Tests.Sheets;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Configurations;
using Hl7.Fhir.Model;

namespace Cavaxis.Bedside.Tests.CourseFiles;

public class CourseBundleTests
{
    [Fact]
    public void A_course_becomes_a_bundle_that_the_library_reads_strictly()
    {
        Bundle bundle = FhirJson.Read(FhirJson.Write(FhirBundle.Of(CourseBundle.Of(SampleCourses.Typical, Guid.NewGuid(), SampleCourses.Now))));
        Assert.Equal(SampleCourses.PatientId, bundle.Entry.Select(static e => e.Resource).OfType<Patient>().Single().Identifier.Single().Value);
        Assert.Equal(AdministrativeGender.Male, bundle.Entry.Select(static e => e.Resource).OfType<Patient>().Single().Gender);
        Assert.Equal(2, bundle.Entry.Count(static e => e.Resource is Device));
        Assert.Equal(2, bundle.Entry.Count(static e => e.Resource is Procedure));
        Assert.Equal(SampleCourses.Typical.Course.Series.Values.Sum(static s => s.Points.Count), bundle.Entry.Count(static e => e.Resource is Observation));
    }

    [Fact]
    public void A_name_that_comes_again_after_removal_is_told_apart()
    {
        CannulaPlaced placed = new() { Cannula = "drainage", Role = CannulaRole.Drainage };
        CourseReading reading = SampleCourses.Read(
        [
            (SampleCourses.Start, placed), (SampleCourses.Start.AddHours(1), new CannulaRemoved { Cannula = "drainage", Method = RemovalMethod.SkinSuture }), (SampleCourses.Start.AddHours(2), placed),
        ]);
        FhirRecord record = CourseBundle.Of(reading, Guid.NewGuid(), SampleCourses.Now);
        Assert.Equal([("drainage", true), ("drainage (2)", false)], record.Cannulae.Select(static c => (c.Name, c.RemovedAt is not null)));
        Assert.Equal(5, FhirBundle.Of(record).Entry.Count(static e => e.Resource is Device or Procedure));
    }

    [Fact]
    public void A_row_of_the_programme_leaves_empty_what_nobody_wrote_down()
    {
        ProgrammeRow running = CourseCount.Of(SampleCourses.Typical, SampleCourses.Now).Row;
        Assert.Equal((SampleCourses.PatientId, "veno-venous, two sites", 2, (bool?)null, (bool?)null, (bool?)null), (running.Patient, running.Configuration, running.Cannulae, running.LimbIschaemia, running.Thrombosis, running.Survived));
        Assert.Equal(["cannulation site bleeding (watched)"], running.Complications);
        Assert.Null(running.EndedAt);
        ProgrammeRow none = CourseCount.Of(SampleCourses.Empty, SampleCourses.Now).Row;
        Assert.Null(none.StartedAt);
        Assert.Equal(string.Empty, none.Configuration);
    }
}
