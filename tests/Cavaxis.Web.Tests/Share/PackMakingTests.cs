using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Bedside.Packs;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Passwords;
using Cavaxis.Web.Pages.Share;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Tests.Share;

/// <summary>A pack on its way out of a record. Everyone is invented.</summary>
public sealed class PackMakingTests : IAsyncLifetime, IDisposable
{
    private const string Words = "gravel hammock under seven quiet boats";

    private readonly TemporaryFolder folder = new();
    private readonly SealTurn turn = new();
    private WorkspaceRecord record = null!;
    private PackDesk packs = null!;
    private string patient = null!;

    public async Task InitializeAsync()
    {
        record = await WorkspaceRecord.OpenAsync(StoreAddress.Of(folder["record.db"]), TimeProvider.System, new Argon2PasswordHasher(8, 1));
        Person lead = WorkspaceRecord.AtThisMachine;
        packs = new PackDesk(record.Store, lead);
        patient = Assert.IsType<CourseWritten>((await record.Courses.AdmitAsync(lead, WorkspaceRecord.OwnProgramme, """{"cavaxisCase":1}""")).Value).Patient;
        await WriteAsync(new SupportStarted { Configuration = RunningConfiguration.VvTwoSite, Remark = "line shakes when coughing" });
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        record.Dispose();
        turn.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task It_is_sealed_as_it_was_looked_at_with_what_was_confirmed_and_the_passphrases_are_gone()
    {
        PackMaking making = Asked();
        await making.LookAsync(packs, patient);
        FreeText text = Assert.Single(making.Draft!.FreeTexts);
        making.Confirm(text, true);
        Assert.False(making.IsCurrent);
        await RefusedAsync(making, "Look again");
        await making.LookAsync(packs, patient);
        Assert.True(making.IsCurrent && making.IsConfirmed(text));
        byte[] file = await making.SealAsync(packs, patient, turn);
        Assert.Equal((string.Empty, string.Empty, string.Empty, null), (making.Passphrase, making.Again, making.Question, making.Draft));
        PackContents pack = PackFormat.ReadPack(file, Words);
        Assert.Contains(pack.Entries, static e => e.Payload.ToJsonString().Contains("coughing", StringComparison.Ordinal));
        CourseReading reading = (await record.Courses.ReadAsync(WorkspaceRecord.AtThisMachine, patient)).Value!;
        Assert.Equal((pack.PackId, "night desk"), (Assert.Single(reading.Course.All<OpinionAsked>()).Event.Pack, reading.Course.All<OpinionAsked>()[0].Event.AskedOf));
    }

    [Fact]
    public async Task What_was_written_since_has_to_be_looked_at_first()
    {
        PackMaking making = Asked();
        await making.LookAsync(packs, patient);
        await WriteAsync(new NoteWritten { Text = "She is the lighthouse keeper's daughter." });
        await RefusedAsync(making, "Look again");
        Assert.Equal(2, making.Draft!.FreeTexts.Count);
        Assert.Empty((await record.Courses.ReadAsync(WorkspaceRecord.AtThisMachine, patient)).Value!.Course.All<OpinionAsked>());
    }

    [Theory]
    [InlineData("short one", "short one", "16 to 256")]
    [InlineData(Words, Words + "x", "twice")]
    [InlineData("aaaaaaaaaaaaaaaaaaaaaa", "aaaaaaaaaaaaaaaaaaaaaa", "at least 6 different")]
    public async Task A_passphrase_that_is_none_or_was_mistyped_seals_nothing_and_is_not_repeated(string first, string second, string accepted)
    {
        PackMaking making = Asked();
        await making.LookAsync(packs, patient);
        (making.Passphrase, making.Again) = (first, second);
        string told = await RefusedAsync(making, accepted);
        Assert.DoesNotContain(first, told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pictures_get_numbers_for_names_must_be_pictures_and_must_be_looked_at()
    {
        PackMaking making = Asked();
        making.Attach("Petra-invented.pdf", "%PDF-1.7 invented"u8.ToArray());
        making.Attach("second.pdf", "%PDF-1.7 other"u8.ToArray());
        Assert.Equal(["extract-1.pdf", "extract-2.pdf"], making.Attachments.Select(static a => a.Attachment.Name));
        Assert.Throws<InputFaultException>(() => making.Attach("run.pdf", "MZ"u8.ToArray()));
        await making.LookAsync(packs, patient);
        await RefusedAsync(making, "looked at each");
        making.LeaveOut(making.Attachments.Last().Attachment);
        making.Attach("third.pdf", "%PDF-1.7 third"u8.ToArray());
        Assert.False(making.IsCurrent);
        making.AttachmentsSeen = true;
        await making.LookAsync(packs, patient);
        PackContents pack = PackFormat.ReadPack(await making.SealAsync(packs, patient, turn), Words);
        Assert.Equal(["extract-1.pdf", "extract-3.pdf"], pack.Attachments.Select(static a => a.Name));
    }

    [Fact]
    public async Task A_question_that_names_someone_of_the_record_is_refused_before_anything_is_shown()
    {
        PackMaking making = Asked();
        making.Question = $"Is patient {patient} ours?";
        await Assert.ThrowsAsync<InputFaultException>(() => making.LookAsync(packs, patient));
        Assert.Null(making.Draft);
    }

    private static PackMaking Asked() => new() { Question = "Is it recirculation?", AskedOf = "night desk", Passphrase = Words, Again = Words + " " };

    private async Task<string> RefusedAsync(PackMaking making, string words)
    {
        InputFaultException refused = await Assert.ThrowsAsync<InputFaultException>(() => making.SealAsync(packs, patient, turn));
        string told = string.Join(' ', refused.Faults);
        Assert.Contains(words, told, StringComparison.Ordinal);
        return told;
    }

    private async Task WriteAsync(CourseEvent happened) =>
        Assert.IsType<CourseWritten>((await record.Courses.RecordAsync(WorkspaceRecord.AtThisMachine, patient, null, new CourseWriting(happened))).Value);
}
