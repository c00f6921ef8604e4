using Cavaxis.Records.Engines;
using Cavaxis.Records.Store;

namespace Cavaxis.Records.Tests.Store;

public sealed class SqliteEventStoreTests : EventStoreTests, IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_files_are_for_their_owner_alone()
    {
        string path = folder.File("owned.db");
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(path), new TickingClock());
        await store.FillAsync(1);
        string[] files = Directory.GetFiles(folder.Path, "owned.db*");
        Assert.Equal(3, files.Length);
        Assert.All(files, static file => Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(file) == (UnixFileMode.UserRead | UnixFileMode.UserWrite), file));
    }

    protected override StoreAddress NewAddress() => StoreAddress.Of(folder.File(Guid.NewGuid().ToString("N") + ".db"));
}
