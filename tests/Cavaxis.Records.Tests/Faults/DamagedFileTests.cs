using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.Faults;

public sealed class DamagedFileTests : IDisposable
{
    private const int Events = 400;
    private const int PageSize = 4096;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(0.9)]
    [InlineData(0.5)]
    [InlineData(0.4)]
    public async Task A_truncated_file_is_found_and_what_is_left_of_it_recovered(double part)
    {
        (byte[] whole, IReadOnlyList<RecordedEvent> events, ChainAnchor anchor) = await WholeAsync();
        string file = Put(whole[..(int)(whole.Length * part)]);
        Assert.False((await StoreVerifier.VerifyAsync(StoreAddress.Of(file), anchor)).IsWhole);

        RecoveryReport report = await RecoverAsync(file, anchor);
        AssertAccounted(report, events);
        Assert.True(report.EndIsKnown);
        Assert.True(report.Kept.Position > 0 && report.Lost.Count > 0, $"{report}");
    }

    /// <summary>One bit anywhere in the file. Either it lies where nothing is kept, or it is found; and nothing wrong is ever recovered.</summary>
    [Fact]
    public async Task A_flipped_bit_is_found_wherever_it_changes_anything_and_the_rest_recovered()
    {
        (byte[] whole, IReadOnlyList<RecordedEvent> events, ChainAnchor anchor) = await WholeAsync();
        Random random = new(7);
        int found = 0;
        int kept = 0;
        for (int i = 0; i < 40; i++)
        {
            byte[] flipped = [.. whole];
            flipped[i == 0 ? 17 : i == 1 ? 105 : random.Next(flipped.Length)] ^= (byte)(1 << random.Next(8));
            string file = Put(flipped);
            bool isWhole = await IsWholeAsync(file, anchor);
            found += isWhole ? 0 : 1;
            RecoveryReport report = await RecoverAsync(file, anchor);
            AssertAccounted(report, events);
            Assert.True(!isWhole || report.Kept.Position == Events, "a whole chain was not recovered whole");
            kept += report.Kept.Position + report.Loose.Count >= Events - 60 ? 1 : 0;
        }

        Assert.True(found > 20, $"{found} of 40 were found");
        Assert.True(kept >= 36, $"{kept} of 40 gave all but 60 events or more");
    }

    [Fact]
    public async Task A_page_of_nought_in_the_middle_leaves_the_events_behind_it_loose()
    {
        (byte[] whole, IReadOnlyList<RecordedEvent> events, ChainAnchor anchor) = await WholeAsync();
        byte[] middle = "\"saturationPercent\":50}"u8.ToArray();
        int page = whole.AsSpan(whole.Length / 2).IndexOf(middle) + (whole.Length / 2);
        page -= page % PageSize;
        whole.AsSpan(page, PageSize).Clear();

        string file = Put(whole);
        ChainReport verified = await StoreVerifier.VerifyAsync(StoreAddress.Of(file));
        Assert.Equal(BreakKind.Unreadable, verified.Break!.Kind);
        Assert.NotEmpty(verified.Damage);
        RecoveryReport report = await RecoverAsync(file, anchor);
        AssertAccounted(report, events);
        Assert.Equal(verified.Break.Position - 1, report.Kept.Position);
        Assert.NotEmpty(report.Loose);
        Assert.InRange(Assert.Single(report.Lost).Count, 1, 30);
    }

    [Fact]
    public async Task A_spoiled_first_page_is_put_in_from_a_new_store()
    {
        (byte[] whole, IReadOnlyList<RecordedEvent> events, ChainAnchor anchor) = await WholeAsync();
        whole.AsSpan(0, PageSize).Fill(0xff);
        string file = Put(whole);
        StoreFaultException refused = await Assert.ThrowsAsync<StoreFaultException>(() => StoreVerifier.VerifyAsync(StoreAddress.Of(file)));
        Assert.Equal(StoreFaultCode.NotAStore, refused.Fault.Code);
        RecoveryReport report = await RecoverAsync(file, anchor);
        Assert.True(report.FirstPageMended);
        Assert.Equal(anchor.Head, report.Kept);
        AssertAccounted(report, events);
    }

    [Fact]
    public async Task Events_that_lie_only_in_the_write_ahead_log_are_recovered_and_a_torn_log_gives_its_intact_start()
    {
        string file = folder.File("live.db");
        using EventStore store = await TestStore.FilledAsync(StoreAddress.Of(file), 50);
        ChainAnchor anchor = await store.AnchorAsync();
        IReadOnlyList<RecordedEvent> events = (await store.ReadAllAsync(0, 100)).Events;
        byte[] log = await File.ReadAllBytesAsync(file + "-wal");
        string copy = Put(await File.ReadAllBytesAsync(file));
        await File.WriteAllBytesAsync(copy + "-wal", log);
        Assert.Equal(anchor.Head, (await RecoverAsync(copy, anchor)).Kept);

        string torn = Put(await File.ReadAllBytesAsync(file));
        await File.WriteAllBytesAsync(torn + "-wal", log[..(log.Length / 2)]);
        RecoveryReport report = await RecoverAsync(torn, anchor);
        AssertAccounted(report, events);
        Assert.InRange(report.Kept.Position, 5, 49);
        Assert.Equal(BreakKind.CutOff, report.Break!.Kind);
        Assert.Equal([new PositionRange(report.Kept.Position + 1, 50)], report.Lost);
    }

    [Theory]
    [InlineData("")]
    [InlineData("this is no database at all, but a letter that someone named so")]
    public async Task A_file_that_never_was_a_store_gives_nothing_and_says_so(string text)
    {
        string file = Put(System.Text.Encoding.ASCII.GetBytes(text));
        RecoveryReport report = await StoreRecovery.RecoverAsync(file, folder.File("out.db"));
        Assert.Equal((ChainHead.Empty, 0, 0, false), (report.Kept, report.Loose.Count, report.Lost.Count, report.EndIsKnown));
    }

    [Fact]
    public async Task Recovery_goes_over_nothing_and_leaves_the_damaged_file_as_it_was()
    {
        (byte[] whole, _, _) = await WholeAsync();
        whole[5000] ^= 1;
        string file = Put(whole);
        Assert.Equal(StoreFaultCode.AlreadyThere, (await Assert.ThrowsAsync<StoreFaultException>(() => StoreRecovery.RecoverAsync(file, file))).Fault.Code);
        Assert.Equal(StoreFaultCode.CannotOpen, (await Assert.ThrowsAsync<StoreFaultException>(() => StoreRecovery.RecoverAsync(folder.File("none"), folder.File("out.db")))).Fault.Code);
        await StoreRecovery.RecoverAsync(file, folder.File("out.db"));
        Assert.Equal(whole, await File.ReadAllBytesAsync(file));
        Assert.Equal(
            new[] { "live.db", "out.db", Path.GetFileName(file) }.Order(StringComparer.Ordinal),
            Directory.GetFileSystemEntries(folder.Path).Select(static f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    private static void AssertAccounted(RecoveryReport report, IReadOnlyList<RecordedEvent> events)
    {
        Assert.All(report.Loose, loose => Assert.Equal(events[(int)loose.Position - 1], loose));
        Assert.Equal(report.Kept.Position == 0 ? EventHash.Genesis : events[(int)report.Kept.Position - 1].Hash, report.Kept.Hash);
        Assert.Equal(events.Count, report.Kept.Position + report.Loose.Count + report.Lost.Sum(static l => l.Count));
    }

    private static async Task<bool> IsWholeAsync(string file, ChainAnchor anchor)
    {
        try
        {
            return (await StoreVerifier.VerifyAsync(StoreAddress.Of(file), anchor)).IsWhole;
        }
        catch (StoreFaultException refused)
        {
            Assert.Contains(refused.Fault.Code, new[] { StoreFaultCode.Damaged, StoreFaultCode.NotAStore });
            return false;
        }
    }

    /// <summary>Recovers and checks that the new store is whole and ends where the report says.</summary>
    private async Task<RecoveryReport> RecoverAsync(string file, ChainAnchor anchor)
    {
        string path = folder.File(Guid.NewGuid().ToString("N") + ".out");
        RecoveryReport report = await StoreRecovery.RecoverAsync(file, path, anchor);
        ChainReport verified = await StoreVerifier.VerifyAsync(StoreAddress.Of(path));
        Assert.True(verified.IsWhole, $"{verified}");
        Assert.Equal(report.Kept, verified.Intact);
        return report;
    }

    private string Put(byte[] bytes)
    {
        string file = folder.File(Guid.NewGuid().ToString("N") + ".db");
        File.WriteAllBytes(file, bytes);
        return file;
    }

    private async Task<(byte[] File, IReadOnlyList<RecordedEvent> Events, ChainAnchor Anchor)> WholeAsync()
    {
        string file = folder.File("live.db");
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(file), new TickingClock());
        for (int i = 0; i < Events; i += 20)
        {
            await store.AppendAsync(Drafts.To(i / 20 % 3, null, [.. Enumerable.Range(i, 20).Select(static n => Drafts.Observation(50 + (n % 50)))]));
        }

        IReadOnlyList<RecordedEvent> events = (await store.ReadAllAsync(0, Events)).Events;
        ChainAnchor anchor = await store.AnchorAsync();
        store.Dispose();
        return (await File.ReadAllBytesAsync(file), events, anchor);
    }
}
