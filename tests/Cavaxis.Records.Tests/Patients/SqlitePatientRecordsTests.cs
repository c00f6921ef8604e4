using Cavaxis.Records.Engines;

namespace Cavaxis.Records.Tests.Patients;

public sealed class SqlitePatientRecordsTests : PatientRecordsTests
{
    private readonly TemporaryFolder folder = new();

    public override async Task DisposeAsync()
    {
        await base.DisposeAsync();
        folder.Dispose();
    }

    protected override StoreAddress NewAddress() => StoreAddress.Of(folder.File("store.db"));
}
