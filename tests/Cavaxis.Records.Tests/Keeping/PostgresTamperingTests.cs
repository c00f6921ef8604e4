using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.Keeping;

[Collection(PostgresCluster.Collection)]
public sealed class PostgresTamperingTests(PostgresCluster cluster) : TamperingTests
{
    protected override StoreAddress NewAddress() => StoreAddress.Of(cluster.NewSchema());

    [Fact]
    public async Task What_was_acknowledged_is_there_after_the_server_was_ended_without_warning()
    {
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, 30);
        ChainAnchor anchor = await store.AnchorAsync();
        cluster.CrashAndRestart();
        Assert.True((await StoreVerifier.VerifyAsync(address, anchor)).IsWhole);
    }

    [Fact]
    public async Task Emptying_the_table_is_refused() => await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(async () =>
    {
        StoreAddress address = NewAddress();
        using EventStore store = await TestStore.FilledAsync(address, 1);
        await TestStore.RunAsync(address, "TRUNCATE event");
    });
}
