using Cavaxis.Records.Engines;

namespace Cavaxis.Records.Tests.Keeping;

public sealed class SqliteTamperingTests : TamperingTests, IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    protected override StoreAddress NewAddress() => StoreAddress.Of(folder.File(Guid.NewGuid().ToString("N") + ".db"));
}
