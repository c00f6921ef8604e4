using Cavaxis.Records.Engines;

namespace Cavaxis.Records.Tests.SignIn;

public sealed class SqliteSignInTests : SignInTests
{
    private readonly TemporaryFolder folder = new();

    public override async Task DisposeAsync()
    {
        await base.DisposeAsync();
        folder.Dispose();
    }

    protected override StoreAddress NewAddress() => StoreAddress.Of(folder.File(Guid.NewGuid().ToString("N") + ".db"));
}
