using Cavaxis.Records.Engines;

namespace Cavaxis.Records.Tests.Patients;

public sealed class SqlitePatientRecordsTests : PatientRecordsTests
{
    private readonly TemporaryFolder folder = new();

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        folder.Dispose();
    }

    protected override StoreAddress NewAddress() => StoreAddress.Of(folder.File("store.db"));
}
