using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Positions;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Passwords;
using Cavaxis.Web.Record;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Tests.Record;

public sealed class RecordCaseShelfTests : IAsyncLifetime, IDisposable
{
    private readonly TemporaryFolder folder = new();
    private WorkspaceRecord record = null!;

    public async Task InitializeAsync() => record = await OpenAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        record.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task Every_saved_value_is_a_version_and_none_is_overwritten()
    {
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        Assert.True((await shelf.SaveAsync(first.Id, Case("b"), 1, "title")).Saved && (await shelf.SaveAsync(first.Id, Case("c"), 2, "title")).Saved);
        Assert.Equal((3, Case("c")), ((await shelf.OpenAsync(first.Id))!.Number, (await shelf.OpenAsync(first.Id))!.Json));
        Assert.Equal([Case("a"), Case("b"), Case("c")], [(await shelf.ReadAsync(first.Id, 1))!.Json, (await shelf.ReadAsync(first.Id, 2))!.Json, (await shelf.ReadAsync(first.Id, 3))!.Json]);
        Assert.Null(await shelf.ReadAsync(first.Id, 4));
        Assert.Equal([(3L, "title"), (2L, "title"), (1L, "new")], (await shelf.HistoryAsync(first.Id)).Select(static n => (n.Number, n.Change)));
        ShelvedCase listed = Assert.Single(await shelf.ListAsync());
        Assert.Equal((first.Id, "c", 3L, false), (listed.Id, listed.Title, listed.Version, listed.Invented));
        Assert.True((await StoreVerifier.VerifyAsync(StoreAddress.Of(folder["record.db"]))).IsWhole);
    }

    [Fact]
    public async Task The_invented_course_of_a_demo_case_is_read_whole_and_support_runs_in_it_now()
    {
        Assert.Equal(DemoCases.All().Count, await new OldCases(record).LoadDemoAsync());
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        ShelvedCase running = Assert.Single(await shelf.ListAsync(), static c => c.Title.StartsWith("Veno-venous support running", StringComparison.Ordinal));
        CourseReading read = (await record.Courses.ReadAsync(await SomePerson.Lead.NowAsync(), running.Id)).Value!;
        Assert.Empty(read.Unread);
        Assert.Empty(read.Spoiled);
        Assert.Equal(2, read.Course.CannulaeIn.Count);
        Assert.NotNull(read.Course.Running);
        Assert.True(running.Invented);
        CourseTrend trend = CourseTrend.Of(read.Course, record.Clock.GetUtcNow())!;
        Assert.Equal("Recirculation", trend.Report.Explanations[0].Cause.ToString());
        Assert.Single(PositionReview.Of(read.Course.CannulaeIn.Single(static c => c.Name == "venous return")).Warnings, static w => w.Rule == PositionRule.Depth);
    }

    [Fact]
    public async Task Of_many_windows_that_save_at_once_exactly_one_gets_each_version()
    {
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        SaveOutcome[] outcomes = await Task.WhenAll(Enumerable.Range(0, 12).Select(async i =>
        {
            using RecordCaseShelf window = new(record, SomePerson.Lead);
            return await window.SaveAsync(first.Id, Case($"window {i}"), 1, "title");
        }));
        SaveOutcome winner = Assert.Single(outcomes, static o => o.Saved);
        Assert.All(outcomes, o => Assert.Equal(winner.Newest.Json, o.Newest.Json));
        Assert.Equal(2, (await shelf.HistoryAsync(first.Id)).Count);
    }

    [Fact]
    public async Task An_observation_in_between_does_not_stand_in_the_way_of_a_save()
    {
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        await record.Patients.WriteAsync(await SomePerson.Lead.NowAsync(), first.Id, null, new EventDraft(EventKind.Of("course.note-written"), CanonicalJson.Of("""{"text":"n"}""")));
        Assert.True((await shelf.SaveAsync(first.Id, Case("b"), 1, "title")).Saved);
    }

    [Fact]
    public async Task Another_store_on_the_same_file_is_not_overwritten()
    {
        using RecordCaseShelf one = new(record, SomePerson.Lead);
        using WorkspaceRecord second = await OpenAsync();
        using RecordCaseShelf other = new(second, SomePerson.Lead);
        string id = (await one.AddAsync(Case("a"), "new")).Id;
        Assert.True((await other.SaveAsync(id, Case("b"), 1, "title")).Saved);
        SaveOutcome late = await one.SaveAsync(id, Case("c"), 1, "title");
        Assert.Equal((false, 2L, Case("b")), (late.Saved, late.Newest.Number, late.Newest.Json));
    }

    [Fact]
    public async Task Whoever_has_no_role_in_the_programme_finds_no_such_patient()
    {
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        using RecordCaseShelf stranger = new(record, new SomePerson("sam", "elsewhere", Role.Lead));
        Assert.Empty(await stranger.ListAsync());
        Assert.Null(await stranger.OpenAsync(first.Id));
        Assert.Null(await stranger.ReadAsync(first.Id, 1));
        Assert.Empty(await stranger.HistoryAsync(first.Id));
        foreach (long expected in new long[] { 1, 7 })
        {
            InputFault foreign = Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => stranger.SaveAsync(first.Id, Case("x"), expected, "x"))).Faults);
            InputFault none = Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => stranger.SaveAsync("0123456789abcdef0123456789abcdef", Case("x"), expected, "x"))).Faults);
            Assert.Equal((none.Code, none.Field, none.Accepted, none.Remedy), (foreign.Code, foreign.Field, foreign.Accepted, foreign.Remedy));
        }

        Assert.Equal(Case("a"), (await shelf.OpenAsync(first.Id))!.Json);
    }

    [Fact]
    public async Task A_reader_reads_and_writes_nothing()
    {
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        using RecordCaseShelf reader = new(record, new SomePerson("rhea", "own", Role.Reader));
        Assert.Equal(Case("a"), (await reader.OpenAsync(first.Id))!.Json);
        Assert.Equal("role", Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => reader.SaveAsync(first.Id, Case("x"), 1, "x"))).Faults).Field);
        Assert.Equal("role", Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => reader.AddAsync(Case("x"), "x"))).Faults).Field);
        Assert.Single(await shelf.ListAsync());
    }

    [Theory]
    [InlineData("", FaultCode.MalformedText)]
    [InlineData("[1, 2]", FaultCode.WrongKind)]
    public async Task What_is_no_object_is_refused_and_admits_no_one(string json, FaultCode code)
    {
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        Assert.Equal(code, Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => shelf.AddAsync(json, "new"))).Faults).Code);
        Assert.Empty(await record.Store.StreamsAsync("patient"));
    }

    [Fact]
    public async Task The_earlier_store_moves_into_the_record_with_every_version_and_its_identifiers()
    {
        string[] ids = new string[2];
        using (SqliteCaseShelf old = new(folder["cases.sqlite"], TimeProvider.System))
        {
            ids[0] = (await old.AddAsync(Case("first"), "new")).Id;
            await old.SaveAsync(ids[0], Case("first, later"), 1, "title");
            ids[1] = (await old.AddAsync(Case("second"), "new")).Id;
        }

        OldCases moving = new(record);
        Assert.Equal(2, await moving.MoveAsync(folder["cases.sqlite"]));
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        Assert.Equal((2, Case("first, later")), ((await shelf.OpenAsync(ids[0]))!.Number, (await shelf.OpenAsync(ids[0]))!.Json));
        Assert.Equal(Case("first"), (await shelf.ReadAsync(ids[0], 1))!.Json);
        Assert.Equal(Case("second"), (await shelf.OpenAsync(ids[1]))!.Json);
        Assert.False(File.Exists(folder["cases.sqlite"]));
        Assert.True(File.Exists(folder["cases.sqlite" + OldCases.MovedSuffix]));
        Assert.Equal(0, await moving.MoveAsync(folder["cases.sqlite"]));
    }

    [Fact]
    public async Task A_move_that_was_cut_off_goes_on_and_doubles_nothing()
    {
        string id;
        using (SqliteCaseShelf old = new(folder["cases.sqlite"], TimeProvider.System))
        {
            id = (await old.AddAsync(Case("a"), "new")).Id;
        }

        File.Copy(folder["cases.sqlite"], folder["copy.sqlite"]);
        await new OldCases(record).MoveAsync(folder["copy.sqlite"]);
        Assert.Equal(0, await new OldCases(record).MoveAsync(folder["cases.sqlite"]));
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        Assert.Equal(id, Assert.Single(await shelf.ListAsync()).Id);
        Assert.Single(await shelf.HistoryAsync(id));
    }

    [Fact]
    public async Task The_invented_cases_are_loaded_once_and_marked()
    {
        OldCases demo = new(record);
        Assert.Equal(DemoCases.All().Count, await demo.LoadDemoAsync());
        Assert.Equal(0, await demo.LoadDemoAsync());
        using RecordCaseShelf shelf = new(record, SomePerson.Lead);
        IReadOnlyList<ShelvedCase> listed = await shelf.ListAsync();
        Assert.Equal(DemoCases.All().Count, listed.Count);
        Assert.All(listed, static one => Assert.True(one.Invented && one.Title.Length > 0));
        Assert.Contains(listed, static one => one.Title == DemoCases.GuideTitle);
        Assert.All(DemoCases.All(), static d => Assert.Empty(Web.CaseTexts.CaseCheck.Of(d.Json).Faults));
    }

    private static string Case(string title) => $$"""{"title": "{{title}}"}""";

    private Task<WorkspaceRecord> OpenAsync() => WorkspaceRecord.OpenAsync(StoreAddress.Of(folder["record.db"]), TimeProvider.System, new Argon2PasswordHasher(8, 1));
}
