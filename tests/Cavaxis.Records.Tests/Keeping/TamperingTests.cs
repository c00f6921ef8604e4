using System.Data.Common;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.Keeping;

/// <summary>What someone does to the events past this program, on either database.</summary>
public abstract class TamperingTests
{
    private const int Events = 12;

    /// <summary>A new and empty store.</summary>
    protected abstract StoreAddress NewAddress();

    [Theory]
    [InlineData("UPDATE event SET who = 'bea' WHERE position = 2")]
    [InlineData("DELETE FROM event WHERE position = 2")]
    [InlineData("DELETE FROM event")]
    [InlineData("INSERT INTO event SELECT 100, stream, 100, kind, payload, who, occurred_us, recorded_us, corrects, previous_hash, hash FROM event WHERE position = 12")]
    [InlineData("INSERT INTO event SELECT 13, 'patient/x', 1, kind, payload, who, occurred_us, recorded_us, corrects, previous_hash, hash FROM event WHERE position = 3")]
    public async Task The_database_itself_refuses_to_change_delete_or_misplace_an_event(string statement)
    {
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, Events);
        DbException refused = await Assert.ThrowsAnyAsync<DbException>(() => TestStore.RunAsync(address, statement));
        Assert.Contains("append only", refused.Message, StringComparison.Ordinal);
        Assert.True((await StoreVerifier.VerifyAsync(address)).IsWhole);
    }

    [Fact]
    public async Task A_store_that_no_one_touched_is_whole()
    {
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, Events);
        ChainReport report = await StoreVerifier.VerifyAsync(address, await store.AnchorAsync());
        Assert.True(report.IsWhole);
        Assert.Equal(await store.HeadAsync(), report.Intact);
    }

    [Theory]
    [InlineData("UPDATE event SET who = 'bea' WHERE position = 5", 5, BreakKind.Altered)]
    [InlineData("UPDATE event SET occurred_us = occurred_us + 1 WHERE position = 1", 1, BreakKind.Altered)]
    [InlineData("UPDATE event SET hash = previous_hash WHERE position = 12", 12, BreakKind.Altered)]
    [InlineData("UPDATE event SET payload = (SELECT payload FROM event WHERE position = 6) WHERE position = 7", 7, BreakKind.Altered)]
    [InlineData("DELETE FROM event WHERE position = 7", 7, BreakKind.Missing)]
    [InlineData("DELETE FROM event WHERE position < 4", 1, BreakKind.Missing)]
    [InlineData("DELETE FROM event WHERE position = 4; UPDATE event SET position = -position WHERE position > 4; UPDATE event SET position = -position - 1 WHERE position < 0", 4, BreakKind.Altered)]
    [InlineData("UPDATE event SET position = 100 WHERE position = 4; UPDATE event SET position = 4 WHERE position = 5; UPDATE event SET position = 5 WHERE position = 100", 4, BreakKind.Altered)]
    [InlineData("INSERT INTO event SELECT 13, 'patient/x', 1, kind, payload, who, occurred_us, recorded_us, corrects, previous_hash, hash FROM event WHERE position = 3", 13, BreakKind.Altered)]
    public async Task What_is_done_without_the_triggers_is_found_at_its_place(string statement, long position, BreakKind kind)
    {
        StoreAddress address = NewAddress();
        using (await TestStore.FilledAsync(address, Events))
        {
        }

        await TestStore.UnlockAsync(address);
        if (address.Engine == StoreEngineKind.PostgreSql)
        {
            await TestStore.RunAsync(address, "ALTER TABLE event DROP CONSTRAINT event_position_check");
        }
        else if (statement.Contains("-position", StringComparison.Ordinal))
        {
            statement = "PRAGMA ignore_check_constraints = ON; " + statement;
        }

        await TestStore.RunAsync(address, statement);
        ChainReport report = await StoreVerifier.VerifyAsync(address);
        Assert.Equal((position, kind), (report.Break!.Position, report.Break.Kind));
        Assert.Equal(position - 1, report.Intact.Position);
    }

    [Fact]
    public async Task Events_cut_off_the_end_are_found_only_with_a_line_kept_elsewhere()
    {
        StoreAddress address = NewAddress();
        ChainAnchor anchor;
        using (EventStore store = await TestStore.FilledAsync(address, Events))
        {
            anchor = await store.AnchorAsync();
        }

        await TestStore.UnlockAsync(address);
        await TestStore.RunAsync(address, "DELETE FROM event WHERE position > 9");
        Assert.True((await StoreVerifier.VerifyAsync(address)).IsWhole);
        ChainReport report = await StoreVerifier.VerifyAsync(address, anchor);
        Assert.Equal((10, BreakKind.CutOff), (report.Break!.Position, report.Break.Kind));
    }

    [Fact]
    public async Task A_spoiled_event_is_told_to_the_reader_and_not_given_and_the_others_are()
    {
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, Events);
        await TestStore.UnlockAsync(address);
        await TestStore.RunAsync(address, "UPDATE event SET payload = (SELECT payload FROM event WHERE position = 5) WHERE position = 4");
        StreamReading reading = await store.ReadAsync(new StreamQuery(Drafts.Patient(0)));
        Assert.Equal([1, 7, 10], reading.Events.Select(static e => e.Position));
        Assert.Equal([4], reading.Spoiled);
    }

    [Fact]
    public async Task Nothing_is_built_on_a_spoiled_end()
    {
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, Events);
        await TestStore.UnlockAsync(address);
        await TestStore.RunAsync(address, "UPDATE event SET who = 'bea' WHERE position = 12");
        StoreFaultException refused = await Assert.ThrowsAsync<StoreFaultException>(() => store.AppendAsync(Drafts.To(1, null, Drafts.Observation(70))));
        Assert.Equal(StoreFaultCode.BrokenChain, refused.Fault.Code);
    }

    [Fact]
    public async Task A_backup_taken_while_others_write_is_one_state_and_restores_to_the_same_chain()
    {
        using TemporaryFolder folder = new();
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, 40);
        using CancellationTokenSource stop = new();
        Task writing = Task.Run(async () =>
        {
            while (!stop.IsCancellationRequested)
            {
                await store.FillAsync(1);
            }
        });
        string backup = folder.File("backup.db");
        ChainAnchor anchor = await StoreBackup.BackUpAsync(address, backup, new TickingClock());
        await stop.CancelAsync();
        await writing;

        Assert.True(anchor.Head.Position >= 40);
        Assert.Equal([backup], Directory.GetFiles(folder.Path));
        Assert.True((await StoreVerifier.VerifyAsync(StoreAddress.Of(backup), anchor)).IsWhole);
        foreach (StoreAddress target in new[] { StoreAddress.Of(folder.File("restored.db")), NewAddress() })
        {
            Assert.Equal(anchor.Head, await StoreBackup.RestoreAsync(backup, target, anchor));
            using EventStore restored = await EventStore.OpenAsync(target, new TickingClock());
            Assert.Equal((await store.ReadAllAsync(0, (int)anchor.Head.Position)).Events, (await restored.ReadAllAsync(0, 100_000)).Events);
            await restored.FillAsync(1);
            Assert.True((await StoreVerifier.VerifyAsync(target, anchor)).IsWhole);
        }
    }

    [Fact]
    public async Task Neither_backup_nor_restore_goes_over_what_is_there()
    {
        using TemporaryFolder folder = new();
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, 3);
        string backup = folder.File("backup.db");
        await StoreBackup.BackUpAsync(address, backup, new TickingClock());
        byte[] before = await File.ReadAllBytesAsync(backup);

        Assert.Equal(StoreFaultCode.AlreadyThere, (await Assert.ThrowsAsync<StoreFaultException>(() => StoreBackup.BackUpAsync(address, backup, new TickingClock()))).Fault.Code);
        Assert.Equal(StoreFaultCode.AlreadyThere, (await Assert.ThrowsAsync<StoreFaultException>(() => StoreBackup.RestoreAsync(backup, address))).Fault.Code);
        Assert.Equal(before, await File.ReadAllBytesAsync(backup));
        Assert.Equal(3, (await store.HeadAsync()).Position);
    }

    [Fact]
    public async Task A_broken_chain_is_neither_backed_up_nor_restored()
    {
        using TemporaryFolder folder = new();
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, Events);
        StoreAddress backup = StoreAddress.Of(folder.File("backup.db"));
        await StoreBackup.BackUpAsync(address, backup.Connection, new TickingClock());
        foreach (StoreAddress one in new[] { address, backup })
        {
            await TestStore.UnlockAsync(one);
            await TestStore.RunAsync(one, "UPDATE event SET who = 'bea' WHERE position = 6");
        }

        string path = folder.File("new.db");
        StoreFaultException refused = await Assert.ThrowsAsync<StoreFaultException>(() => StoreBackup.BackUpAsync(address, path, new TickingClock()));
        Assert.Equal(StoreFaultCode.BrokenChain, refused.Fault.Code);
        Assert.Contains("event 6", refused.Fault.Found, StringComparison.Ordinal);
        StoreAddress target = NewAddress();
        Assert.Equal(StoreFaultCode.BrokenChain, (await Assert.ThrowsAsync<StoreFaultException>(() => StoreBackup.RestoreAsync(backup.Connection, target))).Fault.Code);
        using EventStore empty = await EventStore.OpenAsync(target, new TickingClock());
        Assert.Equal(ChainHead.Empty, await empty.HeadAsync());
        Assert.Empty(Directory.GetFiles(folder.Path, "new.db*"));
    }
}
