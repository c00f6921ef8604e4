using System.Text.Json.Nodes;
using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Bedside.Packs;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.Patients;
using Cavaxis.Records.People;
using Cavaxis.Records.Store;
using Cavaxis.Reports.Html;
using SkiaSharp;

namespace Cavaxis.Bedside.Tests.Packs;

public sealed class PackTests : IAsyncLifetime, IDisposable
{
    private const string Words = "gravel lantern under seven quiet boats";
    private const string Password = "brisk otter under slate";
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);
    private static readonly Identifier North = Identifier.Of("north-invented");
    private static readonly Identifier South = Identifier.Of("south-invented");

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("cavaxis-packs-");
    private EventStore store = null!;
    private Person cleo = null!;
    private Person sven = null!;
    private Person rita = null!;
    private PatientRecords patients = null!;
    private string patient = null!;

    public async Task InitializeAsync()
    {
        store = await EventStore.OpenAsync(StoreAddress.Of(Path.Combine(folder.FullName, "record.db")), TimeProvider.System);
        PeopleRegister people = new(store, new Argon2PasswordHasher(64, 1));
        Assert.Equal(PeopleOutcome.Done, await people.FoundAsync(Identifier.Of("ada"), "Ada Quell (invented)", Password, North));
        Person ada = (await people.FindAsync(Identifier.Of("ada")))!;
        foreach ((string id, Role role, Identifier programme) in new[] { ("cleo", Role.Clinician, North), ("rita", Role.Reader, North), ("sven", Role.Lead, South) })
        {
            Assert.Equal(PeopleOutcome.Done, await people.RegisterAsync(ada, Identifier.Of(id), $"{id} Invented", Password, programme, role));
        }

        cleo = (await people.FindAsync(Identifier.Of("cleo")))!;
        rita = (await people.FindAsync(Identifier.Of("rita")))!;
        sven = (await people.FindAsync(Identifier.Of("sven")))!;
        patients = new PatientRecords(store);
        patient = (await patients.AdmitAsync(cleo, North)).Value!.Text;
        await WriteAsync("course.support-started", """{"configuration":"venoVenous"}""", 0);
        await WriteAsync("course.observed", """{"readings":[{"quantity":"pumpFlowLPerMin","value":4.2}],"remark":"line shakes when coughing"}""", 90);
        await WriteAsync("course.observed", """{"readings":[{"quantity":"pumpFlowLPerMin","value":42}]}""", 95);
        await WriteAsync("course.observed", """{"readings":[{"quantity":"pumpFlowLPerMin","value":4.1}]}""", 95, corrects: 4);
        await WriteAsync("course.note-written", """{"text":"entered for the wrong bed"}""", 100);
        await WriteAsync("record.withdrawn", """{"reason":"other patient"}""", 101, corrects: 6);
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        store.Dispose();
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task A_pack_holds_what_stands_from_the_start_of_support_and_names_no_one()
    {
        PackDraft draft = await DraftAsync();
        Assert.Equal([("course.support-started", 0), ("course.observed", 90), ("course.observed", 95)], draft.Contents.Entries.Select(static e => (e.Kind, e.MinutesFromStart)));
        string json = System.Text.Json.JsonSerializer.Serialize(draft.Contents);
        Assert.Contains("4.1", json, StringComparison.Ordinal);
        Assert.All(new[] { patient, "cleo", "north", "2031", "wrong bed", "coughing", "other patient", "42}" }, part => Assert.DoesNotContain(part, json, StringComparison.Ordinal));
        Assert.Equal("line shakes when coughing", Assert.Single(draft.FreeTexts).Text);
        PackDraft confirmed = await DraftAsync(draft.FreeTexts[0].Code);
        Assert.Equal("line shakes when coughing", confirmed.Contents.Entries[1].Payload["remark"]!.GetValue<string>());
        Assert.NotEqual(draft.Contents.PackId, confirmed.Contents.PackId);
    }

    [Theory]
    [InlineData("Is Quell recirculating?")]
    [InlineData("Worse since 3.2.2031?")]
    [InlineData("What would north-invented do?")]
    [InlineData(" ")]
    public async Task A_question_that_names_someone_is_refused(string question) =>
        Assert.Equal("question", (await Assert.ThrowsAsync<InputFaultException>(() => new PackDesk(store, cleo).DraftAsync(patient, question, [], new HashSet<string>()))).Faults[0].Field);

    [Fact]
    public async Task Who_may_not_share_gets_none_and_outside_the_programme_there_is_no_patient()
    {
        Assert.Equal(AccessDecision.NotAllowed, (await new PackDesk(store, rita).DraftAsync(patient, "Why?", [], new HashSet<string>())).Decision);
        Assert.Equal(
            await new PackDesk(store, sven).DraftAsync(new string('0', 32), "Why?", [], new HashSet<string>()),
            await new PackDesk(store, sven).DraftAsync(patient, "Why?", [], new HashSet<string>()));
    }

    [Fact]
    public async Task An_answer_comes_back_into_the_record_once()
    {
        (PackContents pack, byte[] file) = await MakeAsync();
        byte[] answer = Answer(pack, file, out AnswerContents contents);
        RecordedEvent kept = await new PackDesk(store, cleo).AcceptAsync(answer, Words);
        JsonNode payload = JsonNode.Parse(kept.Payload.Text)!;
        Assert.Equal(("course.opinion-answered", patient), (kept.Kind.Text, kept.Stream.Id.Text));
        Assert.Equal(("Pull it back 2 cm.", pack.PackId), (payload["answer"]!.GetValue<string>(), payload["pack"]!.GetValue<string>()));
        Assert.Equal(SealFaultCode.AnsweredAlready, await CodeAsync(cleo, answer));

        // Sealed anew it is another file, and still the same answer.
        Assert.Equal(SealFaultCode.AnsweredAlready, await CodeAsync(cleo, PackFormat.Write(contents, Words, SealCost.Least)));
        await new PackDesk(store, cleo).AcceptAsync(Answer(pack, file, out _), Words);
        Assert.Equal(2, (await patients.ReadAsync(cleo, patient, EventKind.Of("course.opinion-answered"))).Value!.Events.Count);
    }

    [Fact]
    public async Task The_same_answer_taken_in_by_many_at_once_is_kept_once()
    {
        (PackContents pack, byte[] file) = await MakeAsync();
        byte[] answer = Answer(pack, file, out _);
        bool[] kept = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(async () =>
        {
            try
            {
                await new PackDesk(store, cleo).AcceptAsync(answer, Words);
                return true;
            }
            catch (SealFaultException refused) when (refused.Fault.Code == SealFaultCode.AnsweredAlready)
            {
                return false;
            }
        })));
        Assert.Single(kept, static k => k);
    }

    [Fact]
    public async Task An_answer_to_another_pack_or_by_someone_else_is_refused_in_the_same_words()
    {
        (PackContents pack, byte[] file) = await MakeAsync();
        byte[] right = Answer(pack, file, out AnswerContents contents);
        AnswerContents[] wrong =
        [
            contents with { PackId = PackFormat.NewId() },
            contents with { PackSha256 = new string('0', 64) },
        ];
        foreach (AnswerContents one in wrong)
        {
            Assert.Equal(SealFaultCode.OtherPack, await CodeAsync(cleo, PackFormat.Write(one, Words, SealCost.Least)));
        }

        Assert.Equal(SealFaultCode.OtherPack, await CodeAsync(sven, right));
        Assert.Equal(SealFaultCode.OtherPack, await CodeAsync(rita, right));
        Assert.Empty((await patients.ReadAsync(cleo, patient, EventKind.Of("course.opinion-answered"))).Value!.Events);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("not json")]
    [InlineData("""{"format":"cavaxis second-opinion pack","version":1,"packId":"../../etc","question":"q","entries":[],"attachments":[],"takenOut":[]}""")]
    [InlineData("""{"format":"cavaxis second-opinion pack","version":1,"packId":"0123456789abcdef0123456789abcdef","question":null,"entries":[],"attachments":[],"takenOut":[]}""")]
    [InlineData("""{"format":"cavaxis second-opinion pack","version":1,"packId":"0123456789abcdef0123456789abcdef","question":"q","entries":[null],"attachments":[],"takenOut":[]}""")]
    [InlineData("""{"format":"cavaxis second-opinion pack","version":1,"packId":"0123456789abcdef0123456789abcdef","question":"q","entries":[],"attachments":[{"name":"../x.png","bytes":""}],"takenOut":[]}""")]
    [InlineData("""{"format":"cavaxis second-opinion pack","version":1,"packId":"0123456789abcdef0123456789abcdef","question":"q","entries":[],"attachments":[{"name":"x.html","bytes":""}],"takenOut":[]}""")]
    [InlineData("""{"format":"cavaxis second-opinion pack","version":1,"packId":"0123456789abcdef0123456789abcdef","question":"q","entries":[],"attachments":[],"takenOut":[],"more":1}""")]
    [InlineData("""{"format":"cavaxis second-opinion answer","version":1,"packId":"0123456789abcdef0123456789abcdef","question":"q","entries":[],"attachments":[],"takenOut":[]}""")]
    public void Contents_that_are_not_of_the_form_are_refused_though_the_seal_holds(string json) => Assert.Equal(
        SealFaultCode.UnreadableContents,
        Assert.Throws<SealFaultException>(() => PackFormat.ReadPack(SealedFile.Seal(SealKind.Pack, System.Text.Encoding.UTF8.GetBytes(json), Words, SealCost.Least), Words)).Fault.Code);

    [Fact]
    public void Contents_of_a_later_version_say_so() => Assert.Equal(
        SealFaultCode.UnsupportedVersion,
        Assert.Throws<SealFaultException>(() => PackFormat.ReadPack(PackFormat.Write(Empty with { Version = 2 }, Words, SealCost.Least), Words)).Fault.Code);

    [Fact]
    public void What_a_hostile_pack_says_is_escaped_on_the_page()
    {
        PackContents hostile = Empty with { Question = "<script>alert(1)</script>", Entries = [new PackEntry("x.<b>", 5, new JsonObject { ["a"] = "<img src=x onerror=y>" })] };
        string page = HtmlWriter.Write(PackReport.Of(PackFormat.ReadPack(PackFormat.Write(hostile, Words, SealCost.Least), Words)));
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert(1)", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_goes_along_without_what_hangs_on_it()
    {
        using SKBitmap bitmap = new(8, 6);
        bitmap.Erase(SKColors.Teal);
        byte[] plain = bitmap.Encode(SKEncodedImageFormat.Png, 100).ToArray();
        byte[] chunk = [0, 0, 0, 9, .. "tEXt"u8, .. "Name\0Mira"u8, 0x12, 0x34, 0x56, 0x78];
        byte[] clean = PngPicture.Of((byte[])[.. plain[..33], .. chunk, .. plain[33..], .. "Mira behind the end"u8]);
        Assert.True(clean.AsSpan().IndexOf("Mira"u8) < 0);
        using SKBitmap shown = SKBitmap.Decode(clean);
        Assert.Equal((8, 6, SKColors.Teal), (shown.Width, shown.Height, shown.GetPixel(3, 3)));
        Assert.Throws<InputFaultException>(() => PngPicture.Of(plain.AsSpan(0, plain.Length - 5)));
    }

    [Fact]
    public async Task Whole_packs_round_trip()
    {
        (PackContents pack, byte[] file) = await MakeAsync();
        PackContents read = PackFormat.ReadPack(file, Words);
        Assert.Equal((pack.PackId, pack.Question, pack.Entries.Count), (read.PackId, read.Question, read.Entries.Count));
        Assert.All(pack.Entries.Zip(read.Entries), static p => Assert.True(JsonNode.DeepEquals(p.First.Payload, p.Second.Payload)));
        Assert.Equal("+0 d 01:30", PackReport.TimeOf(90));
    }

    private static PackContents Empty => new(PackFormat.PackName, 1, PackFormat.NewId(), "Why?", [], [], []);

    private static byte[] Answer(PackContents pack, byte[] file, out AnswerContents contents)
    {
        contents = new AnswerContents(PackFormat.AnswerName, 1, pack.PackId, SealedFile.HashOf(file), PackFormat.NewId(), "Pull it back 2 cm.", "night desk (invented)");
        return PackFormat.Write(contents, Words, SealCost.Least);
    }

    private async Task<PackDraft> DraftAsync(params string[] confirmed) =>
        (await new PackDesk(store, cleo).DraftAsync(patient, "Is it recirculation?", [], confirmed.ToHashSet(StringComparer.Ordinal))).Value!;

    private async Task<(PackContents Pack, byte[] File)> MakeAsync()
    {
        PackContents pack = (await DraftAsync()).Contents;
        byte[] file = PackFormat.Write(pack, Words, SealCost.Least);
        Assert.Equal(AccessDecision.Granted, await new PackDesk(store, cleo).KeepAskedAsync(patient, pack, file, "an experienced centre"));
        return (pack, file);
    }

    private async Task<SealFaultCode> CodeAsync(Person person, byte[] answer) =>
        (await Assert.ThrowsAsync<SealFaultException>(() => new PackDesk(store, person).AcceptAsync(answer, Words))).Fault.Code;

    private async Task WriteAsync(string kind, string payload, int minutes, long? corrects = null) => Assert.IsType<Appended>(
        (await patients.WriteAsync(cleo, patient, null, new EventDraft(EventKind.Of(kind), CanonicalJson.Of(payload), Start.AddMinutes(minutes), corrects))).Value);
}
