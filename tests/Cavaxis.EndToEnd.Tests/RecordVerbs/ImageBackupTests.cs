using System.Collections.Immutable;
using System.Text.Json;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Bedside.Images;
using Cavaxis.Cli;
using Cavaxis.Course.Events;
using Cavaxis.Dicom.Identity;
using Cavaxis.Dicom.Reading;
using Cavaxis.EndToEnd.Tests.Images;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;

namespace Cavaxis.EndToEnd.Tests.RecordVerbs;

/// <summary>Images lie beside the record: a backup takes them along, restoring brings them back, verifying looks at each. Everyone and everything is invented.</summary>
public sealed class ImageBackupTests : IDisposable
{
    private static readonly Person Cleo = new(
        Identifier.Of("cleo"), "Cleo (invented)", ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal).Add("north", Role.Clinician), true, null, 1);

    private readonly RecordFolder record = new();

    public void Dispose() => record.Dispose();

    [Fact]
    public async Task A_backup_holds_the_images_and_verifying_names_one_that_is_missing_and_one_that_was_altered()
    {
        string[] ids = await TakenInAsync(40, 50, 60);
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "verify").Code);
        string backup = record["backup.db"];
        (ExitCode done, string json, _) = record.As("ada", "record", "backup", backup, "--json");
        Assert.Equal((ExitCode.Done, 3), (done, Root(json).GetProperty("images").GetInt32()));
        Assert.False(File.Exists(Path.Combine($"{backup}.images", "images.key")));

        string target = Path.Combine(Directory.CreateDirectory(record["elsewhere"]).FullName, "record.db");
        Assert.Equal(ExitCode.Done, record.As("ada", "record", "restore", backup, "--store", target).Code);
        foreach (string id in ids)
        {
            Assert.Equal(File.ReadAllBytes(FileOf(record["images"], id)), File.ReadAllBytes(FileOf(record["elsewhere/images"], id)));
        }

        Assert.Equal(ExitCode.Done, record.As("ada", "record", "verify", "--store", target).Code);
        Directory.Delete(Path.GetDirectoryName(FileOf(record["elsewhere/images"], ids[0]))!, recursive: true);
        string altered = FileOf(record["elsewhere/images"], ids[1]);
        byte[] bytes = await File.ReadAllBytesAsync(altered);
        bytes[^1] ^= 1;
        await File.WriteAllBytesAsync(altered, bytes);
        (ExitCode found, string told, _) = record.As("ada", "record", "verify", "--store", target, "--json");
        Assert.Equal((ExitCode.StopFound, true), (found, Root(told).GetProperty("whole").GetBoolean()));
        Assert.Equal(
            [$"image {ids[0]} of patient {record.Patient} is missing", $"image {ids[1]} of patient {record.Patient} was altered"],
            Root(told).GetProperty("imageTrouble").EnumerateArray().Select(static t => t.GetString()!).Order().OrderBy(t => t.Contains("altered", StringComparison.Ordinal)));
        Assert.Contains("MISSING OR ALTERED", record.As("ada", "record", "verify", "--store", target).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_go_along_is_named_by_the_backup_and_the_rest_goes()
    {
        string[] ids = await TakenInAsync(40, 50);
        Directory.Delete(Path.GetDirectoryName(FileOf(record["images"], ids[0]))!, recursive: true);
        string backup = record["backup.db"];
        (ExitCode code, string json, _) = record.As("ada", "record", "backup", backup, "--json");
        Assert.Equal((ExitCode.StopFound, 1), (code, Root(json).GetProperty("images").GetInt32()));
        Assert.Contains(ids[0], Assert.Single(Root(json).GetProperty("imageTrouble").EnumerateArray().ToArray()).GetString(), StringComparison.Ordinal);
        Assert.True(File.Exists(FileOf($"{backup}.images", ids[1])));
        Assert.Equal(ExitCode.StopFound, record.As("ada", "record", "restore", backup, "--store", record["two.db"], "--images", record["two"]).Code);
        Assert.True(File.Exists(FileOf(record["two"], ids[1])));
    }

    private async Task<string[]> TakenInAsync(params double[] radii)
    {
        await using DicomReader reader = new();
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(record.Store), TimeProvider.System);
        ImageDesk desk = new(new CourseRecords(new PatientRecords(store), TimeProvider.System), new ImageFolder(record["images"]), reader, IdentityKey.Forgotten());
        List<string> files = [];
        foreach (double radius in radii)
        {
            files.Add(record[$"image-{files.Count}.dcm"]);
            await File.WriteAllBytesAsync(files[^1], WrittenDicom.Ultrasound([radius], 0.02, "ZZNOBODY^INVENTED"));
        }

        ImagesTaken taken = (await desk.TakeInAsync(Cleo, record.Patient, files, ImagingModality.VascularUltrasound, null)).Value!;
        return [.. taken.Taken.Select(static t => t.Id)];
    }

    private string FileOf(string folder, string id) => Path.Combine(folder, record.Patient, id, "0001.dcm");

    private static JsonElement Root(string json) => JsonDocument.Parse(json).RootElement;
}
