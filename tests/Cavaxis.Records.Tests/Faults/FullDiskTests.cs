using System.Diagnostics;
using System.Globalization;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Store;
using Microsoft.EntityFrameworkCore;

namespace Cavaxis.Records.Tests.Faults;

public sealed class FullDiskTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>A process whose files may not grow past 400 KiB: the write fails in the middle, as on a disk without room.</summary>
    [Fact]
    public async Task A_disk_that_takes_no_more_gives_a_fault_and_all_that_was_acknowledged_stays()
    {
        string file = folder.File("store.db");
        using Process writer = Writer.Start(file, 10_000, 1, largestFileKiB: 400);
        string[] lines = (await writer.StandardOutput.ReadToEndAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        await writer.WaitForExitAsync();

        Assert.Equal(3, writer.ExitCode);
        Assert.Contains(lines[^1], new[] { nameof(StoreFaultCode.DiskFull), nameof(StoreFaultCode.DiskFailed) });
        Assert.True(lines.Length > 10, "the disk was full before anything was written");
        long last = long.Parse(lines[^2].Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.True((await StoreVerifier.VerifyAsync(StoreAddress.Of(file))).IsWhole);

        // With room again it goes on where it was.
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(file), new TickingClock());
        Assert.Equal(last, (await store.HeadAsync()).Position);
        await store.FillAsync(1);
        Assert.True((await StoreVerifier.VerifyAsync(StoreAddress.Of(file), await store.AnchorAsync())).IsWhole);
    }

    /// <summary>The file may have so many pages and no more: what SQLite itself says on a full disk (SQLITE_FULL).</summary>
    [Fact]
    public async Task A_full_store_refuses_the_whole_request_and_takes_it_when_there_is_room()
    {
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(folder.File("store.db")), new TickingClock());
        await store.FillAsync(3);
        await LimitAsync(1);
        StoreFaultException refused = await Assert.ThrowsAsync<StoreFaultException>(() => store.AppendAsync(Large()));
        Assert.Equal(StoreFaultCode.DiskFull, refused.Fault.Code);
        Assert.Equal(3, (await store.HeadAsync()).Position);
        await LimitAsync(100_000);
        Assert.IsType<Appended>(await store.AppendAsync(Large()));
        Assert.Equal(203, (await store.HeadAsync()).Position);

        static AppendRequest Large() => Drafts.To(1, null, [.. Enumerable.Range(0, 200).Select(static n => Drafts.Observation(n))]);

        // The limit belongs to the connection, which the pool gives again to the next piece of work.
        Task LimitAsync(int more) => store.Database.DoAsync(async context =>
        {
            long pages = (await context.Database.SqlQueryRaw<long>("SELECT page_count AS Value FROM pragma_page_count").ToListAsync())[0];
#pragma warning disable EF1002 // A number is put in, which a pragma does not take as a parameter.
            return await context.Database.ExecuteSqlRawAsync(string.Create(CultureInfo.InvariantCulture, $"PRAGMA max_page_count = {pages + more}"));
#pragma warning restore EF1002
        });
    }
}
