using System.Collections.Immutable;
using System.Text;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Bedside.Images;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Dicom.Identity;
using Cavaxis.Dicom.Reading;
using Cavaxis.EndToEnd.Tests.Images;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests;

namespace Cavaxis.Bedside.Tests.Images;

/// <summary>Images taken in through GDCM and the record, as whoever may. All people, patients and images are invented.</summary>
public sealed class ImageDeskTests : IAsyncLifetime, IDisposable
{
    private const string CaseText = """{"cavaxisCase":1,"title":"Invented 1","invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80}}""";
    private static readonly Identifier North = Identifier.Of("north");
    private static readonly Person Cleo = Someone("cleo", North, Role.Clinician);
    private static readonly Person Rita = Someone("rita", North, Role.Reader);
    private static readonly Person Sven = Someone("sven", Identifier.Of("south"), Role.Lead);

    private readonly string place = Directory.CreateTempSubdirectory("cavaxis-desk-").FullName;
    private readonly DicomReader reader = new();
    private EventStore store = null!;
    private CourseRecords courses = null!;
    private ImageDesk desk = null!;
    private string patient = null!;

    public async Task InitializeAsync()
    {
        TickingClock clock = new();
        store = await EventStore.OpenAsync(StoreAddress.Of(Path.Combine(place, "record.db")), clock);
        courses = new CourseRecords(new PatientRecords(store), clock);
        desk = new ImageDesk(courses, new ImageFolder(Path.Combine(place, "images")), reader, IdentityKey.Forgotten());
        patient = Assert.IsType<CourseWritten>((await courses.AdmitAsync(Cleo, North, CaseText)).Value).Patient;
    }

    public async Task DisposeAsync() => await reader.DisposeAsync();

    public void Dispose()
    {
        store.Dispose();
        Directory.Delete(place, recursive: true);
    }

    [Fact]
    public async Task An_image_taken_in_is_listed_opened_and_holds_no_name()
    {
        ImagesTaken taken = (await desk.TakeInAsync(Cleo, patient, [Written(50)], ImagingModality.VascularUltrasound, null)).Value!;
        TakenImage image = Assert.Single(taken.Taken);
        Assert.Empty(taken.Refused);
        ListedImage listed = Assert.Single(desk.Of(patient, await CourseAsync()));
        Assert.Equal((image.Id, true, ImagingModality.VascularUltrasound), (listed.Id, listed.IsThere, listed.Entry.Event.Modality));
        OpenedImage opened = (await desk.OpenAsync(Rita, patient, image.Id)).Value!;
        Assert.Equal(image.Id, opened.File.Sha256);
        ImageFrame frame = await desk.FrameAsync(opened, 0);
        Assert.True(frame.Brightness(100, 100) < 30 && frame.Brightness(5, 5) > 100);
        Assert.DoesNotContain("ZZNOBODY", Encoding.Latin1.GetString(File.ReadAllBytes(opened.Kept.Files[0])), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_may_not_write_takes_nothing_in_and_who_may_not_read_sees_nothing()
    {
        Assert.Equal(AccessDecision.NotAllowed, (await desk.TakeInAsync(Rita, patient, [Written(50)], ImagingModality.Other, null)).Decision);
        Assert.False(Directory.Exists(Path.Combine(place, "images")));
        string id = (await desk.TakeInAsync(Cleo, patient, [Written(50)], ImagingModality.Other, null)).Value!.Taken[0].Id;
        PatientAnswer<OpenedImage> stranger = await desk.OpenAsync(Sven, patient, id);
        Assert.Null(stranger.Value);
        Assert.NotEqual(AccessDecision.Granted, stranger.Decision);
    }

    [Fact]
    public async Task One_bad_file_keeps_no_other_out_and_is_named()
    {
        string letter = Path.Combine(place, "letter.dcm");
        await File.WriteAllTextAsync(letter, "Dear colleague");
        ImagesTaken taken = (await desk.TakeInAsync(Cleo, patient, [letter, Written(40)], ImagingModality.Other, null)).Value!;
        Assert.Single(taken.Taken);
        Assert.Contains("letter.dcm", Assert.Single(taken.Refused).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Slices_handed_in_together_are_one_series_and_make_a_volume()
    {
        List<string> slices = [];
        foreach (byte[] slice in WrittenDicom.Tomography())
        {
            slices.Add(Path.Combine(place, $"{slices.Count}.dcm"));
            await File.WriteAllBytesAsync(slices[^1], slice);
        }

        TakenImage taken = Assert.Single((await desk.TakeInAsync(Cleo, patient, slices, ImagingModality.ComputedTomography, null)).Value!.Taken);
        Assert.Contains("90 slices", taken.Name, StringComparison.Ordinal);
        var series = await desk.SeriesAsync((await desk.OpenAsync(Cleo, patient, taken.Id)).Value!);
        Assert.Same(series, await desk.SeriesAsync((await desk.OpenAsync(Rita, patient, taken.Id)).Value!));
        Assert.Equal((96, 96, 90), (series.Volume.Columns, series.Volume.Rows, series.Volume.Slices));
        (double i, double j, double k) = series.Volume.Voxel(new(0, 0, 60));
        Assert.InRange(series.Volume[(int)Math.Round(i), (int)Math.Round(j), (int)Math.Round(k)], 185, 215);
    }

    [Fact]
    public async Task Taking_in_is_counted_and_can_be_ended_while_nothing_is_kept()
    {
        List<int> counted = [];
        Assert.Equal(2, (await desk.TakeInAsync(Cleo, patient, [Written(50), Written(40)], ImagingModality.Other, null, counted.Add)).Value!.Taken.Count);
        Assert.Equal([1, 2], counted);
        using CancellationTokenSource cancel = new();
        int before = desk.Of(patient, await CourseAsync()).Count;
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            desk.TakeInAsync(Cleo, patient, [Written(30), Written(20), Written(45)], ImagingModality.Other, null, _ => cancel.Cancel(), cancel.Token));
        Assert.Equal((before, before), (desk.Of(patient, await CourseAsync()).Count, Directory.GetFiles(Path.Combine(place, "images"), "*.dcm", SearchOption.AllDirectories).Length));
    }

    [Fact]
    public async Task An_image_that_was_altered_on_the_disk_is_not_shown()
    {
        string id = (await desk.TakeInAsync(Cleo, patient, [Written(50)], ImagingModality.Other, null)).Value!.Taken[0].Id;
        string file = Directory.GetFiles(Path.Combine(place, "images"), "*.dcm", SearchOption.AllDirectories).Single();
        byte[] bytes = await File.ReadAllBytesAsync(file);
        bytes[^1] ^= 1;
        await File.WriteAllBytesAsync(file, bytes);
        Assert.Equal(FaultCode.Contradiction, (await Assert.ThrowsAsync<InputFaultException>(() => desk.OpenAsync(Cleo, patient, id))).Faults[0].Code);
    }

    private async Task<PatientCourse> CourseAsync() => (await courses.ReadAsync(Cleo, patient)).Value!.Course;

    private string Written(double radius)
    {
        string path = Path.Combine(place, $"{Guid.NewGuid():N}.dcm");
        File.WriteAllBytes(path, WrittenDicom.Ultrasound([radius], 0.02, "ZZNOBODY^INVENTED"));
        return path;
    }

    private static Person Someone(string id, Identifier programme, Role role) => new(
        Identifier.Of(id), $"{id} (invented)", ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal).Add(programme.Text, role), true, null, 1);
}
