using Cavaxis.Records.Engines;

namespace Cavaxis.Records.Tests.SignIn;

public sealed class SqliteSignInTests : SignInTests
{
    private readonly TemporaryFolder folder = new();

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        folder.Dispose();
    }

    protected override StoreAddress NewAddress() => StoreAddress.Of(folder.File(Guid.NewGuid().ToString("N") + ".db"));
}
