using Cavaxis.Records.Engines;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.Store;

[Collection(PostgresCluster.Collection)]
public sealed class PostgresEventStoreTests(PostgresCluster cluster) : EventStoreTests
{
    protected override StoreAddress NewAddress() => StoreAddress.Of(cluster.NewSchema());
}
