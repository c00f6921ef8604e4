using Cavaxis.Records.Engines;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.SignIn;

[Collection(PostgresCluster.Collection)]
public sealed class PostgresSignInTests(PostgresCluster cluster) : SignInTests
{
    protected override StoreAddress NewAddress() => StoreAddress.Of(cluster.NewSchema());
}
