using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Tests.Shelf;

public sealed class SqliteCaseShelfTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Every_saved_value_is_a_version_and_none_is_overwritten()
    {
        using SqliteCaseShelf shelf = Open();
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        SaveOutcome second = await shelf.SaveAsync(first.Id, Case("b"), 1, "title");
        SaveOutcome third = await shelf.SaveAsync(first.Id, Case("c"), 2, "title");
        Assert.True(second.Saved && third.Saved);
        Assert.Equal((3, Case("c")), ((await shelf.OpenAsync(first.Id))!.Number, (await shelf.OpenAsync(first.Id))!.Json));
        Assert.Equal([Case("a"), Case("b"), Case("c")], [(await shelf.ReadAsync(first.Id, 1))!.Json, (await shelf.ReadAsync(first.Id, 2))!.Json, (await shelf.ReadAsync(first.Id, 3))!.Json]);
        Assert.Equal([(3L, "title"), (2L, "title"), (1L, "new")], (await shelf.HistoryAsync(first.Id)).Select(static n => (n.Number, n.Change)));
        ShelvedCase listed = Assert.Single(await shelf.ListAsync());
        Assert.Equal((first.Id, "c", 3L, false), (listed.Id, listed.Title, listed.Version, listed.Invented));
    }

    [Fact]
    public async Task A_save_from_an_older_version_is_refused_and_told_the_newer_one()
    {
        using SqliteCaseShelf shelf = Open();
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        await shelf.SaveAsync(first.Id, Case("theirs"), 1, "title");
        SaveOutcome late = await shelf.SaveAsync(first.Id, Case("mine"), 1, "title");
        Assert.Equal((false, 2L, Case("theirs")), (late.Saved, late.Newest.Number, late.Newest.Json));
        Assert.Equal(2, (await shelf.HistoryAsync(first.Id)).Count);
    }

    [Fact]
    public async Task Of_many_windows_that_save_at_once_exactly_one_gets_each_version()
    {
        using SqliteCaseShelf shelf = Open();
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        SaveOutcome[] outcomes = await Task.WhenAll(Enumerable.Range(0, 20).Select(i => shelf.SaveAsync(first.Id, Case($"window {i}"), 1, "title")));
        SaveOutcome winner = Assert.Single(outcomes, static o => o.Saved);
        Assert.All(outcomes, o => Assert.Equal(winner.Newest.Json, o.Newest.Json));
    }

    [Fact]
    public async Task Other_windows_are_told_of_a_save_and_not_of_a_refused_one()
    {
        using SqliteCaseShelf shelf = Open();
        List<(string, long)> told = [];
        shelf.Changed += (id, number) => told.Add((id, number));
        CaseVersion first = await shelf.AddAsync(Case("a"), "new");
        await shelf.SaveAsync(first.Id, Case("b"), 1, "title");
        await shelf.SaveAsync(first.Id, Case("c"), 1, "title");
        Assert.Equal([(first.Id, 1L), (first.Id, 2L)], told);
    }

    [Fact]
    public async Task What_was_acknowledged_is_there_after_the_file_is_opened_again()
    {
        string id;
        using (SqliteCaseShelf shelf = Open())
        {
            id = (await shelf.AddAsync(Case("a"), "new")).Id;
            await shelf.SaveAsync(id, Case("b"), 1, "title");
        }

        using SqliteCaseShelf again = Open();
        Assert.Equal(Case("b"), (await again.OpenAsync(id))!.Json);
    }

    // As after a kill: the files are taken as they lie while the store is open, and the log loses its end at every length.
    [Fact]
    public async Task A_log_cut_off_anywhere_loses_at_most_what_was_being_written_and_never_an_earlier_version()
    {
        using SqliteCaseShelf shelf = Open();
        string id = (await shelf.AddAsync(Case("version 1"), "new")).Id;
        long logAfterFirst = new FileInfo(folder["cases.sqlite-wal"]).Length;
        await shelf.SaveAsync(id, Case("version 2"), 1, "title");
        byte[] file = Copy("cases.sqlite");
        byte[] log = Copy("cases.sqlite-wal");
        Assert.True(log.Length > logAfterFirst);
        for (int cut = 0; cut <= 24; cut++)
        {
            long length = logAfterFirst + ((log.Length - logAfterFirst) * cut / 24);
            File.WriteAllBytes(folder["cut.sqlite"], file);
            File.WriteAllBytes(folder["cut.sqlite-wal"], log[..(int)length]);
            File.Delete(folder["cut.sqlite-shm"]);
            using SqliteCaseShelf after = new(folder["cut.sqlite"], TimeProvider.System);
            CaseVersion newest = (await after.OpenAsync(id))!;
            Assert.Equal(cut == 24 ? 2 : 1, newest.Number);
            Assert.Equal(Case("version 1"), (await after.ReadAsync(id, 1))!.Json);
            Assert.True((await after.SaveAsync(id, Case("goes on"), newest.Number, "title")).Saved);
        }
    }

    [Fact]
    public async Task A_full_disk_is_a_fault_in_words_and_nothing_is_lost()
    {
        string id;
        using (SqliteCaseShelf shelf = Open())
        {
            id = (await shelf.AddAsync(Case("a"), "new")).Id;
            shelf.LimitPages(extra: 2);
            string large = Case(new string('x', 200)).Replace("}", $", \"notes\": \"{new string('n', 100_000)}\"}}", StringComparison.Ordinal);
            InputFault fault = Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => shelf.SaveAsync(id, large, 1, "notes"))).Faults);
            Assert.Equal((FaultCode.UnreadableFile, "the disk is full"), (fault.Code, fault.Value));
            Assert.Equal((1, Case("a")), ((await shelf.OpenAsync(id))!.Number, (await shelf.OpenAsync(id))!.Json));
        }

        using SqliteCaseShelf again = Open();
        Assert.Equal(Case("a"), (await again.OpenAsync(id))!.Json);
        Assert.True((await again.SaveAsync(id, Case("room again"), 1, "title")).Saved);
    }

    [Fact]
    public async Task A_case_of_another_process_on_the_same_file_is_not_overwritten()
    {
        using SqliteCaseShelf one = Open();
        using SqliteCaseShelf other = Open();
        string id = (await one.AddAsync(Case("a"), "new")).Id;
        Assert.True((await other.SaveAsync(id, Case("b"), 1, "title")).Saved);
        Assert.False((await one.SaveAsync(id, Case("c"), 1, "title")).Saved);
        Assert.Equal(Case("b"), (await one.OpenAsync(id))!.Json);
    }

    [Theory]
    [InlineData("", FaultCode.MalformedText)]
    [InlineData("{\"title\": ", FaultCode.MalformedText)]
    [InlineData("[1, 2]", FaultCode.WrongKind)]
    [InlineData("{\"title\": \"a\", \"title\": \"b\"}", FaultCode.MalformedText)]
    public async Task What_is_no_object_is_refused_before_it_reaches_the_store(string json, FaultCode code)
    {
        using SqliteCaseShelf shelf = Open();
        InputFault fault = Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => shelf.AddAsync(json, "new"))).Faults);
        Assert.Equal(code, fault.Code);
        Assert.Empty(await shelf.ListAsync());
    }

    [Fact]
    public async Task A_patient_that_is_not_there_is_none_and_cannot_be_saved()
    {
        using SqliteCaseShelf shelf = Open();
        Assert.Null(await shelf.OpenAsync("nobody"));
        Assert.Empty(await shelf.HistoryAsync("nobody"));
        Assert.Equal(FaultCode.NotFound, Assert.Single((await Assert.ThrowsAsync<InputFaultException>(() => shelf.SaveAsync("nobody", Case("a"), 1, "x"))).Faults).Code);
    }

    [Fact]
    public void A_damaged_file_is_a_fault_in_words_and_is_left_as_it_is()
    {
        byte[] damaged = [.. Enumerable.Range(0, 8192).Select(static i => (byte)((i * 31) + 7))];
        File.WriteAllBytes(folder["cases.sqlite"], damaged);
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(Open).Faults);
        Assert.Contains("damaged", fault.Value, StringComparison.Ordinal);
        Assert.Equal(damaged, File.ReadAllBytes(folder["cases.sqlite"]));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_a_fault_in_words()
    {
        File.WriteAllText(folder["file"], "x");
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => new SqliteCaseShelf(Path.Combine(folder["file"], "cases.sqlite"), TimeProvider.System)).Faults);
        Assert.Equal("--data", fault.Field);
    }

    private SqliteCaseShelf Open() => new(folder["cases.sqlite"], TimeProvider.System);

    private byte[] Copy(string name)
    {
        using FileStream stream = new(folder[name], FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using MemoryStream bytes = new();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    private static string Case(string title) => $"{{\"cavaxisCase\": 1, \"title\": \"{title}\"}}";
}
